/**
 * Heights along a column are the least-squares optimum for their order: pool adjacent violators (Ayer, Brunk, Ewing, Reid and
 * Silverman 1955, An empirical distribution function for sampling with incomplete information, Annals of Mathematical Statistics
 * 26; Barlow, Bartholomew, Bremner and Brunk 1972, Statistical Inference under Order Restrictions), against a general-purpose
 * solver of convex quadratic programmes: HiGHS (Huangfu and Hall 2018).
 */
import loadHighs, { type Highs } from 'highs';
import { beforeAll, expect, test } from 'vitest';
import { type Bounds, chain } from '../../src/spine/isotonic.ts';
import { judge } from '../../src/spine/judge.ts';
import { join, type Tie } from '../../src/spine/spine.ts';
import { seededRandom } from '../random-game.ts';

let highs: Highs;
beforeAll(async () => {
  highs = await loadHighs();
});

const signed = (value: number) => `${value < 0 ? '-' : '+'} ${Math.abs(value)}`;

/** One term of a sum of squares: weight · (plus − minus + constant)². Without `minus`, of plus alone. */
interface Square {
  readonly weight: number;
  readonly plus: number;
  readonly minus?: number;
  readonly constant: number;
}

/** x[after] − x[before] ≥ gap. */
interface Gap {
  readonly before: number;
  readonly after: number;
  readonly gap: number;
}

/** The variables that make the sum of squares least. */
function leastSquares(
  size: number,
  squares: readonly Square[],
  gaps: readonly Gap[],
  bounds: readonly string[],
): number[] {
  const linear = new Float64Array(size);
  const products = new Map<string, number>();
  const add = (key: string, by: number) => products.set(key, (products.get(key) ?? 0) + by);
  for (const { weight, plus, minus, constant } of squares) {
    linear[plus] = (linear[plus] ?? 0) + 2 * weight * constant;
    add(`x${plus} ^ 2`, 2 * weight);
    if (minus === undefined) continue;
    linear[minus] = (linear[minus] ?? 0) - 2 * weight * constant;
    add(`x${minus} ^ 2`, 2 * weight);
    const [a, b] = plus < minus ? [plus, minus] : [minus, plus];
    add(`x${a} * x${b}`, -4 * weight);
  }
  const solution = highs.solve(
    [
      'Minimize',
      ` obj: ${Array.from(linear, (value, i) => `${signed(value)} x${i}`).join(' ')}`,
      ` + [ ${[...products].map(([key, value]) => `${signed(value)} ${key}`).join(' ')} ] / 2`,
      'Subject To',
      ...(gaps.length === 0 ? [' r: 0 x0 >= 0'] : []),
      ...gaps.map(({ before, after, gap }, i) => ` r${i}: x${after} - x${before} >= ${gap}`),
      'Bounds',
      ...Array.from({ length: size }, (_, i) => ` x${i} free`),
      ...bounds,
      'End',
    ].join('\n'),
  );
  expect(solution.Status).toBe('Optimal');
  return Array.from({ length: size }, (_, i) => {
    const column = solution.Columns[`x${i}`];
    if (!column || !('Primal' in column)) throw new Error(`HiGHS gave no value for x${i}.`);
    return column.Primal;
  });
}

function chainBySolver(
  targets: readonly number[],
  gaps: readonly number[],
  weights: readonly number[],
  within?: Bounds,
): number[] {
  const last = targets.length - 1;
  return leastSquares(
    targets.length,
    targets.map((target, i) => ({ weight: weights[i] ?? 1, plus: i, constant: -target })),
    gaps.slice(0, last).map((gap, i) => ({ before: i, after: i + 1, gap })),
    within
      ? [` x0 >= ${within.low}`, last > 0 ? ` x${last} <= ${within.high}` : ` x0 <= ${within.high}`]
      : [],
  );
}

