import { spellableGraded, type Wheels } from './spellable.ts';
import type { Grade, WordList } from './word-list.ts';

export interface Wanted {
  /** The word that the lock cannot show, or that is too easily guessed; it is not offered. */
  readonly instead?: string;
  /** The most common grade that is offered: from 20, what a pupil tries first is left out. */
  readonly from?: Grade;
  /** So many are offered at most. */
  readonly count: number;
}

/** How many positions two words of one length share. */
function shared(word: string, other: string): number {
  let same = 0;
  for (let i = 0; i < word.length; i++) if (word[i] === other[i]) same++;
  return same;
}

/**
 * Words that a lock can show, the best first: one that every pupil knows (by grade), with no letter twice (a letter that stands twice gives two
 * wheels away at once), and near to the word that was wanted, so that clues keep most of their letters; then by alphabet.
 */
export function offers(list: WordList, wheels: Wheels, { instead = '', from = 10, count }: Wanted): string[] {
  return spellableGraded(list, wheels)
    .filter(([word, grade]) => grade >= from && word !== instead)
    .map(([word, grade]) => ({
      word,
      grade,
      repeats: word.length - new Set(word).size,
      near: shared(word, instead),
    }))
    .sort((a, b) => a.grade - b.grade || a.repeats - b.repeats || b.near - a.near)
    .slice(0, count)
    .map(({ word }) => word);
}
