/**
 * What is being typed into a field, apart from the value that the game has: the game keeps its last good value
 * while the field says what is wrong. A wrong draft stays until it is right, cleared, or the game's value changes otherwise.
 */
import { useState } from 'react';
import { useGame } from '../store/game.ts';
import { keepDraft, useKeptDraft } from './kept.ts';

export type Reading<T> = { readonly value: T } | { readonly wrong: string };

export interface DraftField {
  readonly value: string;
  readonly wrong: string | undefined;
  readonly change: (raw: string) => void;
  /** When the field is left: ends the gesture, so that what follows is an undo of its own. */
  readonly leave: () => void;
}

/** @param field names the field and the thing that it belongs to, such as `hands b1` */
export function useDraft<T>(
  field: string,
  shown: string,
  read: (raw: string) => Reading<T>,
  write: (value: T) => void,
): DraftField {
  // Good text stands as it is typed, until the field is left and shows what the game made of it.
  const [typing, setTyping] = useState<string>();
  const [typed] = useKeptDraft(field, shown)?.typed ?? [];
  const value = typed ?? typing ?? shown;
  const reading = read(value);

  return {
    value,
    wrong: 'wrong' in reading ? reading.wrong : undefined,
    change(raw) {
      const next = read(raw);
      setTyping('value' in next ? raw : undefined);
      keepDraft(field, 'value' in next ? undefined : { typed: [raw], of: shown });
      if ('value' in next) write(next.value);
    },
    leave() {
      setTyping(undefined);
      useGame.getState().settle();
    },
  };
}
