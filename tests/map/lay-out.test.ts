import { expect, test } from 'vitest';
import type { Game, GameNode } from '../../src/game/model.ts';
import { freeSpot } from '../../src/map/free-spot.ts';
import { layOut } from '../../src/map/lay-out.ts';
import { absolute, type MapLayout, type MapView, plainView, shownAs } from '../../src/map/layout.ts';
import { occupied, outline, overlaps, standsIn } from '../../src/map/outline.ts';
import { NAME, PUZZLE_WIDTH } from '../../src/map/sizes.ts';
import { textWidth } from '../../src/type/text.ts';
import { randomGame } from '../random-game.ts';
import { gameOf } from './games.ts';

/** Nothing in a tray overlaps what stands beside it, and all but the overhang of plates lies inside. */
function checkTrays(layout: MapLayout) {
  for (const [tray, rows] of layout.rows) {
    const outer = absolute(layout, tray);
    let above: string | undefined;
    for (const id of rows) {
      const rect = outline(layout, id);
      for (const other of rows) {
        if (other !== id) expect(overlaps(rect, outline(layout, other)), `${id} over ${other}`).toBe(false);
      }
      expect(rect.y).toBeGreaterThan(outer.y);
      expect(rect.y + rect.height).toBeLessThan(outer.y + outer.height);
      if (above !== undefined) expect(rect.y).toBeGreaterThan(absolute(layout, above).y);
      above = id;
      if (layout.slots.get(id)?.kind === 'fastener') continue;
      expect(rect.x).toBeGreaterThan(outer.x);
      expect(rect.x + rect.width).toBeLessThan(outer.x + outer.width);
    }
  }
}

const everythingOpen = (game: Game): MapView => ({ opened: new Set(game.nodes.keys()) });

test('an empty game has nothing to draw', () => {
  const layout = layOut(gameOf([]), plainView);
  expect(layout.slots.size).toBe(0);
  expect(layout.fields).toEqual([]);
});

test('in random games every node is drawn or hidden in a tray that is, and nothing in a tray overlaps', () => {
  for (let seed = 1; seed <= 12; seed++) {
    const game = randomGame(seed, 60);
    for (const view of [plainView, everythingOpen(game)]) {
      const layout = layOut(game, view);
      checkTrays(layout);
      for (const id of game.nodes.keys()) {
        const shown = shownAs(layout, id);
        expect(layout.slots.has(shown ?? ''), id).toBe(true);
        expect(layout.slots.get(standsIn(layout, id) ?? '')?.depth).toBe(0);
      }
    }
    expect(layOut(game, everythingOpen(game)).slots.size).toBe(game.nodes.size);
  }
});

test('without positions nothing on the mat overlaps', () => {
  const game = randomGame(3, 80);
  const layout = layOut(game, plainView);
  const roots = [...layout.slots].filter(([, slot]) => slot.parent === undefined).map(([id]) => id);
  for (const [i, a] of roots.entries()) {
    for (const b of roots.slice(i + 1)) {
      expect(overlaps(outline(layout, a), outline(layout, b)), `${a} over ${b}`).toBe(false);
    }
  }
});

test('boxes five deep are folded from the third on, and lie in each other when opened', () => {
  const boxes: GameNode[] = Array.from({ length: 5 }, (_, i) => ({
    id: `b${i}`,
    kind: 'container',
    name: `Box ${i}`,
    ...(i > 0 && { in: `b${i - 1}` }),
  }));
  const locks: GameNode[] = boxes.map((_, i) => ({
    id: `f${i}`,
    kind: 'fastener',
    name: 'Lock',
    on: `b${i}`,
  }));
  const game = gameOf([...boxes, ...locks, { id: 'c', kind: 'prize', name: 'Prize', in: 'b4' }]);
  const open = layOut(game, everythingOpen(game));
  checkTrays(open);
  expect(open.slots.get('c')?.depth).toBe(5);
  const folded = layOut(game, plainView);
  expect([...folded.slots.keys()].sort()).toEqual(['b0', 'b1', 'b2', 'f0', 'f1']);
  expect(folded.hidden.get('c')).toBe('b2');
  expect(folded.slots.get('b2')).toMatchObject({
    folded: true,
    locks: ['f2'],
    holds: [
      { kind: 'container', count: 2 },
      { kind: 'prize', count: 1 },
    ],
  });
});

