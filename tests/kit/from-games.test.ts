import { describe, expect, it } from 'vitest';
import { readGame } from '../../src/game/read.ts';
import { setCount } from '../../src/kit/edits.ts';
import { fitKit } from '../../src/kit/fit/index.ts';
import { kitFromGames, withGames } from '../../src/kit/from-games.ts';
import { gameOf } from '../game-of.ts';
import { SLUGS, sourceOf } from '../games/example.ts';
import { boxesGame, randomCase } from './cupboards.ts';

function ids() {
  let made = 0;
  return { newId: () => `new${++made}` };
}

describe('a kit taken from games', () => {
  const examples = SLUGS.map((slug) => {
    const read = readGame(sourceOf(slug), { newId: () => slug });
    if (!read.ok) throw new Error(slug);
    return read.document.game;
  });

  it('does for each of them', () => {
    const kit = kitFromGames(examples, ids());
    for (const game of examples) {
      const fitting = fitKit(game, kit);
      expect(fitting.missing).toBe(0);
      expect([fitting.boxes, fitting.hasps, fitting.tools].every(({ short }) => short.size === 0)).toBe(true);
    }
    const names = examples.flatMap((game) => [...game.nodes.values()].filter(({ kind }) => kind === 'place'));
    expect(kit.places.length).toBe(new Set(names.map(({ name }) => name.toLowerCase())).size);
  });

  it('has no more than one of them needs: one fewer of anything, and some game is short', () => {
    const kit = kitFromGames(examples, ids());
    for (const { id, count } of kit.items) {
      const poorer = setCount(kit, id, count - 1);
      expect(Math.max(...examples.map((game) => fitKit(game, poorer).missing))).toBeGreaterThan(0);
    }
  });

  it('does for random games', () => {
    for (let seed = 0; seed < 100; seed++) {
      const games = [randomCase(seed).game, randomCase(seed + 1000).game];
      const kit = kitFromGames(games, ids());
      for (const game of games) expect(fitKit(game, kit).missing).toBe(0);
    }
  });

  it('counts a box that takes a hasp for one that takes a lock', () => {
    const single = boxesGame([{ type: 'key' }, { type: 'key' }], 2);
    const double = {
      ...gameOf([
        { id: 'chest', kind: 'container' },
        { id: 'a', kind: 'fastener', on: 'chest', type: 'number' },
        { id: 'b', kind: 'fastener', on: 'chest', type: 'dial' },
      ]),
      head: { lesson: { teams: 3 } },
    };
    const boxes = kitFromGames([single, double], ids()).items.filter(({ what }) => what === 'box');
    expect(boxes).toMatchObject([
      { takes: 'hasp', count: 3 },
      { takes: 'lock', count: 1 },
    ]);
  });

  it('added to what is there: only what is more', () => {
    const game = boxesGame([{ type: 'key' }], 4);
    const kit = kitFromGames([game], ids());
    expect(withGames(kit, [game], ids())).toEqual(kit);
    const fewer = setCount(kit, kit.items[0]?.id ?? '', 1);
    expect(withGames(fewer, [game], ids())).toEqual(kit);
  });
});
