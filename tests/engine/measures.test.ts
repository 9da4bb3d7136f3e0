import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fewestSteps } from '../../src/engine/fewest.ts';
import { measure } from '../../src/engine/measures.ts';
import { compile } from '../../src/engine/network.ts';
import { EarliestProofs } from '../../src/engine/proof.ts';
import { onlyWith } from '../../src/engine/ties.ts';
import { without } from '../../src/engine/without.ts';
import { gameArbitrary, randomGame } from '../random-game.ts';
import {
  expectedOf,
  naiveFewest,
  naiveGame,
  naiveLongestChain,
  naiveOrder,
  naiveReach,
  naiveShortest,
  naiveShortestWith,
  naiveSolvable,
  naiveTimes,
} from './naive.ts';

/** To a millionth of a minute, 0 without a sign. */
function rounded(minutes: ArrayLike<number>): number[] {
  return Array.from(minutes, (value) => Math.round(value * 1e6) / 1e6 + 0);
}

const RUNS = { seed: 20260101, numRuns: 200 };

/** Games that can be won, for the measures that only those have. */
const solvable = gameArbitrary({ size: 22 }).filter((game) => naiveSolvable(naiveGame(game)));

describe('the measures agree with their plain restatement on random games', { timeout: 60_000 }, () => {
  it('reached, solvable and times', () => {
    fc.assert(
      fc.property(gameArbitrary({ size: 30 }), (game) => {
        const network = compile(game);
        const measures = measure(network);
        const naive = naiveGame(game);
        const reached = naiveReach(naive);
        expect(network.ids).toEqual([...naive.nodes.keys()]);
        expect(network.ids.filter((_, i) => measures.reached[i] === 1)).toEqual(
          network.ids.filter((id) => reached.has(id)),
        );
        expect(measures.solvable).toBe(naiveSolvable(naive));
        const { start, finish } = naiveTimes(naive, expectedOf(naive));
        expect(rounded(measures.start)).toEqual(rounded(network.ids.map((id) => start.get(id) ?? Infinity)));
        expect(rounded(measures.finish)).toEqual(
          rounded(network.ids.map((id) => finish.get(id) ?? Infinity)),
        );
      }),
      RUNS,
    );
  });

  it('drag, ties, must-do, longest chain', () => {
    fc.assert(
      fc.property(solvable, (game) => {
        const network = compile(game);
        const measures = measure(network);
        const naive = naiveGame(game);
        const reached = naiveReach(naive);
        const expected = expectedOf(naive);
        const shortest = naiveShortest(naive, expected);
        expect(measures.shortest).toBeCloseTo(shortest, 9);
        expect(measures.longestChain).toBe(naiveLongestChain(naive));
        const steps = network.ids.map((id) => naive.steps.includes(id) && reached.has(id));
        const drag = network.ids.map((id, i) =>
          steps[i] ? shortest - naiveShortestWith(naive, new Map([[id, 0]])) : 0,
        );
        expect(rounded(measures.drag)).toEqual(rounded(drag));
        const tied = network.ids.filter((id, i) => {
          if (!steps[i] || (drag[i] ?? 0) > 1e-6) return false;
          const longer = new Map([[id, (expected.get(id) ?? 0) + 1]]);
          return naiveShortestWith(naive, longer) - shortest > 1e-6;
        });
        expect(network.ids.filter((_, i) => measures.tied[i] === 1)).toEqual(tied);
        expect(network.ids.filter((_, i) => measures.mustDo[i] === 1)).toEqual(
          network.ids.filter((id, i) => steps[i] && !naiveSolvable(naive, new Set([id]))),
        );
      }),
      RUNS,
    );
  });

  it('the chain is as long as it says, and each step of it needs the one before', () => {
    fc.assert(
      fc.property(solvable, (game) => {
        const network = compile(game);
        const { chain, longestChain } = measure(network);
        const naive = naiveGame(game);
        expect(chain.length).toBe(longestChain);
        expect(new Set(chain).size).toBe(chain.length);
        const steps = new Set(naive.steps);
        for (const step of chain) expect(steps.has(network.ids[step] ?? '')).toBe(true);
        const ones = new Map(naive.steps.map((id) => [id, 1]));
        const { finish } = naiveTimes(naive, ones, false);
        expect(Array.from(chain, (step) => finish.get(network.ids[step] ?? ''))).toEqual(
          Array.from(chain, (_, i) => i + 1),
        );
      }),
      RUNS,
    );
  });

  it('the order of play', () => {
    fc.assert(
      fc.property(gameArbitrary({ size: 16 }), (game) => {
        const network = compile(game);
        const { order, number } = measure(network);
        expect(Array.from(order, (step) => network.ids[step])).toEqual(naiveOrder(naiveGame(game)));
        for (const [place, step] of order.entries()) expect(number[step]).toBe(place + 1);
        expect(number.filter((place) => place > 0).length).toBe(order.length);
      }),
      RUNS,
    );
  });

  it('what falls without one node', () => {
    fc.assert(
      fc.property(gameArbitrary({ size: 20 }), (game) => {
        const network = compile(game);
        const naive = naiveGame(game);
        const before = naiveReach(naive);
        for (const [i, id] of network.ids.entries()) {
          const after = naiveReach(naive, new Set([id]));
          expect(without(network, i).map((other) => network.ids[other])).toEqual(
            before.has(id) ? network.ids.filter((other) => before.has(other) && !after.has(other)) : [],
          );
        }
      }),
      { ...RUNS, numRuns: 100 },
    );
  });

  it('fewest steps', () => {
    fc.assert(
      fc.property(gameArbitrary({ size: 13 }), (game) => {
        const naive = naiveGame(game);
        fc.pre(naiveSolvable(naive) && naive.steps.length <= 11);
        const network = compile(game);
        const fewest = fewestSteps(network, measure(network));
        expect(fewest).toEqual({ steps: naiveFewest(naive), exact: true, bound: fewest.steps });
      }),
      RUNS,
    );
  });

  it('only with: exactly the tied steps that shorten the finish together', () => {
    fc.assert(
      fc.property(solvable, (game) => {
        const network = compile(game);
        const measures = measure(network);
        const naive = naiveGame(game);
        const tied = network.ids.filter((_, i) => measures.tied[i] === 1);
        for (const [i, id] of network.ids.entries()) {
          const partners = tied.filter(
            (other) =>
              other !== id &&
              measures.shortest -
                naiveShortestWith(
                  naive,
                  new Map([
                    [id, 0],
                    [other, 0],
                  ]),
                ) >
                1e-6,
          );
          expect(onlyWith(network, measures, i).map((other) => network.ids[other])).toEqual(
            tied.includes(id) ? partners : [],
          );
        }
      }),
      { ...RUNS, numRuns: 100 },
    );
  });
});