test('a name of 200 characters is shown whole, within its shape', () => {
  const name = 'The unbearably long name of a thing that somebody was very fond of '.repeat(3).trim();
  const word = 'W'.repeat(200);
  const nodes: GameNode[] = [
    { id: 'p', kind: 'place', name },
    { id: 'b', kind: 'container', name: word, in: 'p' },
    { id: 'f', kind: 'fastener', name, on: 'b', type: 'key' },
    { id: 'k', kind: 'key', name: word, in: 'b' },
    { id: 'z', kind: 'puzzle', name },
  ];
  const game = gameOf(nodes, [['k', 'f']]);
  const layout = layOut(game, plainView);
  checkTrays(layout);
  for (const [id, slot] of layout.slots) {
    const wanted = game.nodes.get(id)?.name ?? '';
    expect(slot.lines.join('').replaceAll(' ', '')).toBe(wanted.replaceAll(' ', ''));
    for (const line of slot.lines) {
      expect(
        slot.text.x + textWidth(line, id === 'k' ? { ...NAME, weight: 'regular' } : NAME),
      ).toBeLessThanOrEqual(slot.width + (slot.kind === 'fastener' ? 20 : 0));
    }
    expect(slot.text.y + 16 * slot.lines.length).toBeLessThanOrEqual(slot.height);
  }
});

test('a code of 60 symbols breaks between symbols; directions are told apart from letters', () => {
  const code = '0123456789'.repeat(6);
  const game = gameOf(
    [
      { id: 'b', kind: 'container', name: 'Box' },
      { id: 'f', kind: 'fastener', name: 'Lock', on: 'b', type: 'number', code },
      { id: 'd', kind: 'fastener', name: 'Lock', on: 'b', type: 'direction', code: '↑ ↓ ← →' },
      { id: 'w', kind: 'fastener', name: 'Lock', on: 'b', type: 'word', code: 'DULL RUDD DULL' },
      { id: 'z', kind: 'puzzle', name: 'Puzzle', answer: code },
      { id: 'y', kind: 'puzzle', name: 'Way', answer: 'udlr' },
    ],
    [['y', 'd']],
  );
  const layout = layOut(game, plainView);
  checkTrays(layout);
  for (const id of ['f', 'z']) {
    const lines = layout.slots.get(id)?.code?.lines ?? [];
    expect(lines.length).toBeGreaterThan(3);
    expect(lines.flat().join('')).toBe(code);
  }
  expect(layout.slots.get('d')?.code).toEqual({ lines: [['U', 'D', 'L', 'R']], directions: true });
  expect(layout.slots.get('y')?.code).toEqual({ lines: [['U', 'D', 'L', 'R']], directions: true });
  expect(layout.slots.get('w')?.code?.directions).toBe(false);
  expect(layout.slots.get('w')?.code?.lines.map((line) => line.join(''))).toEqual(['DULL RUDD', 'DULL']);
});

test('moving a tray changes its own slot and no other; an equal game keeps the layout', () => {
  const nodes: GameNode[] = [
    { id: 'p', kind: 'place', name: 'Shelf' },
    { id: 'c', kind: 'clue', name: 'Note', in: 'p' },
    { id: 'z', kind: 'puzzle', name: 'Puzzle' },
  ];
  const before = layOut(gameOf(nodes, [['c', 'z']], { p: { x: 0, y: 0 }, z: { x: 400, y: 0 } }), plainView);
  const again = gameOf(nodes, [['c', 'z']], { p: { x: 0, y: 0 }, z: { x: 400, y: 0 } });
  expect(layOut(again, plainView, before)).toBe(before);
  const after = layOut(
    gameOf(nodes, [['c', 'z']], { p: { x: 8, y: 0 }, z: { x: 400, y: 0 } }),
    plainView,
    before,
  );
  expect(after.slots.get('p')).not.toBe(before.slots.get('p'));
  expect(after.slots.get('c')).toBe(before.slots.get('c'));
  expect(after.slots.get('z')).toBe(before.slots.get('z'));
  expect(after.rows).toBe(before.rows);
  expect(absolute(after, 'c').x - absolute(before, 'c').x).toBe(8);
});

test('rows follow positions; what has none comes last; boxes lie below things', () => {
  const game = gameOf(
    [
      { id: 'p', kind: 'place', name: 'Shelf' },
      { id: 'b', kind: 'container', name: 'Box', in: 'p' },
      { id: 'c1', kind: 'clue', name: 'One', in: 'p' },
      { id: 'c2', kind: 'clue', name: 'Two', in: 'p' },
      { id: 'c3', kind: 'clue', name: 'Three', in: 'p' },
    ],
    [],
    { p: { x: 0, y: 0 }, b: { x: 0, y: 0 }, c2: { x: 0, y: 1 }, c1: { x: 0, y: 2 } },
  );
  expect(layOut(game, plainView).rows.get('p')).toEqual(['c2', 'c1', 'c3', 'b']);
});

