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

const A = 'A'.charCodeAt(0);
const Z = 'Z'.charCodeAt(0);

/** Letter by letter: a regular expression takes several times as long for tens of thousands of words. */
function wordsOf(line: string): readonly string[] {
  const words: string[] = [];
  let word = '';
  for (let at = 0; at < line.length; ) {
    const shared = Number.parseInt(line.charAt(at), BASE);
    const from = at + 1;
    at = from;
    while (at < line.length && line.charCodeAt(at) >= A && line.charCodeAt(at) <= Z) at++;
    word = word.slice(0, shared) + line.slice(from, at);
    words.push(word);
  }
  return words;
}

export function unpack(packed: string): WordList {
  const lines = packed.split('\n');
  return wordListOf(new Map(GRADES.map((grade, i) => [grade, wordsOf(lines[i] ?? '')])));
}
