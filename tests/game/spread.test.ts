import fc from 'fast-check';
import { expect, test } from 'vitest';
import { defaultMinutes } from '../../src/game/defaults.ts';
import type { Estimate, GameNode } from '../../src/game/model.ts';
import { aroundLikely, usualEstimate, widthOf, withWidth } from '../../src/game/spread.ts';

const PUZZLE: GameNode = { id: 'p', kind: 'puzzle', name: 'P' };
const PLACE: GameNode = { id: 'h', kind: 'place', name: 'H' };
const LOCK: GameNode = { id: 'f', kind: 'fastener', name: 'F', on: 'b', type: 'number' };
const CLUE: GameNode = { id: 'c', kind: 'clue', name: 'C' };

/** In whole seconds, as a teacher types them; the likely time above 0. */
const estimates: fc.Arbitrary<Estimate> = fc
  .tuple(fc.nat(3600), fc.integer({ min: 1, max: 3600 }), fc.nat(3600))
  .map(([below, likely, above]) => ({
    low: Math.max(0, likely - below) / 60,
    likely: likely / 60,
    high: (likely + above) / 60,
  }));

const RUNS = { seed: 40, numRuns: 500 };

test('one number keeps the ratios of the default', () => {
  expect(aroundLikely(10, defaultMinutes(PUZZLE), usualEstimate(PUZZLE))).toEqual({
    low: 6,
    likely: 10,
    high: 20,
  });
  expect(aroundLikely(4, defaultMinutes(PLACE), usualEstimate(PLACE))).toEqual({
    low: 2,
    likely: 4,
    high: 10,
  });
  expect(aroundLikely(1, defaultMinutes(LOCK), usualEstimate(LOCK))).toEqual({
    low: 0.6,
    likely: 1,
    high: 4,
  });
});

test('what takes no time by itself varies as a puzzle does', () => {
  expect(aroundLikely(5, defaultMinutes(CLUE), usualEstimate(CLUE))).toEqual({ low: 3, likely: 5, high: 10 });
  expect(usualEstimate({ ...CLUE, decoy: true })).toEqual({ low: 0.5, likely: 1, high: 3 });
});

test('another likely time is in order and keeps the ratios within half a second', () => {
  fc.assert(
    fc.property(estimates, fc.integer({ min: 0, max: 7200 }), (base, seconds) => {
      const likely = seconds / 60;
      const { low, high, ...rest } = aroundLikely(likely, base, base);
      expect(rest).toEqual({ likely });
      expect(low).toBeGreaterThanOrEqual(0);
      expect(low).toBeLessThanOrEqual(likely);
      expect(high).toBeGreaterThanOrEqual(likely);
      const half = 0.5 / 60 + 1e-9;
      expect(Math.abs(low - (base.low / base.likely) * likely)).toBeLessThanOrEqual(half);
      expect(Math.abs(high - (base.high / base.likely) * likely)).toBeLessThanOrEqual(half);
    }),
    RUNS,
  );
});

test('the width of a default gives the default again', () => {
  for (const node of [PUZZLE, PLACE, LOCK, { ...CLUE, decoy: true }]) {
    const usual = usualEstimate(node);
    expect(withWidth(usual, usual, widthOf(usual, usual))).toEqual(usual);
  }
});

test('always the same at one end, no shortest time at the other', () => {
  const usual = usualEstimate(PUZZLE);
  expect(withWidth(usual, usual, 0)).toEqual({ low: 5, likely: 5, high: 5 });
  expect(withWidth(usual, usual, 1)).toEqual({ low: 0, likely: 5, high: 18 });
});

test('a spread widens without a step back, around a likely time that stays', () => {
  fc.assert(
    fc.property(estimates, (estimate) => {
      const usual = usualEstimate(PUZZLE);
      const width = widthOf(estimate, usual);
      expect(width).toBeGreaterThanOrEqual(0);
      expect(width).toBeLessThanOrEqual(1);
      let before = withWidth(estimate, usual, 0);
      expect(before).toEqual({ low: estimate.likely, likely: estimate.likely, high: estimate.likely });
      for (let at = 1; at <= 40; at++) {
        const now = withWidth(estimate, usual, at / 40);
        expect(now.likely).toBe(estimate.likely);
        expect(now.low).toBeLessThanOrEqual(before.low);
        expect(now.high).toBeGreaterThanOrEqual(before.high);
        expect(now.low).toBeGreaterThanOrEqual(0);
        before = now;
      }
      expect(Number.isFinite(before.high)).toBe(true);
    }),
    RUNS,
  );
});
