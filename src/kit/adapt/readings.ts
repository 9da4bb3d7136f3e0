/**
 * Whether an answer may be read off the very words of a text: an acrostic, the lengths of words, a word that is the answer. Such a text cannot have
 * other words put into it unread. What can be worked out is worked out; where the text itself speaks of letters, words or counting, it is only said
 * that it may depend on them, since no program knows what a pupil is asked to count. Linear in the text, for each answer.
 */
import { normaliseCode, symbolsOf } from '../../game/codes.ts';

export type Way =
  /** First letters of words that follow each other. */
  | 'initials'
  /** First, or last, letters of lines. */
  | 'lineStarts'
  | 'lineEnds'
  /** Numbers of letters of words that follow each other. */
  | 'letterCounts'
  /** The answer stands there as it is. */
  | 'stated';

export type Dependence =
  /** Read so, the old text gives the answer and the new one does not. */
  | { readonly sure: true; readonly way: Way; readonly answer: string }
  /** The text, or the task that goes with it, speaks of letters, words or counting. */
  | { readonly sure: false };

/** Shorter answers stand in any text by chance. */
const SHORTEST = 3;

const COUNTING =
  /\b(?:acrostic|alphabet(?:ical)?|backwards?|capitals?|consonants?|count(?:ed|ing|s)?|how many|initials?|letters?|lines?|number of|rhymes?|spel(?:l|ls|led|ling|t)|syllables?|vowels?|words?)\b/iu;

const wordsIn = (text: string): readonly string[] =>
  text
    .normalize('NFC')
    .replace(/[’']/gu, '')
    .match(/[\p{L}\p{N}]+/gu) ?? [];

const linesIn = (text: string): readonly (readonly string[])[] =>
  text
    .split(/\n/u)
    .map(wordsIn)
    .filter((words) => words.length > 0);

const first = (word: string | undefined) => [...(word ?? '')][0]?.toUpperCase() ?? '';
const last = (word: string | undefined) => [...(word ?? '')].at(-1)?.toUpperCase() ?? '';

const READINGS: Readonly<Record<Way, (text: string) => readonly string[]>> = {
  initials: (text) => wordsIn(text).map(first),
  lineStarts: (text) => linesIn(text).map((words) => first(words[0])),
  lineEnds: (text) => linesIn(text).map((words) => last(words.at(-1))),
  letterCounts: (text) => wordsIn(text).map((word) => `${[...word].length}`),
  stated: (text) => wordsIn(text).map(normaliseCode),
};

const WAYS: readonly Way[] = ['stated', 'lineStarts', 'lineEnds', 'initials', 'letterCounts'];

function holds(sequence: readonly string[], part: readonly string[]): boolean {
  return sequence.some((_, start) => part.every((symbol, i) => sequence[start + i] === symbol));
}

function gives(text: string, way: Way, answer: string): boolean {
  return holds(READINGS[way](text), way === 'stated' ? [answer] : symbolsOf(answer));
}

/**
 * Undefined: nothing speaks for it.
 * @param answers normalised, of all that is worked out from this text
 * @param tasks what pupils are asked to do with it, the old text itself among them
 */
export function dependence(
  before: string,
  after: string,
  answers: Iterable<string>,
  tasks: readonly string[],
): Dependence | undefined {
  if (before === after) return undefined;
  let isRead = false;
  for (const answer of answers) {
    isRead = true;
    if (symbolsOf(answer).length < SHORTEST) continue;
    const way = WAYS.find((one) => gives(before, one, answer) && !gives(after, one, answer));
    if (way !== undefined) return { sure: true, way, answer };
  }
  return isRead && tasks.some((task) => COUNTING.test(task)) ? { sure: false } : undefined;
}
