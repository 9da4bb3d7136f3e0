/** Chances in the words of a teacher: no number is claimed that the runs do not bear out. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { lessonsFinish, shareInTen, spreadInTen } from '../../src/words/chance.ts';

test('in tenths, and in words near the ends', () => {
  expect(lessonsFinish(0.8)).toBe('about 8 lessons in 10 finish');
  expect(lessonsFinish(0.06)).toBe('about 1 lesson in 10 finishes');
  expect(lessonsFinish(0.049)).toBe('hardly any lesson finishes');
  expect(lessonsFinish(0.951)).toBe('nearly all lessons finish');
  expect(shareInTen(0.24)).toBe('about 2 in 10');
});

test('all and none only where it is so without exception', () => {
  const words = (share: number) => [lessonsFinish(share), shareInTen(share)];
  expect(words(1)).toEqual(['all lessons finish', 'all']);
  expect(words(0)).toEqual(['no lesson finishes', 'none']);
  for (const runs of [200, 2_000]) {
    for (const text of [...words(1 - 1 / runs), ...words(1 / runs)]) {
      expect(text).not.toMatch(/^all|^no |^none|10 lessons|10 in 10/);
    }
  }
});

test('fewer than half are not told as half, and a larger chance is never told as a smaller one', () => {
  const rank = (share: number): number => {
    const words = shareInTen(share);
    const order = ['none', 'hardly any', 'nearly all', 'all'];
    if (order.includes(words)) return [0, 0.5, 9.5, 10][order.indexOf(words)] ?? -1;
    return Number(/\d+/.exec(words)?.[0]) - (words.startsWith('just under') ? 0.1 : 0);
  };
  const share = fc.double({ min: 0, max: 1, noNaN: true });
  fc.assert(
    fc.property(share, share, (a, b) => {
      if (a <= b) expect(rank(a)).toBeLessThanOrEqual(rank(b));
      if (a < 0.5) expect(rank(a)).toBeLessThan(5);
    }),
    { seed: 41 },
  );
});

test('a spread is told by its ends, or by one word', () => {
  expect(spreadInTen([0.71, 0.9, 0.8])).toBe('between 7 and 9 in 10');
  expect(spreadInTen([0.71, 0.7])).toBe('about 7 in 10');
  expect(spreadInTen([0.71, 0.97])).toBe('between 7 in 10 and nearly all');
  expect(spreadInTen([0.02, 0.3])).toBe('between hardly any and 3 in 10');
  expect(spreadInTen([0.97, 0.99])).toBe('nearly all');
});