test('locks are on the wall that faces what opens them', () => {
  const game = (x: number) =>
    gameOf(
      [
        { id: 'b', kind: 'container', name: 'Box' },
        { id: 'f', kind: 'fastener', name: 'Lock', on: 'b', type: 'number', code: '1' },
        { id: 'z', kind: 'puzzle', name: 'Puzzle', answer: '1' },
      ],
      [['z', 'f']],
      { b: { x: 0, y: 0 }, z: { x, y: 0 } },
    );
  const left = layOut(game(-500), plainView);
  const right = layOut(game(500), plainView);
  expect([left.slots.get('b')?.wall, left.slots.get('f')?.wall]).toEqual(['left', 'left']);
  expect(left.slots.get('f')?.x).toBeLessThan(0);
  expect(right.slots.get('b')?.wall).toBe('right');
  const plate = right.slots.get('f');
  expect((plate?.x ?? 0) + (plate?.width ?? 0)).toBeGreaterThan(right.slots.get('b')?.width ?? 0);
});

test('an arrow between two other things turns no wall, though one of them lies in the same tray', () => {
  const nodes: GameNode[] = [
    { id: 'p', kind: 'place', name: 'Shelf' },
    { id: 'b', kind: 'container', name: 'Box', in: 'p' },
    { id: 'f', kind: 'fastener', name: 'Lock', on: 'b', type: 'key' },
    { id: 'k', kind: 'key', name: 'Key', in: 'p' },
    { id: 'c', kind: 'clue', name: 'Note', in: 'p' },
    { id: 'i', kind: 'clue', name: 'Slip', in: 'b' },
    { id: 'z', kind: 'puzzle', name: 'Puzzle' },
  ];
  const at = { p: { x: 0, y: 0 }, z: { x: 600, y: 0 } };
  const wall = (pairs: readonly (readonly [string, string])[]) =>
    layOut(gameOf(nodes, pairs, at), plainView).slots.get('b')?.wall;
  expect(wall([['k', 'f']])).toBe('left');
  expect(
    wall([
      ['k', 'f'],
      ['c', 'z'],
    ]),
  ).toBe('left');
  expect(
    wall([
      ['k', 'f'],
      ['i', 'z'],
    ]),
  ).toBe('right');
});

test('what stands together shares a field with its like; what stands alone has a caption of its own', () => {
  const box = (id: string): GameNode => ({ id, kind: 'container', name: id });
  const game = gameOf(
    [
      box('a'),
      box('b'),
      box('far'),
      { id: 'c', kind: 'clue', name: 'Note' },
      { id: 'g', kind: 'prize', name: 'Prize' },
      { id: 'later', kind: 'clue', name: 'Letter', atMinute: 12 },
      { id: 'z', kind: 'puzzle', name: 'Puzzle', atMinute: 20 },
    ],
    [['z', 'g']],
    {
      a: { x: 0, y: 0 },
      b: { x: 6, y: 100 },
      c: { x: 6, y: 200 },
      far: { x: 600, y: 0 },
      g: { x: 900, y: 0 },
      later: { x: 1200, y: 0 },
      z: { x: 900, y: 200 },
    },
  );
  const layout = layOut(game, plainView);
  expect(layout.fields.map((field) => [field.caption, field.ids])).toEqual([['tables', ['a', 'b']]]);
  const captions = ['a', 'b', 'c', 'far', 'g', 'later', 'z'].map((id) => layout.slots.get(id)?.caption);
  expect(captions).toEqual([undefined, undefined, 'hand', 'tables', 'given', 'given', undefined]);
  const notes = ['later', 'z'].map((id) => layout.slots.get(id)?.notes);
  expect(notes).toEqual([
    [{ note: 'atMinute', minute: 12, givenOut: true }],
    [{ note: 'atMinute', minute: 20, givenOut: false }],
  ]);
});

