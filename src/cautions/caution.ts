import type { GameNode, Kind } from '../game/model.ts';

/** A published standard or rule that a caution rests on. What it says of the matter is summed up in tests/reference/. */
export interface Source {
  readonly name: string;
  readonly number: string;
  /** Where in it. */
  readonly section?: string;
}

/**
 * One caution: when it belongs to a thing. One is a file in this folder and a line in its index; its words stand in src/words/cautions.ts.
 * Each gives way to local codes and to the school's own rules.
 */
export interface Caution {
  readonly id: string;
  /** Whether a teacher can say of any thing that it applies: then `id` is what the document's `hazards` says. */
  readonly stated: boolean;
  /** It belongs to every thing of these kinds. */
  readonly kinds: readonly Kind[];
  /** English words of the game that suggest it, where a thing carries them. */
  readonly suggested?: (node: GameNode) => boolean;
  /** None where it is common practice without a source. */
  readonly sources: readonly Source[];
}

/** In its name or in what the teacher notes of it. What pupils read may be about magnets, with none in the room. */
export function calledSo(words: RegExp): (node: GameNode) => boolean {
  return ({ name, note = '' }) => words.test(name) || words.test(note);
}