describe('earliest proofs', { timeout: 60_000 }, () => {
  it('reach their node by themselves, as early as the whole game does', () => {
    fc.assert(
      fc.property(gameArbitrary({ size: 20 }), (game) => {
        const network = compile(game);
        const naive = naiveGame(game);
        const proofs = new EarliestProofs(network);
        const { finish } = naiveTimes(naive, expectedOf(naive));
        const reached = naive.steps.filter((id) => finish.has(id));
        for (const [i, id] of network.ids.entries()) {
          if (!finish.has(id)) {
            expect(proofs.steps(i)).toEqual([]);
            continue;
          }
          const used = new Set([...proofs.steps(i).map((step) => network.ids[step] ?? ''), id]);
          const unused = new Map(
            [...expectedOf(naive)].map(([step, minutes]) => [
              step,
              reached.includes(step) && !used.has(step) ? Infinity : minutes,
            ]),
          );
          expect(naiveTimes(naive, unused).finish.get(id)).toBeCloseTo(finish.get(id) ?? -1, 6);
        }
      }),
      { ...RUNS, numRuns: 150 },
    );
  });

  it('side by side holds both ways', () => {
    for (let seed = 0; seed < 30; seed++) {
      const network = compile(randomGame(seed, 18));
      const proofs = new EarliestProofs(network);
      for (let a = 0; a < network.size; a++) {
        for (const b of proofs.sideBySide(a)) {
          expect(proofs.sideBySide(b)).toContain(a);
          expect(proofs.steps(a)).not.toContain(b);
        }
      }
    }
  });
});
