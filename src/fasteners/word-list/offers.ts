import { spellableGraded, type Wheels } from './spellable.ts';
import { type Grade, gradeOf, type WordList } from './word-list.ts';

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

/** Made of another word of the list by an ending: a clue leads to 'act' rather than to 'acts'. */
function isInflected(list: WordList, word: string): boolean {
  const base = /^(.+?)(?:S|ES|D|ED|ING)$/.exec(word)?.[1];
  if (base === undefined || base.length < 2) return false;
  return gradeOf(list, base) !== undefined || gradeOf(list, `${base}E`) !== undefined;
}

/**
 * Words that a lock can show, the best first: one that every pupil knows (by grade); without flaws, which are a letter that stands twice (once
 * known, it gives two wheels away) and an ending; near to the word that was wanted, so that clues keep most of their letters; then by alphabet.
 */
export function offers(list: WordList, wheels: Wheels, { instead = '', from = 10, count }: Wanted): string[] {
  return spellableGraded(list, wheels)
    .filter(([word, grade]) => grade >= from && word !== instead)
    .map(([word, grade]) => ({
      word,
      grade,
      flaws: word.length - new Set(word).size + (isInflected(list, word) ? 1 : 0),
      near: shared(word, instead),
    }))
    .sort((a, b) => a.grade - b.grade || a.flaws - b.flaws || b.near - a.near)
    .slice(0, count)
    .map(({ word }) => word);
}
