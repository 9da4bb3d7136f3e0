/** Which positions of a lock's code an answer fills; empty where it is the whole code. */
import type { GameLink } from '../../../src/game/model.ts';
import { FORM, WRONG } from '../../../src/words/screen-form.ts';
import { useGame } from '../../store/game.ts';
import type { Reading } from '../draft.ts';
import { parsePlaces } from '../numbers.ts';
import { TextField } from '../TextField.tsx';

function readPlaces(raw: string): Reading<readonly number[] | undefined> {
  if (raw.trim() === '') return { value: undefined };
  const places = parsePlaces(raw);
  if (!places) return { wrong: WRONG.positions };
  return new Set(places).size < places.length ? { wrong: WRONG.positionsTwice } : { value: places };
}

export function PlacesField({ link, hint }: { link: GameLink; hint?: string }) {
  return (
    <TextField
      field={`places ${link.id}`}
      label={FORM.positions}
      shown={link.at?.join(', ') ?? ''}
      read={readPlaces}
      write={(at) => useGame.getState().apply([{ type: 'setLink', id: link.id, at }], `places ${link.id}`)}
      placeholder={FORM.wholeCode}
      {...(hint === undefined ? {} : { hint })}
    />
  );
}
