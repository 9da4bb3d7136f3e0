/**
 * The list as one short text, for the page: a line a grade, its words by alphabet, each written as the number of letters that it shares
 * with the one before (in base 36, lower case) and the letters that follow (upper case). 'ABLE', 'ABLY', 'ABOUT' is '0ABLE3Y2OUT'.
 */
import { GRADES, type Grade, type WordList, wordListOf } from './word-list.ts';

const BASE = 36;

export function pack(byGrade: ReadonlyMap<Grade, readonly string[]>): string {
  return GRADES.map((grade) => {
    let before = '';
    return [...(byGrade.get(grade) ?? [])]
      .sort()
      .map((word) => {
        let shared = 0;
        while (shared < word.length && shared < BASE - 1 && word[shared] === before[shared]) shared++;
        before = word;
        return `${shared.toString(BASE)}${word.slice(shared)}`;
      })
      .join('');
  }).join('\n');
}

function wordsOf(line: string): readonly string[] {
  let word = '';
  return Array.from(line.matchAll(/([0-9a-z])([A-Z]*)/g), ([, shared = '0', rest = '']) => {
    word = `${word.slice(0, Number.parseInt(shared, BASE))}${rest}`;
    return word;
  });
}

export function unpack(packed: string): WordList {
  const lines = packed.split('\n');
  return wordListOf(new Map(GRADES.map((grade, i) => [grade, wordsOf(lines[i] ?? '')])));
}
