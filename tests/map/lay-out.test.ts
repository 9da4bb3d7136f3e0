import { expect, test } from 'vitest';
import type { Game, GameLink, GameNode, Point } from '../../src/game/model.ts';
import { layOut } from '../../src/map/lay-out.ts';
import { absolute, type MapLayout, plainView, type Rect } from '../../src/map/layout.ts';

function gameOf(nodes: GameNode[], links: GameLink[] = [], positions: [string, Point][] = []): Game {
  return {
    head: {},
    nodes: new Map(nodes.map((node) => [node.id, node])),
    links: new Map(links.map((link) => [link.id, link])),
    positions: new Map(positions),
  };
}

const overlap = (a: Rect, b: Rect) =>
  a.x < b.x + b.width && b.x < a.x + a.width && a.y < b.y + b.height && b.y < a.y + a.height;

/** Nothing in a tray overlaps what stands beside it, and everything but plates lies inside. */
function checkTrays(layout: MapLayout) {
  for (const [tray, rows] of layout.rows) {
    const outer = absolute(layout, tray);
    const rects = rows.map((id) => ({ id, rect: absolute(layout, id) }));
    for (const { id, rect } of rects) {
      for (const other of rects) {
        if (other.id !== id) expect(overlap(rect, other.rect), `${id} over ${other.id}`).toBe(false);
      }
      expect(rect.y).toBeGreaterThan(outer.y);
      expect(rect.y + rect.height).toBeLessThan(outer.y + outer.height);
      if (layout.slots.get(id)?.kind === 'fastener') continue;
      expect(rect.x).toBeGreaterThan(outer.x);
      expect(rect.x + rect.width).toBeLessThan(outer.x + outer.width);
    }
  }
}

test('an empty game has nothing to draw', () => {
  const layout = layOut(gameOf([]), plainView);
  expect(layout.slots.size).toBe(0);
  expect(layout.fields).toEqual([]);
});

test('boxes five deep, opened, lie in each other', () => {
  const depth = 5;
  const nodes: GameNode[] = Array.from({ length: depth }, (_, i) => ({
    id: `b${i}`,
    kind: 'container',
    name: `Box ${i}`,
    ...(i > 0 && { in: `b${i - 1}` }),
  }));
  const locks: GameNode[] = nodes.map((_, i) => ({
    id: `f${i}`,
    kind: 'fastener',
    name: 'Lock',
    on: `b${i}`,
  }));
  const game = gameOf([...nodes, ...locks, { id: 'c', kind: 'prize', name: 'Prize', in: 'b4' }]);
  const layout = layOut(game, { folded: new Set(), opened: new Set(nodes.map((node) => node.id)) });
  checkTrays(layout);
  expect(layout.slots.size).toBe(game.nodes.size);
  const folded = layOut(game, plainView);
  expect([...folded.slots.keys()].sort()).toEqual(['b0', 'b1', 'b2', 'f0', 'f1']);
  expect(folded.slots.get('b2')).toMatchObject({
    folded: true,
    locks: ['f2'],
    holds: [
      { kind: 'container', count: 2 },
      { kind: 'prize', count: 1 },
    ],
  });
});
