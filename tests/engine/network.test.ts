import { describe, expect, it } from 'vitest';
import { measure } from '../../src/engine/measures.ts';
import { compile } from '../../src/engine/network.ts';
import { reach } from '../../src/engine/reach.ts';
import { rowOf } from '../../src/engine/rows.ts';
import { byCodePoint } from '../../src/game/compare.ts';
import type { Game } from '../../src/game/model.ts';
import { fixed, gameOf } from '../game-of.ts';

/** Ids reached, sorted. */
function reachedIds(game: Game): string[] {
  const network = compile(game);
  const reached = reach(network);
  return network.ids.filter((_, i) => reached[i] === 1);
}

describe('a compiled game', () => {
  it('is plain data that a worker can be sent', () => {
    const network = compile(
      gameOf([
        { id: '__proto__', kind: 'place' },
        { id: 'constructor', kind: 'prize', in: '__proto__' },
      ]),
    );
    const copy = structuredClone(network);
    expect(copy).toEqual(network);
    expect(copy.ids).toEqual(['__proto__', 'constructor']);
    expect(measure(copy).solvable).toBe(true);
  });

  it('sorts ids by code point, not by code unit', () => {
    const ids = ['\u{1F511}', '\uFF5E', 'z', 'a', 'é'];
    expect(compile(gameOf(ids.map((id) => ({ id, kind: 'place' as const })))).ids).toEqual([
      'a',
      'z',
      'é',
      '\uFF5E',
      '\u{1F511}',
    ]);
    expect(byCodePoint('\uFF5E', '\u{1F511}')).toBeLessThan(0);
    expect(byCodePoint('ab', 'a')).toBeGreaterThan(0);
  });

  it('knows what needs, holds and secures what', () => {
    const network = compile(
      gameOf(
        [
          { id: 'b', kind: 'container', in: 'p' },
          { id: 'f', kind: 'fastener', on: 'b' },
          { id: 'k', kind: 'key', in: 'b' },
          { id: 'p', kind: 'place' },
        ],
        ['k>f'],
      ),
    );
    const at = (id: string) => network.index.get(id) ?? -1;
    expect([...rowOf(network.contents, at('p'))]).toEqual([at('b')]);
    expect([...rowOf(network.contents, at('b'))]).toEqual([at('k')]);
    expect([...rowOf(network.fasteners, at('b'))]).toEqual([at('f')]);
    expect([...rowOf(network.needs, at('f'))]).toEqual([at('k')]);
    expect([...rowOf(network.outs, at('k'))]).toEqual([at('f')]);
  });
});

describe('left out', () => {
  const boxes = [
    { id: 'p', kind: 'place' as const },
    { id: 'outer', kind: 'container' as const, in: 'p' },
    { id: 'inner', kind: 'container' as const, in: 'outer', leftOut: true },
    { id: 'lock', kind: 'fastener' as const, on: 'inner' },
    { id: 'win', kind: 'prize' as const, in: 'inner' },
  ];

  it('takes its fasteners with it, and what it held lies one further out', () => {
    const network = compile(gameOf(boxes));
    expect(network.ids).toEqual(['outer', 'p', 'win']);
    expect(network.parent[2]).toBe(0);
    expect(reachedIds(gameOf(boxes))).toEqual(['outer', 'p', 'win']);
  });

  it('lets things fall through a chain of left-out holders into the hands', () => {
    const all = boxes.map((node) => (node.kind === 'prize' ? node : { ...node, leftOut: true }));
    const network = compile(gameOf(all));
    expect(network.ids).toEqual(['win']);
    expect(network.parent[0]).toBe(-1);
    expect(measure(network).shortest).toBe(0);
  });

  it('takes links away without lowering what is needed', () => {
    const nodes = [
      { id: 'a', kind: 'clue' as const },
      { id: 'b', kind: 'clue' as const, leftOut: true },
      { id: 'z', kind: 'puzzle' as const },
    ];
    expect(reachedIds(gameOf(nodes, ['a>z', 'b>z']))).toEqual(['a', 'z']);
    const two = nodes.map((node) => (node.id === 'z' ? { ...node, need: 2 } : node));
    expect(reachedIds(gameOf(two, ['a>z', 'b>z']))).toEqual(['a']);
  });

  it('leaves a fastener that lost all its links closed', () => {
    const nodes = [
      { id: 'b', kind: 'container' as const },
      { id: 'f', kind: 'fastener' as const, on: 'b', type: 'key' },
      { id: 'k', kind: 'key' as const, leftOut: true },
    ];
    expect(reachedIds(gameOf(nodes, ['k>f']))).toEqual([]);
  });
});

