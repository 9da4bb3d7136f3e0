import { describe, expect, it } from 'vitest';
import { fewestSteps } from '../../src/engine/fewest.ts';
import { measure } from '../../src/engine/measures.ts';
import { compile } from '../../src/engine/network.ts';
import { fixed, gameOf } from '../game-of.ts';

/** A set cover: a puzzle for all elements, each element asked by a puzzle that any set with it answers. Only the sets take time. */
function cover(sets: readonly (readonly number[])[], elements: number) {
  return compile(
    gameOf(
      [
        { id: 'all', kind: 'puzzle', ...fixed(0) },
        { id: 'win', kind: 'prize' },
        ...sets.map((_, i) => ({ id: `s${i}`, kind: 'puzzle' as const })),
        ...Array.from({ length: elements }, (_, i) => ({
          id: `e${i}`,
          kind: 'puzzle' as const,
          need: 1,
          ...fixed(0),
        })),
      ],
      [
        'all>win',
        ...Array.from({ length: elements }, (_, i) => `e${i}>all`),
        ...sets.flatMap((set, i) => set.map((element) => `s${i}>e${element}`)),
      ],
    ),
  );
}

describe('fewest steps', () => {
  // Greedy takes the set of four and then needs two more; the other two cover all.
  const tricky = cover(
    [
      [1, 2, 4, 5],
      [0, 1, 2],
      [3, 4, 5],
    ],
    6,
  );

  it('finds what greedy misses', () => {
    expect(fewestSteps(tricky, measure(tricky))).toEqual({ steps: 2, exact: true, bound: 2 });
  });

  it('says so when the budget ran out, with a bound that holds', () => {
    const network = cover(
      Array.from({ length: 12 }, (_, i) => [i, (i + 1) % 12, (i + 5) % 12]),
      12,
    );
    const measures = measure(network);
    const exact = fewestSteps(network, measures);
    expect(exact).toEqual({ steps: 4, exact: true, bound: 4 });
    const cut = fewestSteps(network, measures, 3);
    expect(cut.exact).toBe(false);
    expect(cut.bound).toBe(1);
    expect(cut.steps).toBeGreaterThanOrEqual(exact.steps);
  });

  it('counts a step once that serves two', () => {
    const network = compile(
      gameOf(
        [
          { id: 'a', kind: 'clue', in: 'shared' },
          { id: 'b', kind: 'clue', in: 'alone' },
          { id: 'c', kind: 'clue', in: 'shared' },
          { id: 'alone', kind: 'place' },
          { id: 'shared', kind: 'place' },
          { id: 'win', kind: 'prize' },
          { id: 'y', kind: 'puzzle', need: 1 },
          { id: 'z', kind: 'puzzle', need: 1 },
        ],
        ['a>y', 'b>y', 'b>z', 'c>z', 'y>win', 'z>win'],
      ),
    );
    expect(fewestSteps(network, measure(network))).toEqual({ steps: 3, exact: true, bound: 3 });
  });

  it('is 0 of a game that cannot be won, and of one that is given away', () => {
    const lost = compile(gameOf([{ id: 'p', kind: 'place' }]));
    expect(fewestSteps(lost, measure(lost)).steps).toBe(0);
    const given = compile(gameOf([{ id: 'win', kind: 'prize' }]));
    expect(fewestSteps(given, measure(given))).toEqual({ steps: 0, exact: true, bound: 0 });
  });

  it('treats independent choices one by one', () => {
    const rooms = Array.from({ length: 30 }, (_, i) => i);
    const network = compile(
      gameOf(
        [
          ...rooms.flatMap((room) => [
            ...['a', 'b', 'c'].map((name) => ({ id: `${name}${room}`, kind: 'place' as const })),
            { id: `z${room}`, kind: 'puzzle' as const, need: 2 },
          ]),
          { id: 'win', kind: 'prize' },
        ],
        [
          ...rooms.flatMap((room) => ['a', 'b', 'c'].map((name) => `${name}${room}>z${room}`)),
          ...rooms.map((room) => `z${room}>win`),
        ],
      ),
    );
    expect(fewestSteps(network, measure(network), 300)).toEqual({ steps: 90, exact: true, bound: 90 });
  });
});
