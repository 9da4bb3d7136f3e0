import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import type { Game } from '../../src/game/model.ts';
import { readGame } from '../../src/game/read.ts';
import { arrange } from '../../src/map/arrange.ts';
import { layOut } from '../../src/map/lay-out.ts';
import { absolute, type MapLayout, plainView, type Rect, type Route, shownAs } from '../../src/map/layout.ts';
import { occupied, outline, overlaps, standsIn } from '../../src/map/outline.ts';
import { routes } from '../../src/map/route.ts';
import { randomGame, seededRandom } from '../random-game.ts';
import { gameOf, numbersOf } from './games.ts';

function example(slug: string): Game {
  const url = new URL(`../../public/games/${slug}.latchmap.json`, import.meta.url);
  const result = readGame(readFileSync(url, 'utf8'), { newId: () => slug });
  if (!result.ok) throw new Error(`${slug} cannot be read`);
  return result.document.game;
}

function arranged(game: Game): Game {
  return { ...game, positions: arrange(game, numbersOf(game)) };
}

interface Piece extends Rect {
  readonly link: string;
  readonly upright: boolean;
}

function pieces(link: string, route: Route): Piece[] {
  return route.slice(1).map((end, i) => {
    const start = route[i] ?? end;
    return {
      link,
      upright: start.x === end.x,
      x: Math.min(start.x, end.x),
      y: Math.min(start.y, end.y),
      width: Math.abs(start.x - end.x),
      height: Math.abs(start.y - end.y),
    };
  });
}

/** Every line is level or upright and joins the edges of what it links. */
function checkShape(game: Game, layout: MapLayout, drawn: ReadonlyMap<string, Route>) {
  for (const [id, route] of drawn) {
    const link = game.links.get(id);
    for (const piece of pieces(id, route)) expect(Math.min(piece.width, piece.height), id).toBe(0);
    for (const [node, point] of [
      [link?.from, route[0]],
      [link?.to, route.at(-1)],
    ] as const) {
      const rect = absolute(layout, shownAs(layout, node ?? '') ?? '');
      const { x = Number.NaN, y = Number.NaN } = point ?? {};
      const onSide = x === rect.x || x === rect.x + rect.width;
      const onEnd = y === rect.y || y === rect.y + rect.height;
      expect(onSide || onEnd, `${id} ends on the edge of ${node}`).toBe(true);
      expect(y).toBeGreaterThanOrEqual(rect.y);
      expect(y).toBeLessThanOrEqual(rect.y + rect.height);
    }
  }
}

/** Pairs of a line and something on the mat that it runs through without serving it. */
function runThrough(game: Game, layout: MapLayout, drawn: ReadonlyMap<string, Route>): string[] {
  const roots = [...layout.slots].filter(([, slot]) => slot.parent === undefined).map(([id]) => id);
  const found: string[] = [];
  for (const [id, route] of drawn) {
    const link = game.links.get(id);
    const own = new Set([standsIn(layout, link?.from ?? ''), standsIn(layout, link?.to ?? '')]);
    for (const piece of pieces(id, route)) {
      const line = { ...piece, width: piece.width || 0.01, height: piece.height || 0.01 };
      for (const root of roots) {
        if (!own.has(root) && overlaps(line, outline(layout, root))) found.push(`${id} through ${root}`);
      }
    }
  }
  return found;
}

/** Pairs of lines that lie on each other, though they neither come from nor lead to the same. */
function onEachOther(game: Game, layout: MapLayout, drawn: ReadonlyMap<string, Route>): string[] {
  const all = [...drawn].flatMap(([id, route]) => pieces(id, route));
  const found: string[] = [];
  for (const [i, a] of all.entries()) {
    for (const b of all.slice(i + 1)) {
      if (a.link === b.link || a.upright !== b.upright) continue;
      const p = game.links.get(a.link);
      const q = game.links.get(b.link);
      if (!p || !q || shownAs(layout, p.from) === shownAs(layout, q.from) || p.to === q.to) continue;
      const beside = a.upright ? Math.abs(a.x - b.x) : Math.abs(a.y - b.y);
      const together = a.upright
        ? a.y + 2 < b.y + b.height && b.y + 2 < a.y + a.height
        : a.x + 2 < b.x + b.width && b.x + 2 < a.x + a.width;
      if (beside < 3 && together) found.push(`${a.link} on ${b.link}`);
    }
  }
  return found;
}

test.each(['front-page', 'greenhouse-pump', 'mineral-hall'])(
  'in %s every link is drawn, through nothing that it does not serve and on no other',
  (slug) => {
    const game = example(slug);
    const layout = layOut(game, plainView);
    const drawn = routes(layout, game.links.values());
    expect(drawn.size).toBe(game.links.size);
    checkShape(game, layout, drawn);
    expect(runThrough(game, layout, drawn)).toEqual([]);
    expect(onEachOther(game, layout, drawn)).toEqual([]);
  },
);

test.each([
  ['greenhouse-pump', 1],
  ['mineral-hall', 0.65],
])('%s is compact enough to be read: it fits 950 × 650 at a zoom of %d', (slug, zoom) => {
  const rects = occupied(layOut(example(slug), plainView));
  const width =
    Math.max(...rects.map((rect) => rect.x + rect.width)) - Math.min(...rects.map((rect) => rect.x));
  const height =
    Math.max(...rects.map((rect) => rect.y + rect.height)) - Math.min(...rects.map((rect) => rect.y));
  expect(width * zoom).toBeLessThanOrEqual(950);
  expect(height * zoom).toBeLessThanOrEqual(650);
});

