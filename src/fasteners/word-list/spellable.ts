import { GRADES, type GradedWord, type WordList } from './word-list.ts';

/** The letters of each wheel, in upper case; undefined: the wheel shows any. */
export type Wheels = readonly (readonly string[] | undefined)[];

/** The letter at a position, from 0. */
export type KnownLetters = ReadonlyMap<number, string>;

const NOTHING_KNOWN: KnownLetters = new Map();

/** As `spellable`, each with its grade. */
export function spellableGraded(
  list: WordList,
  wheels: Wheels,
  known: KnownLetters = NOTHING_KNOWN,
  maxGrade: number = Math.max(...GRADES),
): readonly GradedWord[] {
  const shown = wheels.map((wheel, position) => {
    const letter = known.get(position);
    const letters = wheel && new Set(wheel);
    if (letter === undefined) return letters;
    return !letters || letters.has(letter) ? new Set([letter]) : new Set<string>();
  });
  return list
    .graded(wheels.length)
    .filter(
      ([word, grade]) =>
        grade <= maxGrade && shown.every((letters, position) => letters?.has(word.charAt(position)) ?? true),
    );
}

/**
 * The words that a lock can show, one letter a wheel, which agree with the letters that are known: by grade, then by alphabet. Each pass
 * costs the words of that length, some thousands.
 *
 * @param maxGrade words that are rarer are left out
 */
export function spellable(
  list: WordList,
  wheels: Wheels,
  known: KnownLetters = NOTHING_KNOWN,
  maxGrade?: number,
): string[] {
  return spellableGraded(list, wheels, known, maxGrade).map(([word]) => word);
}
