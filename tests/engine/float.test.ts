import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { floatOf } from '../../src/engine/float.ts';
import { measure } from '../../src/engine/measures.ts';
import { compile } from '../../src/engine/network.ts';
import type { Game } from '../../src/game/model.ts';
import { fixed, gameOf } from '../game-of.ts';
import { gameArbitrary } from '../random-game.ts';
import { expectedOf, naiveGame, naiveShortestWith, naiveSolvable } from './naive.ts';

function floats(game: Game): Record<string, number | undefined> {
  const network = compile(game);
  const measures = measure(network);
  return Object.fromEntries(network.ids.map((id, i) => [id, floatOf(network, measures, i)]));
}

const step = (id: string, minutes: number, need?: number) => ({
  id,
  kind: 'puzzle' as const,
  ...fixed(minutes),
  ...(need === undefined ? {} : { need }),
});
const PRIZE = { id: 'prize', kind: 'prize' as const };

describe('float', () => {
  it('is what a step has to spare beside a longer one', () => {
    const game = gameOf(
      [step('short', 3), step('long', 7.5), step('last', 2), PRIZE],
      ['short>last', 'long>last', 'last>prize'],
    );
    expect(floats(game)).toEqual({ short: 4.5, long: 0, last: 0, prize: undefined });
  });

  it('is 0 of what is tied', () => {
    const game = gameOf([step('a', 3), step('b', 3), PRIZE], ['a>prize', 'b>prize']);
    expect(floats(game)).toMatchObject({ a: 0, b: 0 });
  });

  it('has no end where the finish never waits for it', () => {
    const game = gameOf(
      [step('a', 3), step('b', 5), step('any', 1, 1), PRIZE],
      ['a>any', 'b>any', 'any>prize'],
    );
    // The quicker one may take two minutes longer, and after that the other is there; that one never matters.
    expect(floats(game)).toMatchObject({ a: 0, b: Number.POSITIVE_INFINITY, any: 0 });
  });

  it('ends where another way no longer takes over: any 2 of 3', () => {
    const game = gameOf(
      [step('a', 1), step('b', 4), step('c', 9), step('two', 1, 2), step('side', 6), PRIZE],
      ['a>two', 'b>two', 'c>two', 'two>prize', 'side>prize'],
    );
    // The end is at 6 by `side`: two can be done by 5, and c, at 9, would be too late.
    expect(floats(game)).toMatchObject({ a: 4, b: 1, c: Number.POSITIVE_INFINITY, two: 1, side: 0 });
  });

  it('is not said of what takes no time, is not reached, or when the game cannot be won', () => {
    const shut = gameOf([
      step('a', 3),
      { id: 'box', kind: 'container' },
      { id: 'lock', kind: 'fastener', on: 'box' },
      { ...PRIZE, in: 'box' },
    ]);
    expect(floats(shut)).toEqual({ a: undefined, box: undefined, lock: undefined, prize: undefined });
  });

  it('is what trying in the plain restatement gives, on random games with choices and rings', {
    timeout: 120_000,
  }, () => {
    const solvable = gameArbitrary({ size: 20 }).filter((game) => naiveSolvable(naiveGame(game)));
    fc.assert(
      fc.property(solvable, (game) => {
        const naive = naiveGame(game);
        const minutes = expectedOf(naive);
        const shortest = naiveShortestWith(naive, new Map());
        const endWith = (id: string, longer: number) =>
          naiveShortestWith(naive, new Map([[id, (minutes.get(id) ?? 0) + longer]]));
        for (const [id, float] of Object.entries(floats(game))) {
          if (float === undefined) continue;
          if (float === Number.POSITIVE_INFINITY) {
            expect(endWith(id, 1e6), id).toBeCloseTo(shortest, 6);
            continue;
          }
          expect(endWith(id, float), id).toBeCloseTo(shortest, 6);
          expect(endWith(id, float + 0.01), id).toBeCloseTo(shortest + 0.01, 6);
        }
      }),
      { seed: 1959, numRuns: 200 },
    );
  });
});
