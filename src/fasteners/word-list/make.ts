/** Makes the list from what the packages hold. Runs when the page is built, on the command line and in tests; the page gets the result. */
import { GRADES, type Grade, type WordList, wordListOf } from './word-list.ts';

/** Words of one size as they were published, more than one list where dialects have their own. */
export type PublishedWords = ReadonlyMap<Grade, readonly string[]>;

/** How surely a word is one that no class should read: 2 likely, 1 it depends, 0 hardly. By word, in lower case. */
export type Ratings = ReadonlyMap<string, number>;

/** Letters as wheels have them: without accents, upper case. */
function asOnWheels(word: string): string {
  return word.normalize('NFD').replace(/\p{M}/gu, '').toUpperCase();
}

/** Doubled before an ending: 'spit', 'spitting'. */
const DOUBLED = /[^AEIOUYSWXH]$/;

function plural(word: string): string {
  return `${word}${/(S|X|Z|CH|SH)$/.test(word) ? 'ES' : 'S'}`;
}

/** What else English endings make of a word. */
function* inflected(word: string): Generator<string> {
  if (/[^AEIOU]Y$/.test(word)) yield `${word.slice(0, -1)}IES`;
  const stems = [word.replace(/E$/, '')];
  if (DOUBLED.test(word)) stems.push(`${word}${word.at(-1)}`);
  for (const stem of stems) for (const ending of ['ED', 'ER', 'ERS', 'ING', 'INGS']) yield `${stem}${ending}`;
}

/** Shorter ones, such as 'ho', are the beginning of much else. */
const LEAST_INFLECTED = 3;

/** The ratings name few words with endings, so these follow from the word. */
function keptAway(published: ReadonlySet<string>, ratings: Ratings): ReadonlySet<string> {
  const away = new Set<string>();
  for (const [rated, rating] of ratings) {
    if (rating === 0) continue;
    const word = asOnWheels(rated);
    away.add(word);
    if (word.length < LEAST_INFLECTED) continue;
    away.add(plural(word));
    // Further endings at what is no word here would hit others: 'spicy' is nothing of the sort.
    if (!published.has(word)) continue;
    for (const form of inflected(word)) away.add(form);
  }
  return away;
}

/** The words by grade: each once, with the lowest grade that has it. Words of signs other than letters are left out. */
export function gradedWords(words: PublishedWords, ratings: Ratings): ReadonlyMap<Grade, readonly string[]> {
  const gradeOf = new Map<string, Grade>();
  for (const grade of GRADES) {
    for (const word of words.get(grade) ?? []) {
      const letters = asOnWheels(word);
      if (/^[A-Z]+$/.test(letters) && !gradeOf.has(letters)) gradeOf.set(letters, grade);
    }
  }
  const away = keptAway(new Set(gradeOf.keys()), ratings);
  const byGrade = new Map<Grade, string[]>(GRADES.map((grade) => [grade, []]));
  for (const [word, grade] of gradeOf) if (!away.has(word)) byGrade.get(grade)?.push(word);
  return byGrade;
}

export function makeWordList(words: PublishedWords, ratings: Ratings): WordList {
  return wordListOf(gradedWords(words, ratings));
}
