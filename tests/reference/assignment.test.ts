/**
 * Which lock goes where, against the outside world: a textbook's assignment problem, and random cupboards solved by
 * general-purpose libraries (HiGHS, Huangfu and Hall 2018; munkres from the registry).
 */
import loadHighs, { type Highs } from 'highs';
import { munkres } from 'munkres';
import { beforeAll, describe, expect, it } from 'vitest';
import { assign } from '../../src/kit/assignment.ts';
import { KEYS_ALIKE, LATER, MIXED, MOST_WASTE, NEVER, SHORT } from '../../src/kit/fit/costs.ts';
import { fitKit } from '../../src/kit/fit/index.ts';
import type { Problem } from '../../src/kit/fit/supply.ts';
import { randomCase } from '../kit/cupboards.ts';
import { leastByHighs, sum, tableOf } from './assignment-program.ts';

interface Solved {
  readonly problem: Problem;
  readonly columnOf: Int32Array;
}

/** Every assignment of a fitting. */
function solvedOf(seed: number): Solved[] {
  const { game, kit } = randomCase(seed);
  const all: Solved[] = [];
  fitKit(game, kit, { solved: (problem, columnOf) => all.push({ problem, columnOf }) });
  return all.filter(({ problem }) => problem.rows.length > 0);
}

/** Every way, for small tables. */
function leastByTrying(
  table: readonly (readonly number[])[],
  row = 0,
  used: ReadonlySet<number> = new Set(),
): number {
  if (row === table.length) return 0;
  return (table[row] ?? []).reduce(
    (least, cost, column) =>
      used.has(column)
        ? least
        : Math.min(least, cost + leastByTrying(table, row + 1, new Set([...used, column]))),
    Number.POSITIVE_INFINITY,
  );
}

function leastByUs(table: readonly (readonly number[])[]): number {
  const columnOf = assign(table.length, table[0]?.length ?? 0, (row, column) => table[row]?.[column] ?? 0);
  return sum(
    table,
    Array.from(columnOf, (column, row) => [row, column] as const),
  );
}

describe('the assignment problem', () => {
  it('a textbook: four new machines', () => {
    /**
     * Hillier and Lieberman, Introduction to Operations Research, the chapter on transportation and assignment problems, example 'Job Shop Company': three
     * machines, four locations, the second machine not at the second; the least materials handling cost is 29 dollars an hour, by machine 1 at location 4,
     * machine 2 at 3 and machine 3 at 1. From memory.
     */
    const table = [
      [13, 16, 12, 11],
      [15, NEVER, 13, 20],
      [5, 7, 10, 6],
    ];
    expect([...assign(3, 4, (row, column) => table[row]?.[column] ?? 0)]).toEqual([3, 2, 0]);
    expect(leastByUs(table)).toBe(29);
  });

  it('small tables: every way tried', () => {
    let seed = 7;
    const next = () => {
      seed = (Math.imul(seed, 1_103_515_245) + 12_345) >>> 0;
      return (seed >>> 8) % 12;
    };
    for (let round = 0; round < 300; round++) {
      const rows = 1 + (round % 5);
      const table = Array.from({ length: rows }, () => Array.from({ length: rows + (round % 3) }, next));
      expect(leastByUs(table)).toBe(leastByTrying(table));
    }
  });
});

describe('random cupboards', { timeout: 120_000 }, () => {
  let highs: Highs;
  beforeAll(async () => {
    highs = await loadHighs();
  });

  it('a thousand: the optimum of a linear programme, and of another program for this problem', () => {
    let short = 0;
    let mixed = 0;
    let choices = 0;
    for (let seed = 0; seed < 1000; seed++) {
      for (const { problem, columnOf } of solvedOf(seed)) {
        const table = tableOf(problem);
        const own = sum(
          table,
          Array.from(columnOf, (column, row) => [row, column] as const),
        );
        expect(own).toBe(leastByHighs(highs, table, NEVER));
        // It takes large numbers for infinite ones, so what is never taken is only dearer than all else.
        const bounded = table.map((row) => row.map((cost) => Math.min(cost, 100 * SHORT)));
        expect(own).toBe(sum(bounded, munkres(bounded)));
        const given = Array.from(columnOf, (column) => problem.columns[column]);
        if (given.some((item) => item === undefined)) short++;
        if (new Set(given.filter((item) => item !== undefined)).size > 1) mixed++;
        if (table.some((row) => row.filter((cost) => cost < SHORT).length > 1)) choices++;
      }
    }
    // Else the cupboards would have asked nothing.
    expect(short).toBeGreaterThan(300);
    expect(mixed).toBeGreaterThan(100);
    expect(choices).toBeGreaterThan(500);
  });

  it('no cell costs anything but what is written down', () => {
    const parts = new Set<number>();
    for (let seed = 0; seed < 200; seed++) {
      for (const { problem } of solvedOf(seed)) {
        for (const cost of tableOf(problem).flat()) {
          if (cost >= NEVER) continue;
          const isNone = cost > SHORT;
          expect(isNone ? (cost - SHORT) % LATER : Number(cost % MIXED > MOST_WASTE)).toBe(0);
          if (!isNone) parts.add(cost - (cost % MIXED));
        }
      }
    }
    expect([...parts].sort((x, y) => x - y)).toEqual([0, MIXED, KEYS_ALIKE, KEYS_ALIKE + MIXED]);
  });
});