describe('what is reached', () => {
  it('opens a latch without anything, and a lock never', () => {
    const box = (type: string) =>
      gameOf([
        { id: 'b', kind: 'container' },
        { id: 'f', kind: 'fastener', on: 'b', type },
      ]);
    expect(reachedIds(box('latch'))).toEqual(['b', 'f']);
    expect(reachedIds(box('number'))).toEqual([]);
    expect(reachedIds(box('unheard-of'))).toEqual([]);
  });

  it('needs every fastener of a hasp, and the box at hand before its fastener', () => {
    const nodes = [
      { id: 'b', kind: 'container' as const },
      { id: 'f', kind: 'fastener' as const, on: 'b' },
      { id: 'g', kind: 'fastener' as const, on: 'b' },
      { id: 'k', kind: 'key' as const },
      { id: 'z', kind: 'puzzle' as const },
    ];
    expect(reachedIds(gameOf(nodes, ['k>f']))).toEqual(['f', 'k', 'z']);
    expect(reachedIds(gameOf(nodes, ['k>f', 'k>g']))).toEqual(['b', 'f', 'g', 'k', 'z']);
    // The box is handed over for a puzzle that needs its own fastener opened.
    expect(reachedIds(gameOf(nodes, ['k>f', 'k>g', 'z>b', 'f>z']))).toEqual(['k']);
  });

  it('counts links only, and wants no more of 0 than there are', () => {
    expect(reachedIds(gameOf([{ id: 'z', kind: 'puzzle' }]))).toEqual(['z']);
    expect(reachedIds(gameOf([{ id: 'z', kind: 'puzzle', need: 1 }]))).toEqual([]);
    expect(
      reachedIds(
        gameOf(
          [
            { id: 'c', kind: 'clue' },
            { id: 'z', kind: 'puzzle', need: 2 },
          ],
          ['c>z'],
        ),
      ),
    ).toEqual(['c']);
  });

  it('has no game without a prize', () => {
    expect(measure(compile(gameOf([{ id: 'p', kind: 'place' }]))).solvable).toBe(false);
    expect(measure(compile(gameOf([]))).solvable).toBe(false);
  });
});

describe('times', () => {
  it('wait for the minute at which something is given out', () => {
    const measures = measure(
      compile(
        gameOf([
          { id: 'b', kind: 'container', atMinute: 7 },
          { id: 'f', kind: 'fastener', on: 'b', type: 'latch', ...fixed(2) },
          { id: 'w', kind: 'prize', in: 'b' },
        ]),
      ),
    );
    expect([...measures.start]).toEqual([9, 7, 9]);
    expect(measures.shortest).toBe(9);
    expect(measures.longestChain).toBe(1);
  });

  it('take the second quickest of any two', () => {
    const nodes = [
      { id: 'a', kind: 'place' as const, ...fixed(1) },
      { id: 'b', kind: 'place' as const, ...fixed(4) },
      { id: 'c', kind: 'place' as const, ...fixed(9) },
      { id: 'w', kind: 'prize' as const },
      { id: 'z', kind: 'puzzle' as const, need: 2, ...fixed(3) },
    ];
    const measures = measure(compile(gameOf(nodes, ['a>z', 'b>z', 'c>z', 'z>w'])));
    expect(measures.shortest).toBe(7);
    // c is off the quickest way, and still worth shortening: without its time z starts at 1.
    expect([...measures.drag]).toEqual([0, 3, 3, 0, 3]);
  });

  it('do not let a ring start itself', () => {
    const nodes = [
      { id: 'a', kind: 'puzzle' as const, need: 1, ...fixed(0) },
      { id: 'b', kind: 'puzzle' as const, need: 1, ...fixed(0) },
      { id: 'w', kind: 'prize' as const },
      { id: 'x', kind: 'place' as const, ...fixed(5) },
      { id: 'y', kind: 'place' as const, ...fixed(6) },
    ];
    const measures = measure(compile(gameOf(nodes, ['x>a', 'y>b', 'a>b', 'b>a', 'a>w', 'b>w'])));
    expect(measures.shortest).toBe(5);
    // Each of the two ways in leads to the other, so neither place is needed, and two steps never are.
    expect([...measures.mustDo]).toEqual([0, 0, 0, 0, 0]);
    expect([...measures.drag]).toEqual([0, 0, 0, 5, 5]);
  });

  it('call sums that differ by rounding equal', () => {
    const nodes = [
      { id: 'a', kind: 'place' as const, ...fixed(0.1) },
      { id: 'b', kind: 'place' as const, ...fixed(0.3) },
      { id: 'y', kind: 'puzzle' as const, ...fixed(0.2) },
      { id: 'z', kind: 'puzzle' as const, ...fixed(0) },
      { id: 'w', kind: 'prize' as const },
    ];
    const network = compile(gameOf(nodes, ['a>y', 'y>z', 'b>z', 'z>w']));
    const measures = measure(network);
    expect(0.1 + 0.2).not.toBe(0.3);
    expect([...measures.drag]).toEqual([0, 0, 0, 0, 0]);
    expect(network.ids.filter((_, i) => measures.tied[i] === 1)).toEqual(['a', 'b', 'y']);
  });
});
