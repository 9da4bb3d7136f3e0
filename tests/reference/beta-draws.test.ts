/**
 * The times that steps take in a simulation are beta-PERT with λ = 4: low + (high − low) · Beta(1 + 4(likely − low)/(high − low),
 * 1 + 4(high − likely)/(high − low)). Their moments against the closed form, and the whole distribution against the quantiles of a
 * general-purpose statistics library (@stdlib/stats-base-dists-beta-quantile), by the Kolmogorov–Smirnov distance. Quantiles and
 * tables of quantiles against the same library, point by point.
 */
import quantile from '@stdlib/stats-base-dists-beta-quantile';
import { describe, expect, it } from 'vitest';
import { compile } from '../../src/engine/network.ts';
import { Batch } from '../../src/engine/simulation/batch.ts';
import { betaBelow, betaQuantile, pertTable, quantileAt } from '../../src/engine/simulation/beta.ts';
import { clockOf } from '../../src/engine/simulation/clock.ts';
import { PLAIN } from '../../src/engine/simulation/rules.ts';
import type { Estimate } from '../../src/game/model.ts';
import { seededRandom } from '../random-game.ts';
import { activity, project } from './project.ts';
import { betaPert } from './seeded-chance.ts';

const ESTIMATES: readonly Estimate[] = [
  { low: 1, likely: 2, high: 5 },
  { low: 3, likely: 5, high: 10 },
  { low: 0.3, likely: 0.5, high: 2 },
  { low: 4, likely: 4, high: 10 },
  { low: 3, likely: 9, high: 9 },
  { low: 0, likely: 5, high: 10 },
  { low: 0, likely: 0, high: 1 },
  { low: 0, likely: 1, high: 10_000 },
  { low: 7, likely: 7.001, high: 7.002 },
];
const RUNS = 4000;

/** The times of one step in as many runs, sorted: nothing else decides the end. */
function drawn({ low, likely, high }: Estimate): number[] {
  const game = project([activity('a', low, likely, high)]);
  const batch = new Batch(clockOf(game, compile(game)), PLAIN);
  batch.run(RUNS);
  return [...batch.result().ends];
}

function plainly(estimate: Estimate): number[] {
  const random = seededRandom(2000);
  return Array.from({ length: RUNS }, () => betaPert(random, estimate)).sort((a, b) => a - b);
}

/** Sorted values are within a Kolmogorov–Smirnov distance of a distribution when its quantiles at that distance on both sides hold them. */
function expectNear(sorted: readonly number[], quantileAt: (share: number) => number, distance: number) {
  const outside = sorted.filter((value, i) => {
    const least = (i + 1) / sorted.length - distance;
    const most = i / sorted.length + distance;
    return (least > 0 && value < quantileAt(least)) || (most < 1 && value > quantileAt(most));
  });
  expect(outside).toEqual([]);
}

describe.each([
  ['the engine', drawn],
  ['the plain simulation', plainly],
])('draws of %s', (_, draws) => {
  it.each(ESTIMATES)('have the moments of $low, $likely, $high', (estimate) => {
    const { low, likely, high } = estimate;
    const times = draws(estimate);
    const mean = (low + 4 * likely + high) / 6;
    const variance = ((mean - low) * (high - mean)) / 7;
    const error = Math.sqrt(variance / RUNS);
    const average = times.reduce((sum, time) => sum + time, 0) / RUNS;
    const spread = times.reduce((sum, time) => sum + (time - average) ** 2, 0) / (RUNS - 1);
    expect(times.every((time) => time >= low && time <= high)).toBe(true);
    expect(Math.abs(average - mean)).toBeLessThan(4 * error);
    // The excess kurtosis of these shapes is at most that of Beta(1, 5), 1.2; the variance's relative standard error √((1.2 + 2)/n).
    expect(Math.abs(spread / variance - 1)).toBeLessThan(4 * Math.sqrt(3.2 / RUNS));
  });

  it.each(ESTIMATES)('have the distribution of $low, $likely, $high', (estimate) => {
    const { low, likely, high } = estimate;
    const quantileOf = quantile.factory(
      1 + (4 * (likely - low)) / (high - low),
      1 + (4 * (high - likely)) / (high - low),
    );
    // One sample of the true distribution in a hundred thousand is further away than 2.47/√n (Kolmogorov 1933).
    expectNear(draws(estimate), (share) => low + (high - low) * quantileOf(share), 2.47 / Math.sqrt(RUNS));
  });
});

describe('quantiles', () => {
  const shapes = [1, 1.0001, 1.25, 1.8, 2.6, 3, 3.7, 4.2, 4.9999, 5];
  const shares = [
    1e-7,
    1e-5,
    1e-3,
    ...Array.from({ length: 99 }, (_, i) => (i + 1) / 100),
    1 - 1e-3,
    1 - 1e-5,
  ];

  it.each(shapes)('of the shape %f are those of the library', (alpha) => {
    const beta = 6 - alpha;
    for (const share of shares) {
      const expected = quantile(share, alpha, beta);
      expect(Math.abs(betaQuantile(share, alpha, beta) / expected - 1)).toBeLessThan(1e-10);
      expect(betaBelow(expected, alpha, beta)).toBeCloseTo(share, 12);
    }
  });

  it.each(shapes)('of the shape %f stand in its table', (alpha) => {
    const beta = 6 - alpha;
    const table = pertTable(alpha);
    const missAt = (share: number) => {
      const word = Math.floor(share * 2 ** 32);
      return Math.abs(quantileAt(table, word) - quantile((word + 0.5) / 2 ** 32, alpha, beta));
    };
    const most = (low: number, high: number) =>
      Math.max(...Array.from({ length: 500 }, (_, i) => missAt(low + ((high - low) * (i + 0.5)) / 500)));
    // Straight lines between 2,048 quantiles, more of them at both ends.
    expect(most(0.01, 0.99)).toBeLessThan(2e-5);
    expect(most(1e-5, 0.01)).toBeLessThan(3e-3);
    expect(most(0.99, 1 - 1e-5)).toBeLessThan(3e-3);
  });

  it.each(shapes)('of the shape %f have its mean and variance', (alpha) => {
    const table = pertTable(alpha);
    const count = 2 ** 17;
    const values = Array.from({ length: count }, (_, i) => quantileAt(table, (i + 0.5) * 2 ** 15));
    const mean = values.reduce((sum, value) => sum + value, 0) / count;
    const variance = values.reduce((sum, value) => sum + (value - mean) ** 2, 0) / count;
    expect(Math.abs(mean - alpha / 6)).toBeLessThan(1e-5);
    expect(Math.abs(variance - (alpha * (6 - alpha)) / (36 * 7))).toBeLessThan(1e-5);
  });
});
