import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { Blockages } from '../../src/engine/blockage.ts';
import type { Blockage } from '../../src/engine/measures.ts';
import { compile } from '../../src/engine/network.ts';
import { reach } from '../../src/engine/reach.ts';
import { prizesOn } from '../../src/findings/blame.ts';
import type { Game } from '../../src/game/model.ts';
import { gameOf } from '../game-of.ts';
import { gameArbitrary } from '../random-game.ts';

function named(game: Game, blockage: Blockage | undefined) {
  const { ids } = compile(game);
  if (blockage === undefined) return undefined;
  return blockage.cause === 'ring'
    ? ['ring', ...blockage.nodes.map((node) => ids[node])]
    : [blockage.cause, ids[blockage.node]];
}

function causeOf(game: Game, id: string) {
  const network = compile(game);
  return named(game, new Blockages(network).of(network.index.get(id) ?? -1));
}

const ownBox = gameOf(
  [
    { id: 'box', kind: 'container' },
    { id: 'key', kind: 'key', in: 'box' },
    { id: 'lock', kind: 'fastener', on: 'box', type: 'key' },
    { id: 'paper', kind: 'clue', in: 'box' },
    { id: 'win', kind: 'prize' },
    { id: 'work', kind: 'puzzle' },
  ],
  ['key>lock', 'paper>work', 'work>win'],
);

describe('the root of a blockage', () => {
  it('is the ring of a key in its own box, for all that lies behind it', () => {
    for (const id of ['box', 'key', 'lock', 'paper', 'work', 'win']) {
      expect(causeOf(ownBox, id)).toEqual(['ring', 'box', 'lock', 'key']);
    }
    expect(new Blockages(compile(ownBox)).all()).toHaveLength(1);
  });

  it('is the fastener that nothing opens, however far behind', () => {
    const game = gameOf([
      { id: 'a', kind: 'container' },
      { id: 'b', kind: 'container', in: 'a' },
      { id: 'la', kind: 'fastener', on: 'a', type: 'word' },
      { id: 'win', kind: 'prize', in: 'b' },
    ]);
    expect(causeOf(game, 'win')).toEqual(['closed', 'la']);
    expect(causeOf(game, 'a')).toEqual(['closed', 'la']);
  });

  it('is the need that is larger than its links', () => {
    const game = gameOf(
      [
        { id: 'c', kind: 'clue' },
        { id: 'win', kind: 'prize' },
        { id: 'z', kind: 'puzzle', need: 3 },
      ],
      ['c>z', 'z>win'],
    );
    expect(new Blockages(compile(game)).of(1)).toEqual({ cause: 'missing', node: 2, possible: 1 });
  });

  it('is not a ring that would open by itself if the lock behind it did', () => {
    const game = gameOf(
      [
        { id: 'box', kind: 'container' },
        { id: 'key', kind: 'key', in: 'box' },
        { id: 'lock', kind: 'fastener', on: 'box', need: 1 },
        { id: 'other', kind: 'container' },
        { id: 'paper', kind: 'clue', in: 'other' },
        { id: 'shut', kind: 'fastener', on: 'other' },
      ],
      ['key>lock', 'paper>lock'],
    );
    expect(causeOf(game, 'key')).toEqual(['closed', 'shut']);
    expect(new Blockages(compile(game)).all()).toHaveLength(1);
  });

  it('exists for exactly what is not reached; rings wait in order, and each of them truly', () => {
    fc.assert(
      fc.property(gameArbitrary({ size: 24 }), (game) => {
        const network = compile(game);
        const reached = reach(network);
        const blockages = new Blockages(network);
        for (let node = 0; node < network.size; node++) {
          const cause = blockages.of(node);
          expect(cause === undefined).toBe(reached[node] === 1);
          if (cause?.cause !== 'ring') continue;
          expect(cause.nodes.length).toBeGreaterThan(1);
          for (const [i, one] of cause.nodes.entries()) {
            const next = cause.nodes[(i + 1) % cause.nodes.length] ?? -1;
            const waitsFor = [
              network.parent[one],
              ...network.needs.items.subarray(network.needs.starts[one], network.needs.starts[one + 1]),
              ...network.fasteners.items.subarray(
                network.fasteners.starts[one],
                network.fasteners.starts[one + 1],
              ),
            ];
            expect(waitsFor).toContain(next);
            expect(reached[one]).toBe(0);
          }
        }
      }),
      { seed: 7, numRuns: 300 },
    );
  });
});

describe('a fault stops the game', () => {
  const stops = (game: Game, id: string) => {
    const network = compile(game);
    const [lost = []] = prizesOn(network, reach(network), [network.index.get(id) ?? -1]);
    return lost.length > 0;
  };
  const lockedBox = (id: string, holds: string[], extra: object = {}) => [
    { id, kind: 'container' as const, ...extra },
    { id: `${id}-lock`, kind: 'fastener' as const, on: id },
    ...holds.map((prize) => ({ id: prize, kind: 'prize' as const, in: id })),
  ];

  it('when a prize lies behind it, and not when nothing does', () => {
    const game = gameOf([...lockedBox('a', ['win']), ...lockedBox('b', [])]);
    expect(stops(game, 'a-lock')).toBe(true);
    expect(stops(game, 'b-lock')).toBe(false);
  });

  it('also behind another fault', () => {
    const game = gameOf([...lockedBox('a', []), ...lockedBox('b', ['win'], { in: 'a' })]);
    expect(stops(game, 'a-lock')).toBe(true);
    expect(stops(game, 'b-lock')).toBe(true);
  });

  it('when either of two ways would do and both are broken, but not when one is left', () => {
    const ways = (second: string) =>
      gameOf(
        [
          ...lockedBox('a', []),
          ...lockedBox('b', []),
          { id: 'in-a', kind: 'clue', in: 'a' },
          { id: 'in-b', kind: 'clue', in: second },
          { id: 'room', kind: 'place' },
          { id: 'win', kind: 'prize' },
          { id: 'z', kind: 'puzzle', need: 1 },
        ],
        ['in-a>z', 'in-b>z', 'z>win'],
      );
    expect(stops(ways('b'), 'a-lock')).toBe(true);
    expect(stops(ways('room'), 'a-lock')).toBe(false);
  });

  it('in a ring when the prize waits for the ring', () => {
    expect(stops(ownBox, 'key')).toBe(true);
    expect(stops(gameOf([...ownBox.nodes.values(), { id: 'win', kind: 'prize' }], ['key>lock']), 'key')).toBe(
      false,
    );
  });
});
