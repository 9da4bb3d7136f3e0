/**
 * What is being typed into a field, apart from the value that the game has: the game keeps its last good value
 * while the field says what is wrong. The draft goes when the field is left with a good value, or when the game's value changes otherwise.
 */
import { useState } from 'react';
import { useGame } from '../store/game.ts';

export type Reading<T> = { readonly value: T } | { readonly wrong: string };

interface Draft {
  readonly raw: string;
  readonly wrong: string | undefined;
  /** The game's value when the field was left; undefined while it is being typed in. */
  readonly leftAt: string | undefined;
}

export interface DraftField {
  readonly value: string;
  readonly wrong: string | undefined;
  readonly change: (raw: string) => void;
  /** When the field is left: ends the gesture, so that what follows is an undo of its own. */
  readonly leave: () => void;
}

export function useDraft<T>(
  shown: string,
  read: (raw: string) => Reading<T>,
  write: (value: T) => void,
): DraftField {
  const [stored, setDraft] = useState<Draft>();
  const draft = stored && (stored.leftAt === undefined || stored.leftAt === shown) ? stored : undefined;

  return {
    value: draft?.raw ?? shown,
    wrong: draft?.wrong,
    change(raw) {
      const reading = read(raw);
      setDraft({ raw, wrong: 'wrong' in reading ? reading.wrong : undefined, leftAt: undefined });
      if ('value' in reading) write(reading.value);
    },
    leave() {
      setDraft(draft?.wrong === undefined ? undefined : { ...draft, leftAt: shown });
      useGame.getState().settle();
    },
  };
}
