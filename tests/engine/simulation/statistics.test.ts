import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { nearestRank, select, upperMiddle } from '../../../src/engine/simulation/statistics.ts';

describe('order statistics', () => {
  it('are those of the sorted list', () => {
    const value = fc.oneof(fc.nat(9), fc.constant(Number.POSITIVE_INFINITY));
    fc.assert(
      fc.property(fc.array(value, { minLength: 1, maxLength: 60 }), fc.nat(59), (list, at) => {
        const position = at % list.length;
        const sorted = Float64Array.from(list).sort();
        expect(select(Float64Array.from(list), list.length, position)).toBe(sorted[position]);
      }),
      { numRuns: 500, seed: 3 },
    );
  });

  it('are the upper middle, and the nearest rank', () => {
    expect([1, 2, 3, 4, 2000].map(upperMiddle)).toEqual([0, 1, 1, 2, 1000]);
    expect([1, 9, 10, 11, 30, 2000].map((count) => nearestRank(10, count))).toEqual([0, 0, 0, 1, 2, 199]);
    expect([1, 10, 11, 30, 2000].map((count) => nearestRank(90, count))).toEqual([0, 8, 9, 26, 1799]);
  });
});
