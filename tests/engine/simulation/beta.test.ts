import { describe, expect, it } from 'vitest';
import {
  betaBelow,
  betaQuantile,
  pertAlpha,
  pertTable,
  quantileAt,
} from '../../../src/engine/simulation/beta.ts';

const SHAPES = [1, 1.001, 1.4, 2, 2.5, 3, 3.75, 4.999, 5];

describe('the beta-PERT distribution', () => {
  it('is uniform, a power or a polynomial where that is known', () => {
    for (const x of [0, 0.01, 0.25, 0.5, 0.9, 1]) {
      expect(betaBelow(x, 1, 1)).toBeCloseTo(x, 13);
      expect(betaBelow(x, 5, 1)).toBeCloseTo(x ** 5, 13);
      expect(betaBelow(x, 1, 5)).toBeCloseTo(1 - (1 - x) ** 5, 13);
      expect(betaBelow(x, 3, 3)).toBeCloseTo(x ** 3 * (10 - 15 * x + 6 * x * x), 13);
    }
  });

  it('is inverted by its quantiles', () => {
    for (const alpha of SHAPES) {
      for (const p of [1e-6, 0.001, 0.1, 0.5, 0.77, 0.999, 1 - 1e-6]) {
        expect(betaBelow(betaQuantile(p, alpha, 6 - alpha), alpha, 6 - alpha)).toBeCloseTo(p, 12);
      }
    }
  });

  it('has, as tables that are read in straight lines, the mean and the variance of the closed form to a ten-thousandth', () => {
    for (const alpha of SHAPES) {
      const table = pertTable(alpha);
      // The two words at the ends of each piece that cannot be cut any smaller: 2^19 pieces of 2^13 words.
      const pieces = 2 ** 19;
      const words = 2 ** 32 / pieces;
      let sum = 0;
      let squares = 0;
      let last = 0;
      let isRising = true;
      for (let i = 0; i < pieces; i++) {
        const from = quantileAt(table, i * words);
        const to = quantileAt(table, i * words + words - 1);
        isRising &&= from >= last && to >= from;
        last = to;
        sum += (from + to) / 2;
        squares += (from * from + from * to + to * to) / 3;
      }
      const mean = sum / pieces;
      const variance = squares / pieces - mean * mean;
      expect(isRising).toBe(true);
      expect(last).toBeLessThanOrEqual(1);
      expect(Math.abs(mean / (alpha / 6) - 1)).toBeLessThan(1e-4);
      expect(Math.abs(variance / ((alpha * (6 - alpha)) / 252) - 1)).toBeLessThan(1e-4);
    }
  });

  it('keeps a table for a shape, however its estimates are written', () => {
    expect(pertTable(pertAlpha(0.1, 0.2, 0.3))).toBe(pertTable(pertAlpha(1, 2, 3)));
    expect(pertAlpha(1, 1, 4)).toBe(1);
    expect(pertAlpha(1, 4, 4)).toBe(5);
  });
});