test('a field holds together when one of its boxes shrinks, unless something else comes between', () => {
  const box = (id: string): GameNode => ({ id, kind: 'container', name: id });
  const height = layOut(gameOf([box('a')]), plainView).slots.get('a')?.height ?? 0;
  const fields = (gap: number, nodes: readonly GameNode[] = [], at = {}) =>
    layOut(
      gameOf([box('a'), box('b'), ...nodes], [], { a: { x: 0, y: 0 }, b: { x: 0, y: height + gap }, ...at }),
      plainView,
    ).fields.length;
  expect(fields(18)).toBe(1);
  expect(fields(72)).toBe(1);
  expect(fields(73)).toBe(0);
  const clue: GameNode = { id: 'c', kind: 'clue', name: 'Note' };
  expect(fields(72, [clue], { c: { x: 10, y: height + 20 } })).toBe(0);
});

test('what is shared, checked or there for fun says so, and a plate is wide enough for it', () => {
  const lock = (fields: object): GameNode => ({
    id: 'f',
    kind: 'fastener',
    name: '',
    on: 'b',
    type: 'latch',
    ...fields,
  });
  const slots = (fields: object) =>
    layOut(
      gameOf([{ id: 'b', kind: 'container', name: 'Tin', shared: 2 }, lock(fields)], [], {
        b: { x: 0, y: 0 },
      }),
      plainView,
    ).slots;
  const fun = slots({ forFun: true, checked: true });
  expect(fun.get('b')?.notes).toEqual([{ note: 'shared', copies: 2 }]);
  expect(fun.get('f')?.notes).toEqual([{ note: 'checked' }, { note: 'forFun' }]);
  expect(fun.get('f')?.width).toBeGreaterThan(slots({}).get('f')?.width ?? 0);
  expect(slots({}).get('f')?.notes).toEqual([]);
});

test('a puzzle tells how many are enough and grows with its links', () => {
  const clues = Array.from({ length: 9 }, (_, i): GameNode => ({ id: `c${i}`, kind: 'clue', name: 'Note' }));
  const pairs = clues.map((clue) => [clue.id, 'z'] as const);
  const layout = layOut(
    gameOf([...clues, { id: 'z', kind: 'puzzle', name: 'Puzzle', need: 2 }], pairs),
    plainView,
  );
  const slot = layout.slots.get('z');
  expect(slot?.notes).toEqual([{ note: 'need', need: 2, of: 9 }]);
  expect(slot?.width).toBe(PUZZLE_WIDTH);
  expect(slot?.height).toBeGreaterThanOrEqual(90);
});

test('a new thing gets a free spot: in view while there is one, else the nearest beyond', () => {
  const view = { x: 0, y: 0, width: 900, height: 600 };
  const size = { width: 208, height: 28 };
  const empty = freeSpot(layOut(gameOf([]), plainView), view, size);
  expect(empty).toEqual({ x: 346, y: 286 });
  const nodes: GameNode[] = [];
  const positions: Record<string, { x: number; y: number }> = {};
  for (let i = 0; i < 30; i++) {
    const game = gameOf(nodes, [], positions);
    const layout = layOut(game, plainView);
    const spot = freeSpot(layout, view, size);
    for (const rect of occupied(layout)) expect(overlaps(rect, { ...spot, ...size })).toBe(false);
    nodes.push({ id: `n${i}`, kind: 'clue', name: 'Note' });
    positions[`n${i}`] = spot;
  }
  const beyond = Object.values(positions).filter(({ x, y }) => x < 0 || y < 0 || x > 692 || y > 572);
  expect(beyond.length).toBeGreaterThan(0);
  expect(beyond.length).toBeLessThan(25);
});

test('a layout from the one before is that of a fresh call: after renames, links, moves and folding', () => {
  let game = randomGame(9, 50, { nastyIds: false });
  game = { ...game, positions: new Map([...game.nodes.keys()].map((id, i) => [id, { x: 0, y: i * 40 }])) };
  const views: readonly MapView[] = [plainView, everythingOpen(game)];
  let layout = layOut(game, plainView);
  for (const [step, node] of [...game.nodes.values()].entries()) {
    const { id } = node;
    if (step % 4 === 0) {
      game = {
        ...game,
        nodes: new Map(game.nodes).set(id, { ...node, name: `${node.name} with a much longer name` }),
      };
    } else if (step % 4 === 1) {
      game = { ...game, positions: new Map(game.positions).set(id, { x: 500, y: step }) };
    } else if (step % 4 === 2) {
      const links = [...game.links].filter(([, link]) => link.to !== id && link.from !== id);
      game = { ...game, links: new Map(links) };
    }
    const view = views[Math.floor(step / 4) % 2] ?? plainView;
    layout = layOut(game, view, layout);
    const cold = layOut(structuredClone(game), view);
    expect(layout, `step ${step}`).toEqual(cold);
  }
});
