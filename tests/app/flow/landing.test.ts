/** Where a dragged thing lands: the deepest tray under the pointer, never in itself, locks on boxes only. */
import { expect, test } from 'vitest';
import { landingAt, landingEdits, landingMark, landingRefusal } from '../../../app/flow/drag/landing.ts';
import { matRects } from '../../../app/flow/geometry.ts';
import { applyEdits } from '../../../src/game/edits/index.ts';
import { type Game, type GameNode, type NodeId, withContents } from '../../../src/game/model.ts';
import { layOut } from '../../../src/map/lay-out.ts';
import { plainView } from '../../../src/map/layout.ts';
import { gameOf } from '../open-game.ts';

const NODES: readonly GameNode[] = [
  { id: 'sill', kind: 'place', name: 'Sill' },
  { id: 'note', kind: 'clue', name: 'Note', in: 'sill' },
  { id: 'strip', kind: 'clue', name: 'Strip', in: 'sill' },
  { id: 'chest', kind: 'container', name: 'Chest', in: 'sill' },
  { id: 'lock', kind: 'fastener', name: 'Lock', on: 'chest', type: 'number' },
  { id: 'key', kind: 'key', name: 'Key', in: 'chest' },
  { id: 'bag', kind: 'container', name: 'Bag' },
  { id: 'sum', kind: 'puzzle', name: 'Sum' },
];

const game: Game = {
  ...gameOf(NODES),
  positions: new Map([
    ['sill', { x: 0, y: 0 }],
    ['bag', { x: 600, y: 0 }],
    ['sum', { x: 600, y: 400 }],
    ['note', { x: 0, y: 0 }],
    ['strip', { x: 0, y: 48 }],
  ]),
};
const layout = layOut(game, plainView);
const rects = matRects(layout);

function rectOf(id: NodeId) {
  const rect = rects.get(id);
  if (!rect) throw new Error(`${id} is not drawn`);
  return rect;
}

const middle = (id: NodeId) => ({
  x: rectOf(id).x + rectOf(id).width / 2,
  y: rectOf(id).y + rectOf(id).height / 2,
});

const land = (roots: readonly NodeId[], spot: { x: number; y: number }) =>
  landingAt(game, layout, spot, roots, withContents(game, roots));

test('the deepest tray under the pointer takes it', () => {
  expect(land(['note'], middle('chest')).holder).toBe('chest');
  expect(land(['key'], { x: rectOf('sill').x + 60, y: rectOf('sill').y + 4 }).holder).toBe('sill');
  expect(land(['key'], middle('bag')).holder).toBe('bag');
});

test('on bare mat nothing takes it, and it stays where it was let go', () => {
  const landing = land(['key'], { x: 500, y: 600 });
  expect(landing).toEqual({ holder: null, before: null });
  const result = applyEdits(game, landingEdits(game, ['key'], landing, [['key', { x: 470, y: 590 }]]));
  expect(result.ok && result.game.nodes.get('key')?.in).toBeUndefined();
  expect(result.ok && result.game.positions.get('key')).toEqual({ x: 470, y: 590 });
});

test('a dragged box is not its own tray, nor is what lies in it', () => {
  expect(land(['sill'], middle('chest')).holder).toBeNull();
  expect(land(['chest'], middle('key')).holder).toBe('sill');
});

test('a lock lands on boxes only, and beside their walls too', () => {
  expect(land(['lock'], middle('note')).holder).toBeNull();
  const bag = rectOf('bag');
  expect(land(['lock'], { x: bag.x - 20, y: bag.y + 20 }).holder).toBe('bag');
  const off = land(['lock'], { x: 300, y: 900 });
  expect(landingRefusal(game, landingEdits(game, ['lock'], off, []))).toMatchObject({
    reason: 'needsContainer',
  });
});

test('a puzzle or a place let go on a tray is refused', () => {
  for (const id of ['sum', 'sill']) {
    const landing = land([id], middle('bag'));
    expect(landingRefusal(game, landingEdits(game, [id], landing, []))).toMatchObject({
      reason: 'cannotHold',
      id,
    });
  }
});

test('a selection with one that may not land does not land at all', () => {
  const landing = land(['key', 'sum'], middle('bag'));
  const edits = landingEdits(game, ['key', 'sum'], landing, []);
  expect(applyEdits(game, edits).ok).toBe(false);
});

test('the row is the one above whose middle it is let go, and a line shows it', () => {
  const note = rectOf('note');
  const above = land(['key'], { x: note.x + 10, y: note.y + 4 });
  expect(above).toEqual({ holder: 'sill', before: 'note' });
  expect(landingMark(layout, above, new Set(['key']))?.y).toBeLessThan(note.y);
  const between = land(['key'], { x: note.x + 10, y: note.y + note.height - 2 });
  expect(between).toEqual({ holder: 'sill', before: 'strip' });
  const edits = landingEdits(game, ['key'], between, []);
  const result = applyEdits(game, edits);
  if (!result.ok) throw new Error('refused');
  expect(layOut(result.game, plainView).rows.get('sill')).toEqual(['note', 'key', 'strip', 'chest']);
});
