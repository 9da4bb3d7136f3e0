/** Games with true rings (several ways in, each leading to the other), in which everything is reached and nothing has one order. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fewestSteps } from '../../src/engine/fewest.ts';
import { flowOf } from '../../src/engine/flow.ts';
import { measure } from '../../src/engine/measures.ts';
import { compile } from '../../src/engine/network.ts';
import { shortestRing, stronglyConnected } from '../../src/engine/rings.ts';
import type { Game } from '../../src/game/model.ts';
import { fixed, gameOf } from '../game-of.ts';
import {
  expectedOf,
  naiveFewest,
  naiveGame,
  naiveLongestChain,
  naiveShortest,
  naiveShortestWith,
  naiveSolvable,
  naiveTimes,
} from './naive.ts';

/** Three hiding places, up to eight puzzles that lead to each other at random and each want one or two, and a prize for all of them. */
const tangled: fc.Arbitrary<Game> = fc
  .array(
    fc.record({
      need: fc.integer({ min: 1, max: 2 }),
      minutes: fc.nat(3),
      from: fc.uniqueArray(fc.nat(10), { minLength: 2, maxLength: 4 }),
    }),
    { minLength: 2, maxLength: 8, size: 'max' },
  )
  .map((puzzles) => {
    const names = ['p0', 'p1', 'p2', ...puzzles.map((_, i) => `z${i}`)];
    return gameOf(
      [
        ...[0, 1, 4].map((minutes, i) => ({ id: `p${i}`, kind: 'place' as const, ...fixed(minutes) })),
        ...puzzles.map(({ need, minutes }, i) => ({
          id: `z${i}`,
          kind: 'puzzle' as const,
          need,
          ...fixed(minutes),
        })),
        { id: 'win', kind: 'prize', need: Math.max(1, puzzles.length - 2) },
      ],
      puzzles.flatMap(({ from }, i) => {
        const sources = new Set(from.map((number) => names[number % names.length] ?? 'p0'));
        sources.delete(`z${i}`);
        return [...[...sources].map((source) => `${source}>z${i}`), `z${i}>win`];
      }),
    );
  });

describe('true rings', { timeout: 60_000 }, () => {
  it('agree in every measure with the plain restatement', () => {
    let ringed = 0;
    fc.assert(
      fc.property(tangled, (game) => {
        const network = compile(game);
        if (flowOf(network).rings) ringed++;
        const naive = naiveGame(game);
        const measures = measure(network);
        const expected = expectedOf(naive);
        const { start, finish } = naiveTimes(naive, expected);
        expect([...measures.start]).toEqual(network.ids.map((id) => start.get(id) ?? Infinity));
        expect([...measures.finish]).toEqual(network.ids.map((id) => finish.get(id) ?? Infinity));
        expect(measures.solvable).toBe(naiveSolvable(naive));
        if (!measures.solvable) return;
        const shortest = naiveShortest(naive, expected);
        expect(measures.longestChain).toBe(naiveLongestChain(naive));
        const isStep = (i: number) => network.isStep[i] === 1 && measures.reached[i] === 1;
        expect([...measures.drag]).toEqual(
          network.ids.map((id, i) =>
            isStep(i) ? shortest - naiveShortestWith(naive, new Map([[id, 0]])) : 0,
          ),
        );
        expect([...measures.mustDo]).toEqual(
          network.ids.map((id, i) => (isStep(i) && !naiveSolvable(naive, new Set([id])) ? 1 : 0)),
        );
        expect(fewestSteps(network, measures).steps).toBe(naiveFewest(naive));
      }),
      { seed: 1977, numRuns: 120 },
    );
    expect(ringed).toBeGreaterThan(30);
  });
});

describe('rings of a graph', () => {
  const graph = new Map([
    [0, [1]],
    [1, [2, 3]],
    [2, [0]],
    [3, [4]],
    [4, [5, 3]],
    [5, []],
  ]);
  const leadsTo = (vertex: number) => graph.get(vertex) ?? [];

  it('are its components, each after what it leads to', () => {
    const components = stronglyConnected([...graph.keys()], leadsTo);
    expect(components.map((members) => members.sort((a, b) => a - b))).toEqual([[5], [3, 4], [0, 1, 2]]);
  });

  it('have a shortest one, in the order of leading', () => {
    expect(shortestRing([0, 1, 2], leadsTo)).toEqual([0, 1, 2]);
    expect(shortestRing([3, 4], leadsTo)).toEqual([3, 4]);
  });
});
