import fc from 'fast-check';
import { expect, test } from 'vitest';
import { chain, isotonic } from '../../src/spine/isotonic.ts';

const points = fc.array(
  fc.record({ target: fc.integer({ min: -50, max: 50 }), weight: fc.integer({ min: 1, max: 5 }) }),
  { minLength: 1, maxLength: 9 },
);

/** max over a ≤ i of min over b ≥ i of the mean of a … b: what least squares under an order comes to. */
function maxMin(targets: readonly number[], weights: readonly number[]): number[] {
  const mean = (a: number, b: number) => {
    let sum = 0;
    let weight = 0;
    for (let j = a; j <= b; j++) {
      sum += (targets[j] ?? 0) * (weights[j] ?? 1);
      weight += weights[j] ?? 1;
    }
    return sum / weight;
  };
  const indices = targets.map((_, i) => i);
  return indices.map((i) =>
    Math.max(...indices.slice(0, i + 1).map((a) => Math.min(...indices.slice(i).map((b) => mean(a, b))))),
  );
}

const loss = (values: readonly number[], targets: readonly number[], weights: readonly number[]) =>
  values.reduce((sum, value, i) => sum + (weights[i] ?? 1) * (value - (targets[i] ?? 0)) ** 2, 0);

test('pools adjacent violators to the max-min of means', () => {
  fc.assert(
    fc.property(points, (list) => {
      const targets = list.map((point) => point.target);
      const weights = list.map((point) => point.weight);
      const expected = maxMin(targets, weights);
      for (const [i, value] of isotonic(targets, weights).entries()) {
        expect(value).toBeCloseTo(expected[i] ?? Number.NaN, 9);
      }
    }),
    { seed: 11 },
  );
});

test('no chain in order and with the gaps is nearer to the targets', () => {
  const moved = fc.array(fc.integer({ min: -40, max: 40 }), { minLength: 9, maxLength: 9 });
  const gap = fc.array(fc.integer({ min: 0, max: 20 }), { minLength: 9, maxLength: 9 });
  fc.assert(
    fc.property(points, gap, moved, (list, gaps, steps) => {
      const targets = list.map((point) => point.target);
      const weights = list.map((point) => point.weight);
      const best = chain(targets, gaps, weights);
      const other: number[] = [];
      for (const [i, target] of targets.entries()) {
        const wanted = target + (steps[i] ?? 0);
        const before = other[i - 1];
        other.push(before === undefined ? wanted : Math.max(wanted, before + (gaps[i - 1] ?? 0)));
        const bestBefore = best[i - 1];
        if (bestBefore !== undefined) {
          expect((best[i] ?? 0) - bestBefore).toBeGreaterThanOrEqual((gaps[i - 1] ?? 0) - 1e-9);
        }
      }
      expect(loss(best, targets, weights)).toBeLessThanOrEqual(loss(other, targets, weights) + 1e-6);
    }),
    { seed: 12 },
  );
});
