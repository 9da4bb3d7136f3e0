import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { loadWordList, publishedWords, ratings } from '../../app/command/word-list.ts';
import { GRADES, gradeOf, offers, spellable } from '../../src/fasteners/word-list/index.ts';
import { gradedWords, makeWordList } from '../../src/fasteners/word-list/make.ts';
import { pack, unpack } from '../../src/fasteners/word-list/packed.ts';
import type { Grade } from '../../src/fasteners/word-list/word-list.ts';

const LETTERS = Array.from('ABCDEFGHIJKLMNOPQRSTUVWXYZ');
const ANY = [undefined, undefined, undefined, undefined];
const without = (letters: string) => LETTERS.filter((letter) => !letters.includes(letter));

const small = makeWordList(
  new Map<Grade, readonly string[]>([
    [10, ['care', 'core', 'been', 'a']],
    [20, ['cure', 'care', "can't", 'café']],
    [35, ['corf', 'mudd', 'mudds', 'mudding', 'mudders', 'muddy', 'mud']],
  ]),
  new Map([
    ['mud', 2],
    ['been', 0],
    ['car', 1],
  ]),
);

describe('making the list', () => {
  test('a word stands once, with its lowest grade, by grade and then by alphabet', () => {
    expect(small.graded(4)).toEqual([
      ['BEEN', 10],
      ['CARE', 10],
      ['CORE', 10],
      ['CAFE', 20],
      ['CURE', 20],
      ['CORF', 35],
      ['MUDD', 35],
    ]);
    expect(small.graded(1)).toEqual([['A', 10]]);
    expect(small.graded(40)).toEqual([]);
    expect(small.graded(4)).toBe(small.graded(4));
  });

  test('what is rated 1 or 2 is kept away, with the endings that it takes, and no more', () => {
    const all = [3, 4, 5, 6, 7].flatMap((length) => small.graded(length).map(([word]) => word));
    expect(all).not.toContain('MUD');
    expect(all).not.toContain('MUDDING');
    expect(all).not.toContain('MUDDERS');
    expect(all).toContain('MUDDS');
    expect(all).toContain('MUDDY');
    // Rated, but no word of the list itself.
    expect(all).toContain('CARE');
  });

  test('no word that is kept away is left in what the page gets, in either rating', () => {
    const packed = unpack(pack(gradedWords(publishedWords(), ratings())));
    const bad = [...ratings()].filter(([, rating]) => rating > 0).map(([word]) => word.toUpperCase());
    expect(bad.length).toBeGreaterThan(1000);
    expect(bad.filter((word) => gradeOf(packed, word) !== undefined)).toEqual([]);
  });
});

describe('the packed text', () => {
  const word = fc.stringMatching(/^[A-Z]{1,9}$/);
  const words = fc.uniqueArray(word, { maxLength: 60 });

  test('unpacks to the words that were packed', () => {
    fc.assert(
      fc.property(words, words, words, (...lists) => {
        const seen = new Set<string>();
        const byGrade = new Map(
          GRADES.map((grade, i) => {
            const own = (lists[i] ?? []).filter((one) => !seen.has(one));
            for (const one of own) seen.add(one);
            return [grade, own] as const;
          }),
        );
        const list = unpack(pack(byGrade));
        for (const [grade, own] of byGrade) for (const one of own) expect(gradeOf(list, one)).toBe(grade);
        const lengths = Array.from({ length: 10 }, (_, length) => list.graded(length).length);
        expect(lengths.reduce((sum, count) => sum + count, 0)).toBe(seen.size);
      }),
      { seed: 2016, numRuns: 200 },
    );
  });

  test('the whole list is the same packed and made', () => {
    const packed = unpack(pack(gradedWords(publishedWords(), ratings())));
    for (let length = 0; length <= 20; length++) {
      expect(packed.graded(length)).toEqual(loadWordList().graded(length));
    }
  });
});

describe('words that a lock can show', () => {
  test('wheels, known letters and grade each take words away', () => {
    expect(spellable(small, ANY)).toHaveLength(7);
    expect(spellable(small, [undefined, without('O'), undefined, undefined])).not.toContain('CORE');
    expect(spellable(small, ANY, new Map([[1, 'A']]))).toEqual(['CARE', 'CAFE']);
    expect(spellable(small, ANY, new Map([[0, 'C']]), 10)).toEqual(['CARE', 'CORE']);
    expect(spellable(small, [], new Map())).toEqual([]);
  });

  test('a known letter that the wheel does not have leaves none', () => {
    expect(spellable(small, [['C'], ['A'], ['R'], ['E']], new Map([[1, 'O']]))).toEqual([]);
  });

  test('a symbol of more than one letter on a wheel is none that words have', () => {
    expect(spellable(small, [['C', 'QU'], ['A', 'U'], ['R'], ['E']])).toEqual(['CARE', 'CURE']);
  });
});

describe('words to set instead', () => {
  test('known words first, then without flaws, then near to the one that was wanted', () => {
    const noO = [undefined, without('O'), undefined, undefined];
    expect(offers(small, noO, { instead: 'CORE', count: 3 })).toEqual(['CARE', 'BEEN', 'CURE']);
    expect(offers(small, ANY, { instead: 'CORE', count: 9 })).not.toContain('CORE');
    expect(offers(small, ANY, { from: 20, count: 2, instead: 'CARE' })).toEqual(['CAFE', 'CURE']);
  });

  test('each can be shown', () => {
    const wheels = [without('AEIOU'), without('CO'), without('Q'), without('Z')];
    const offered = offers(loadWordList(), wheels, { instead: 'CORE', count: 50 });
    expect(offered).toHaveLength(50);
    for (const word of offered) expect(wheels.every((wheel, i) => wheel.includes(word.charAt(i)))).toBe(true);
  });
});
