/** The arrow keys: shifting on the mat, changing places in a tray and on a wall. */
import { expect, test } from 'vitest';
import { nudge } from '../../../app/flow/nudge.ts';
import { applyEdits } from '../../../src/game/edits/index.ts';
import type { Game, GameNode, NodeId } from '../../../src/game/model.ts';
import { contentsOf, fastenersOf } from '../../../src/game/rows.ts';
import { layOut } from '../../../src/map/lay-out.ts';
import { plainView } from '../../../src/map/layout.ts';
import { gameOf } from '../open-game.ts';

const UP = { x: 0, y: -1 };
const DOWN = { x: 0, y: 1 };
const RIGHT = { x: 1, y: 0 };

const clue = (id: NodeId): GameNode => ({ id, kind: 'clue', name: id, in: 'sill' });
const box = (id: NodeId): GameNode => ({ id, kind: 'container', name: id, in: 'sill' });
const lock = (id: NodeId): GameNode => ({ id, kind: 'fastener', name: id, on: 'p', type: 'key' });
const NODES: readonly GameNode[] = [
  { id: 'sill', kind: 'place', name: 'Window sill' },
  { id: 'sum', kind: 'puzzle', name: 'Add the rows' },
  ...['a', 'b', 'c', 'd'].map(clue),
  ...['p', 'q'].map(box),
  ...['k', 'l', 'm'].map(lock),
];
const game: Game = {
  ...gameOf(NODES),
  positions: new Map([
    ['sill', { x: 0, y: 0 }],
    ['sum', { x: 500, y: 40 }],
    ...['a', 'p', 'b', 'c', 'd', 'q'].map((id, y) => [id, { x: 0, y }] as const),
    ...['k', 'l', 'm'].map((id, y) => [id, { x: 0, y }] as const),
  ]),
};

function nudged(ids: readonly NodeId[], by: { x: number; y: number }, of = game): Game {
  const edits = nudge(of, layOut(of, plainView), new Set(ids), by, 8);
  const result = applyEdits(of, edits);
  if (!result.ok) throw new Error(`refused: ${result.refusal.reason}`);
  return result.game;
}

const clues = (of: Game) => contentsOf(of, 'sill').flatMap(({ id, kind }) => (kind === 'clue' ? [id] : []));
const boxes = (of: Game) =>
  contentsOf(of, 'sill').flatMap(({ id, kind }) => (kind === 'container' ? [id] : []));
const locks = (of: Game) => fastenersOf(of, 'p').map(({ id }) => id);

test.each([
  [['a'], DOWN, 'bacd'],
  [['b'], DOWN, 'acbd'],
  [['c'], DOWN, 'abdc'],
  [['d'], DOWN, 'abcd'],
  [['a'], UP, 'abcd'],
  [['b'], UP, 'bacd'],
  [['d'], UP, 'abdc'],
  [['a', 'b'], DOWN, 'cabd'],
  [['b', 'a'], DOWN, 'cabd'],
  [['c', 'd'], UP, 'acdb'],
  [['a', 'c'], DOWN, 'badc'],
  [['b', 'd'], UP, 'badc'],
  [['a', 'b', 'c', 'd'], DOWN, 'abcd'],
] as const)('in a tray %j with %j: %s', (ids, by, rows) => {
  expect(clues(nudged(ids, by)).join('')).toBe(rows);
});

test('at the end what is there stays, and what follows closes up', () => {
  expect(clues(nudged(['b', 'd'], DOWN)).join('')).toBe('acbd');
  expect(clues(nudged(['b', 'd'], DOWN, nudged(['b', 'd'], DOWN))).join('')).toBe('acbd');
  expect(clues(nudged(['a', 'c'], UP)).join('')).toBe('acbd');
});

test('up takes back what down did', () => {
  expect(clues(nudged(['a', 'b'], UP, nudged(['a', 'b'], DOWN))).join('')).toBe('abcd');
});

test('boxes and locks change places among themselves', () => {
  expect(boxes(nudged(['p'], DOWN))).toEqual(['q', 'p']);
  expect(boxes(nudged(['p'], UP))).toEqual(['p', 'q']);
  expect(locks(nudged(['k', 'l'], DOWN))).toEqual(['m', 'k', 'l']);
  expect(locks(nudged(['m'], UP))).toEqual(['k', 'm', 'l']);
});

test('on the mat things are shifted; what lies in a tray that goes along keeps its row', () => {
  const right = nudged(['sill', 'sum', 'a', 'k'], RIGHT);
  expect(right.positions.get('sill')).toEqual({ x: 8, y: 0 });
  expect(right.positions.get('sum')).toEqual({ x: 508, y: 40 });
  const down = nudged(['sill', 'a', 'k'], DOWN);
  expect(down.positions.get('sill')).toEqual({ x: 0, y: 8 });
  expect([clues(down).join(''), locks(down).join('')]).toEqual(['abcd', 'klm']);
});

test('sideways means nothing in a tray', () => {
  expect(nudge(game, layOut(game, plainView), new Set(['a', 'k']), RIGHT, 8)).toEqual([]);
});
