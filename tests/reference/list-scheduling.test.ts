/**
 * A team of m pupils whose steps keep one pair of hands busy each is m processors that never stand still while a task is ready: list
 * scheduling. Graham 1969, Bounds on Multiprocessing Timing Anomalies, SIAM Journal on Applied Mathematics 17: his example,
 * which ends later when the list, the number of processors, the times or the arrows are changed for the better; and his bound
 * ω ≤ W/m + (1 − 1/m) · (longest path), W the sum of all times, which holds for any list and so for any way of choosing.
 */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { compile } from '../../src/engine/network.ts';
import { Batch } from '../../src/engine/simulation/batch.ts';
import { clockOf } from '../../src/engine/simulation/clock.ts';
import { type Choosing, PLAIN } from '../../src/engine/simulation/rules.ts';
import type { Game } from '../../src/game/model.ts';
import { type Chance, plainGame, playPlainly } from './plain-simulation.ts';
import { type Activity, certain, project } from './project.ts';
import { seededChance } from './seeded-chance.ts';

function lesson(activities: readonly Activity[], pupils: number): Game {
  return { ...project(activities), head: { lesson: { pupils, teams: 1 } } };
}

/** When the engine's run ends. */
function endOf(game: Game, choosing: (indexOf: (id: string) => number) => Choosing): number {
  const network = compile(game);
  const batch = new Batch(clockOf(game, network), {
    ...PLAIN,
    choosing: choosing((id) => network.index.get(id) ?? -1),
  });
  batch.run(1);
  return batch.result().median;
}

function inListOrder(list: readonly string[]): Chance {
  return {
    ...seededChance(1969),
    choose: (_run, _choice, open) => {
      const [first] = [...open].sort((a, b) => list.indexOf(a.id) - list.indexOf(b.id));
      if (first === undefined) throw new RangeError('choose: nothing is open');
      return first;
    },
  };
}

describe("Graham's example", () => {
  // Tasks 1 to 9, their times, 1 before 9 and 4 before 5 to 8: from memory, as are the lists.
  const example = (shorter = 0, arrows: readonly string[] = ['5', '6', '7', '8']) =>
    [3, 2, 2, 2, 4, 4, 4, 4, 9].map((time, i) => {
      const id = String(i + 1);
      return certain(id, time - shorter, id === '9' ? '1' : arrows.includes(id) ? '4' : '');
    });
  const list = [...'123456789'];

  it.each([
    ['on three processors, in list order', example(), 3, list, 12],
    ['with the changed list', example(), 3, [...'124563978'], 14],
    ['with a fourth processor', example(), 4, list, 15],
    ['with every time one shorter', example(1), 3, list, 13],
    ['without the arrows from 4 to 5 and to 6', example(0, ['7', '8']), 3, list, 16],
  ])('%s', (_, tasks, processors, order, end) => {
    const game = lesson(tasks, processors);
    expect(playPlainly(plainGame(game), inListOrder(order), 0).end).toBe(end);
    expect(endOf(game, (indexOf) => order.map(indexOf))).toBe(end);
  });
});

describe("Graham's bound", () => {
  const networks = fc
    .array(fc.tuple(fc.nat(12), fc.array(fc.nat(1000), { maxLength: 3 }), fc.nat(1000)), {
      minLength: 1,
      maxLength: 18,
      size: 'max',
    })
    .map((plans) => {
      const id = (i: number) => String.fromCodePoint(97 + i);
      return {
        activities: plans.map(([time, before], i) =>
          certain(id(i), time, i === 0 ? '' : [...new Set(before.map((number) => id(number % i)))].join('')),
        ),
        list: plans.map(([, , rank], i) => ({ id: id(i), rank })).sort((a, b) => a.rank - b.rank),
      };
    });

  it('holds on random networks, for any way of choosing', () => {
    fc.assert(
      fc.property(networks, fc.integer({ min: 1, max: 6 }), ({ activities, list }, pupils) => {
        const work = activities.reduce((sum, { low }) => sum + low, 0);
        const finish = new Map<string, number>();
        for (const { id, low, after } of activities) {
          finish.set(id, low + Math.max(0, ...after.map((before) => finish.get(before) ?? Number.NaN)));
        }
        const longest = Math.max(...finish.values());
        const game = lesson(activities, pupils);
        const ends = [
          endOf(game, (indexOf) => list.map(({ id }) => indexOf(id))),
          ...(['any', 'locksFirst', 'newestFirst'] as const).map((choosing) => endOf(game, () => choosing)),
        ];
        for (const end of ends) {
          expect(end).toBeGreaterThanOrEqual(Math.max(longest, work / pupils) - 1e-6);
          expect(end).toBeLessThanOrEqual(work / pupils + (1 - 1 / pupils) * longest + 1e-6);
        }
      }),
      { seed: 1966, numRuns: 300 },
    );
  });
});