function randomChain(random: () => number) {
  const size = 1 + Math.floor(12 * random());
  const list = (from: number, to: number) =>
    Array.from({ length: size }, () => Math.round(from + (to - from) * random()));
  return { targets: list(-100, 200), gaps: list(0, 40), weights: list(1, 6) };
}

test('a chain is the least-squares optimum, on a hundred random cases', () => {
  const random = seededRandom(41);
  for (let round = 0; round < 100; round++) {
    const { targets, gaps, weights } = randomChain(random);
    const expected = chainBySolver(targets, gaps, weights);
    for (const [i, y] of chain(targets, gaps, weights).entries()) {
      expect(Math.abs(y - (expected[i] ?? Number.NaN)), `case ${round}`).toBeLessThan(1e-3);
    }
  }
});

test('within bounds too, on a hundred random cases, most of them with a bound that presses', () => {
  const random = seededRandom(42);
  let pressed = 0;
  for (let round = 0; round < 100; round++) {
    const { targets, gaps, weights } = randomChain(random);
    const least = gaps.slice(0, -1).reduce((sum, gap) => sum + gap, 0);
    const low = Math.round(-60 + 120 * random());
    const within = { low, high: low + least + Math.round(80 * random()) };
    const expected = chainBySolver(targets, gaps, weights, within);
    const found = chain(targets, gaps, weights, within);
    for (const [i, y] of found.entries()) {
      expect(Math.abs(y - (expected[i] ?? Number.NaN)), `case ${round}`).toBeLessThan(1e-3);
    }
    const free = chain(targets, gaps, weights);
    if (found.some((y, i) => Math.abs(y - (free[i] ?? 0)) > 1)) pressed++;
  }
  expect(pressed).toBeGreaterThan(50);
});

/** Sum of squared vertical distances over all ties. */
const squared = (ties: readonly Tie[], y: ArrayLike<number>) =>
  ties.reduce((sum, { from, fromY, to, toY }) => sum + ((y[from] ?? 0) + fromY - (y[to] ?? 0) - toY) ** 2, 0);

test('columns that settle in turn come within a hundredth of the optimum of all three together', () => {
  const random = seededRandom(43);
  for (let round = 0; round < 40; round++) {
    const size = 6 + Math.floor(15 * random());
    const bars = 2 + Math.floor((size - 3) * 0.5 * random());
    const blocks = Array.from({ length: size }, () => ({ height: 20 + Math.round(100 * random()) }));
    const inside = (block: number) => Math.round((blocks[block]?.height ?? 0) * random());
    const tie = (from: number, to: number): Tie => ({ from, fromY: inside(from), to, toY: inside(to) });
    const ties = blocks.flatMap((_, i) => {
      if (i === 0) return [];
      const beside = i < bars ? i - 1 : Math.floor(bars * random());
      return [tie(beside, i), ...(random() < 0.3 ? [tie(i, Math.floor(i * random()))] : [])];
    });
    const gap = 12;
    const sides = blocks.map((_, i) => (i < bars ? 'spine' : random() < 0.5 ? 'left' : 'right'));
    const column = (side: string) => sides.flatMap((at, i) => (at === side ? [i] : []));
    const columns = { left: column('left'), spine: column('spine'), right: column('right') };
    const { y } = judge(join({ blocks, bars, ties, gap: () => gap, unit: 10 }), columns, 60);
    const best = leastSquares(
      size,
      ties.map(({ from, fromY, to, toY }) => ({ weight: 1, plus: from, minus: to, constant: fromY - toY })),
      Object.values(columns).flatMap((ids) =>
        ids.slice(1).map((after, i) => {
          const before = ids[i] ?? 0;
          return { before, after, gap: (blocks[before]?.height ?? 0) + gap };
        }),
      ),
      [' x0 = 0'],
    );
    const [found, least] = [squared(ties, y), squared(ties, best)];
    expect(found, `case ${round}`).toBeGreaterThanOrEqual(least - 1e-3 * (1 + least));
    expect(found, `case ${round}`).toBeLessThanOrEqual(1.01 * least + 1);
  }
});
