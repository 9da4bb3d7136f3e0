import { expect, test } from 'vitest';
import type { Game, GameNode } from '../../src/game/model.ts';
import { inRowOrder } from '../../src/game/rows.ts';
import { arrange, sidesOf } from '../../src/map/arrange.ts';
import { layOut } from '../../src/map/lay-out.ts';
import { absolute, plainView } from '../../src/map/layout.ts';
import { occupied, outline, overlaps } from '../../src/map/outline.ts';
import { placeMissing } from '../../src/map/place-missing.ts';
import { gameOf as exampleOf, SLUGS } from '../games/example.ts';
import { randomGame } from '../random-game.ts';
import { arranged, coveredIn, gameOf, hundredLoose, numbersOf, rootsOf } from './games.ts';

test('random games are arranged without overlaps, and always in the same way', () => {
  for (let seed = 1; seed <= 12; seed++) {
    const game = randomGame(seed, 8 + 5 * seed);
    const once = arranged(game);
    expect(coveredIn(once), `seed ${seed}`).toEqual([]);
    expect(arrange(game, numbersOf(game))).toEqual(once.positions);
  }
});

test.each(SLUGS)('%s stands in its file as arranging it from scratch has it', (slug) => {
  const game = exampleOf(slug);
  expect(arrange({ ...game, positions: new Map() }, numbersOf(game))).toEqual(game.positions);
});

test('an empty game has no positions', () => {
  expect(arrange(gameOf([]), new Map()).size).toBe(0);
});

test('a hundred things on the tables stand apart', () => {
  expect(coveredIn(arranged(hundredLoose()))).toEqual([]);
});

/** Sums over a hundred links round otherwise in another order. */
test('the order in which a game has its things and links changes nothing', () => {
  const clues = Array.from(
    { length: 100 },
    (_, i): GameNode => ({ id: `c${i}`, kind: 'clue', name: `Clue ${i}` }),
  );
  const others: GameNode[] = [
    { id: 'y', kind: 'puzzle', name: 'Even' },
    { id: 'z', kind: 'puzzle', name: 'Odd' },
    { id: 'w', kind: 'prize', name: 'Prize' },
  ];
  const pairs = clues.map(({ id }, i) => [id, i % 2 === 0 ? 'y' : 'z'] as const);
  const game = gameOf([...clues, ...others], [...pairs, ['z', 'w']]);
  const turned: Game = {
    ...game,
    nodes: new Map([...game.nodes].reverse()),
    links: new Map([...game.links].reverse()),
  };
  expect(sidesOf(turned, numbersOf(turned))).toEqual(sidesOf(game, numbersOf(game)));
  expect(arrange(turned, numbersOf(turned))).toEqual(arrange(game, numbersOf(game)));
});

test('puzzles stand one below the other in the order of play', () => {
  const game = randomGame(5, 60, { rings: false, leftOut: false });
  const numbers = numbersOf(game);
  const after = arranged(game);
  const layout = layOut(after, plainView);
  const puzzles = rootsOf(after)
    .filter((id) => layout.slots.get(id)?.kind === 'puzzle' && numbers.has(id))
    .sort((a, b) => absolute(layout, a).y - absolute(layout, b).y);
  expect(puzzles.length).toBeGreaterThan(2);
  expect(new Set(puzzles.map((id) => absolute(layout, id).x)).size).toBe(1);
  const order = puzzles.map((id) => numbers.get(id) ?? 0);
  expect(order).toEqual([...order].sort((a, b) => a - b));
});

test('rows keep the order that they have; without positions they follow first use', () => {
  const nodes: GameNode[] = [
    { id: 'p', kind: 'place', name: 'Shelf' },
    { id: 'a', kind: 'clue', name: 'Late', in: 'p' },
    { id: 'b', kind: 'clue', name: 'Early', in: 'p' },
    { id: 'y', kind: 'puzzle', name: 'First', answer: '1' },
    { id: 'z', kind: 'puzzle', name: 'Second' },
  ];
  const pairs = [
    ['b', 'y'],
    ['y', 'z'],
    ['a', 'z'],
  ] as const;
  const rows = (game: Game) =>
    inRowOrder(
      arranged(game).positions,
      [...game.nodes.values()].filter((node) => node.in === 'p'),
    ).map((node) => node.id);
  expect(rows(gameOf(nodes, pairs))).toEqual(['b', 'a']);
  expect(rows(gameOf(nodes, pairs, { a: { x: 0, y: 0 }, b: { x: 0, y: 1 } }))).toEqual(['a', 'b']);
});

test('what has a position keeps it; what lacks one gets a free spot', () => {
  const game = arranged(randomGame(9, 40));
  expect(placeMissing(game, numbersOf(game))).toBe(game);
  const roots = rootsOf(game);
  const lost = roots.filter((_, i) => i % 4 === 1);
  const positions = new Map([...game.positions].filter(([id]) => !lost.includes(id)));
  const placed = placeMissing({ ...game, positions }, numbersOf(game));
  for (const [id, at] of positions) expect(placed.positions.get(id)).toBe(at);
  for (const id of lost) expect(placed.positions.has(id)).toBe(true);
  const layout = layOut(placed, plainView);
  for (const id of lost) {
    for (const other of roots) {
      if (other !== id) expect(overlaps(outline(layout, id), outline(layout, other))).toBe(false);
    }
  }
  expect(occupied(layout).length).toBeGreaterThanOrEqual(roots.length);
});
