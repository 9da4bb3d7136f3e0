/**
 * Of several open steps each is taken alike, whatever was taken before: the orders in which a single pupil takes up steps that are all open from
 * the start are equally frequent, by Pearson's chi-squared test (1900) with a fixed stream.
 */
import { expect, it } from 'vitest';
import { compile } from '../../src/engine/network.ts';
import { clockOf } from '../../src/engine/simulation/clock.ts';
import { Player } from '../../src/engine/simulation/play.ts';
import { PLAIN } from '../../src/engine/simulation/rules.ts';
import { certain, project } from './project.ts';

const RUNS = 24_000;
const STREAM = 0;

/** How often each order of the first `taken` of so many steps was seen. */
function ordersOf(steps: number, taken: number): Map<string, number> {
  const activities = Array.from({ length: steps }, (_, i) => certain(String.fromCodePoint(97 + i), 1));
  const game = { ...project(activities), head: { lesson: { pupils: 1, teams: 1 } } };
  const clock = clockOf(game, compile(game));
  const player = new Player(clock, PLAIN, STREAM);
  const seen = new Map<string, number>();
  for (let run = 0; run < RUNS; run++) {
    player.play(run);
    const order = clock.network.ids
      .map((id, i) => ({ id, begin: player.begin[i] ?? Infinity }))
      .filter(({ begin }) => begin < taken)
      .sort((a, b) => a.begin - b.begin)
      .map(({ id }) => id)
      .join('');
    seen.set(order, (seen.get(order) ?? 0) + 1);
  }
  return seen;
}

// Degrees of freedom: one less than the orders. One true sample in 100,000 is above the limit (Wilson and Hilferty 1931).
it.each([
  [2, 1, 2],
  [3, 3, 6],
  [4, 4, 24],
  [5, 3, 60],
  [9, 1, 9],
  [12, 2, 132],
])('of %i steps the first %i are taken in any of %i orders', (steps, taken, orders) => {
  const seen = ordersOf(steps, taken);
  expect(seen.size).toBe(orders);
  const expected = RUNS / orders;
  const squared = [...seen.values()].reduce((sum, count) => sum + (count - expected) ** 2 / expected, 0);
  const degrees = orders - 1;
  const limit = degrees * (1 - 2 / (9 * degrees) + 4.26 * Math.sqrt(2 / (9 * degrees))) ** 3;
  expect(squared).toBeLessThan(limit);
});
