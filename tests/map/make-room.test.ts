import { describe, expect, test } from 'vitest';
import { applyEdits } from '../../src/game/edits/index.ts';
import type { Game, GameNode } from '../../src/game/model.ts';
import { layOut } from '../../src/map/lay-out.ts';
import { plainView } from '../../src/map/layout.ts';
import { makeRoom } from '../../src/map/make-room.ts';
import { outline, overlaps } from '../../src/map/outline.ts';

const box = (id: string): GameNode => ({ id, kind: 'container', name: `Box ${id}` });
const clue = (id: string): GameNode => ({ id, kind: 'clue', name: `Clue ${id}` });

/** Three boxes, one closely below the other, and one to the side. */
const game: Game = {
  head: {},
  nodes: new Map(
    [box('a'), box('b'), box('c'), box('side'), ...'12345'.split('').map(clue)].map((n) => [n.id, n]),
  ),
  links: new Map(),
  positions: new Map([
    ['a', { x: 0, y: 0 }],
    ['b', { x: 0, y: 90 }],
    ['c', { x: 0, y: 180 }],
    ['side', { x: 600, y: 0 }],
    ...'12345'.split('').map((id, i) => [id, { x: 1200, y: i * 60 }] as const),
  ]),
};

const filled = (holder: string): Game => {
  const result = applyEdits(game, [{ type: 'place', ids: ['1', '2', '3', '4', '5'], holder }]);
  if (!result.ok) throw new Error('a legal edit was refused');
  return result.game;
};

const shown = (of: Game) => layOut(of, plainView);

describe('making room', () => {
  test('what stood clear below a tray that grew gives way, and what is below that', () => {
    const before = shown(game);
    expect(overlaps(outline(before, 'a'), outline(before, 'b'))).toBe(false);
    const grown = filled('a');
    expect(overlaps(outline(shown(grown), 'a'), outline(shown(grown), 'b'))).toBe(true);
    const positions = makeRoom(before, shown(grown));
    const result = applyEdits(grown, [{ type: 'move', positions }]);
    if (!result.ok) throw new Error('a legal move was refused');
    const after = shown(result.game);
    for (const [upper, lower] of [
      ['a', 'b'],
      ['b', 'c'],
      ['a', 'c'],
    ] as const) {
      expect(overlaps(outline(after, upper), outline(after, lower))).toBe(false);
    }
    expect(positions.map(([id]) => id).sort()).toEqual(['b', 'c']);
  });

  test('nothing moves when nothing grew, and what a teacher laid over another stays', () => {
    expect(makeRoom(shown(game), shown(game))).toEqual([]);
    const piled = { ...game, positions: new Map(game.positions).set('side', { x: 10, y: 10 }) };
    const grown = applyEdits(piled, [{ type: 'place', ids: ['1'], holder: 'a' }]);
    if (!grown.ok) throw new Error('a legal edit was refused');
    expect(makeRoom(shown(piled), shown(grown.game)).map(([id]) => id)).not.toContain('side');
  });
});