test('arranged random games, wired far more densely than real ones, run through nothing either', () => {
  for (let seed = 1; seed <= 8; seed++) {
    const game = arranged(randomGame(seed, 20 + 4 * seed));
    const layout = layOut(game, plainView);
    const drawn = routes(layout, game.links.values());
    checkShape(game, layout, drawn);
    expect(runThrough(game, layout, drawn), `seed ${seed}`).toEqual([]);
  }
});

test('things dragged over each other still have a line', () => {
  const here = { x: 10, y: 10 };
  const game = gameOf(
    [
      { id: 'c', kind: 'clue', name: 'Clue' },
      { id: 'z', kind: 'puzzle', name: 'Puzzle' },
    ],
    [['c', 'z']],
    { c: here, z: here },
  );
  const layout = layOut(game, plainView);
  const drawn = routes(layout, game.links.values());
  expect(drawn.size).toBe(1);
  checkShape(game, layout, drawn);
});

test('a line to what is folded away ends at the tray; one within a folded tray is not drawn', () => {
  const game = gameOf(
    [
      { id: 'p', kind: 'place', name: 'Shelf' },
      { id: 'o', kind: 'container', name: 'Outer', in: 'p' },
      { id: 'b', kind: 'container', name: 'Box', in: 'o' },
      { id: 'f', kind: 'fastener', name: 'Lock', on: 'b', type: 'key' },
      { id: 'k', kind: 'key', name: 'Key', in: 'b' },
      { id: 'c', kind: 'clue', name: 'Note', in: 'b' },
      { id: 'z', kind: 'puzzle', name: 'Puzzle' },
    ],
    [
      ['k', 'f'],
      ['c', 'z'],
    ],
    { p: { x: 0, y: 0 }, z: { x: 400, y: 40 } },
  );
  const layout = layOut(game, plainView);
  const drawn = routes(layout, game.links.values());
  expect([...drawn.keys()]).toEqual(['l1']);
  const box = absolute(layout, 'b');
  expect(drawn.get('l1')?.[0]?.x).toBe(box.x + box.width);
});

test('a puzzle above the next one leads straight down to it', () => {
  const game = gameOf(
    [
      { id: 'a', kind: 'puzzle', name: 'First' },
      { id: 'b', kind: 'puzzle', name: 'Next' },
    ],
    [['a', 'b']],
    { a: { x: 0, y: 0 }, b: { x: 0, y: 120 } },
  );
  const layout = layOut(game, plainView);
  const middle = absolute(layout, 'a').width / 2;
  expect(routes(layout, game.links.values()).get('l0')).toEqual([
    { x: middle, y: absolute(layout, 'a').height },
    { x: middle, y: 120 },
  ]);
});

test('routes that are the same stay the same objects', () => {
  const game = example('mineral-hall');
  const before = routes(layOut(game, plainView), game.links.values());
  const after = routes(layOut(game, plainView), game.links.values(), before);
  for (const [id, route] of after) expect(route).toBe(before.get(id));
});

test('nothing that a line depends on has changed: the same routes', () => {
  const game = example('mineral-hall');
  const before = routes(layOut(game, plainView), game.links.values());
  expect(routes(layOut(game, plainView), game.links.values(), before)).toBe(before);
});

test('move after move, known lines are kept and all stay legal: on the edges of what they join, through nothing else', () => {
  let game = arranged(randomGame(5, 40));
  let layout = layOut(game, plainView);
  let drawn = routes(layout, game.links.values());
  const roots = [...layout.slots].filter(([, slot]) => slot.parent === undefined).map(([id]) => id);
  const random = seededRandom(31);
  const below = Math.max(...occupied(layout).map((rect) => rect.y + rect.height)) + 100;
  const shares: number[] = [];
  for (let move = 0; move < 12; move++) {
    const id = roots[Math.floor(random() * roots.length)] ?? '';
    const to = { x: Math.round(random() * 600), y: below + move * 700 };
    game = { ...game, positions: new Map(game.positions).set(id, to) };
    layout = layOut(game, plainView, layout);
    const before = drawn;
    drawn = routes(layout, game.links.values(), before);
    expect([...drawn.keys()]).toEqual([...routes(layout, game.links.values()).keys()]);
    checkShape(game, layout, drawn);
    expect(runThrough(game, layout, drawn), `move ${move}`).toEqual([]);
    const kept = [...drawn].filter(([link, route]) => before.get(link) === route);
    shares.push(kept.length / drawn.size);
  }
  const [middle] = shares.sort((a, b) => a - b).slice(6);
  expect(middle).toBeGreaterThan(1 / 2);
});

test('lines far from a change keep their routes, and a line in the way of what moved goes round it', () => {
  const game = gameOf(
    [
      { id: 'a', kind: 'clue', name: 'A' },
      { id: 'z', kind: 'puzzle', name: 'Z' },
      { id: 'b', kind: 'clue', name: 'B' },
      { id: 'y', kind: 'puzzle', name: 'Y' },
      { id: 'p', kind: 'place', name: 'Shelf' },
    ],
    [
      ['a', 'z'],
      ['b', 'y'],
    ],
    {
      a: { x: 0, y: 0 },
      z: { x: 900, y: 0 },
      b: { x: 0, y: 900 },
      y: { x: 900, y: 900 },
      p: { x: 400, y: 400 },
    },
  );
  const before = routes(layOut(game, plainView), game.links.values());
  const moved = { ...game, positions: new Map(game.positions).set('p', { x: 400, y: -20 }) };
  const layout = layOut(moved, plainView);
  const after = routes(layout, moved.links.values(), before);
  expect(after.get('l1')).toBe(before.get('l1'));
  expect(runThrough(moved, layout, before)).toEqual(['l0 through p']);
  expect(runThrough(moved, layout, after)).toEqual([]);
  expect(routes(layOut(game, plainView), game.links.values(), after).get('l0')).toEqual(before.get('l0'));
});
