import { describe, expect, test } from 'vitest';
import { type Copies, copyOf, duplicateEdits, pasteEdits, removeEdits } from '../../src/game/edits/copies.ts';
import { applyEdits } from '../../src/game/edits/index.ts';
import { emptyGame, type Game } from '../../src/game/model.ts';
import { contentsOf } from '../../src/game/rows.ts';
import { countingIds } from '../random-edits.ts';
import { sampleGame } from './sample.ts';

const game = sampleGame();
const at = { x: 10, y: 20 };

function done(start: Game, copies: Copies): Game {
  if (!copies.ok) throw new Error(copies.refusal.reason);
  const result = applyEdits(start, copies.edits);
  if (!result.ok) throw new Error(result.refusal.reason);
  return result.game;
}

function paste(start: Game, ids: string[], holder: string | null) {
  const copies = pasteEdits(start, copyOf(game, ids), holder, at, countingIds());
  return { copies, ids: copies.ok ? copies.ids : [], game: done(start, copies) };
}

describe('a copied box', () => {
  test('takes its contents, fasteners and the links among them, and no others', () => {
    const fragment = copyOf(game, ['chest', 'brass']);
    expect(fragment.nodes.map(({ id }) => id).sort()).toEqual([
      'brass',
      'chest',
      'gold',
      'padlock',
      'tin',
      'wheels',
    ]);
    expect(fragment.links.map(({ id }) => id)).toEqual(['l3']);
  });

  test('pastes into itself, with new ids throughout and the links between the copies', () => {
    const { ids, game: next } = paste(game, ['chest'], 'chest');
    const [copy = ''] = ids;
    expect(ids).toHaveLength(1);
    expect(next.nodes.get(copy)).toMatchObject({ name: 'Chest 2', in: 'chest' });
    expect(next.nodes.size).toBe(game.nodes.size + 6);
    expect(contentsOf(next, copy).map(({ name }) => name)).toEqual(['Tin 2', 'Brass']);
    const [link] = [...next.links.values()].filter(({ id }) => !game.links.has(id));
    expect(next.nodes.get(link?.from ?? '')).toMatchObject({ kind: 'key', name: 'Brass', in: copy });
    expect(next.nodes.get(link?.to ?? '')).toMatchObject({ kind: 'fastener', name: 'Brass' });
  });

  test('pastes into another game with its own names', () => {
    const { ids, game: next } = paste(emptyGame, ['chest', 'note'], null);
    expect(ids.map((id) => next.nodes.get(id)?.name)).toEqual(['Chest', 'Note']);
    expect(ids.map((id) => next.nodes.get(id)?.in)).toEqual([undefined, undefined]);
    expect(ids.map((id) => next.positions.get(id))).toEqual([at, { x: 10, y: 68 }]);
  });
});

describe('pasting', () => {
  test('goes into the selected holder at the end of its rows; places and puzzles go on the mat as they stood', () => {
    const { ids, game: next } = paste(game, ['shelf', 'sum', 'note'], 'tin');
    const roots = ids.map((id) => next.nodes.get(id));
    expect(roots.map((node) => node?.name)).toEqual(['Shelf 2', 'Sum 2']);
    expect(ids.map((id) => next.positions.get(id))).toEqual([at, { x: 270, y: 20 }]);
    const key = paste(game, ['brass'], 'tin');
    expect(contentsOf(key.game, 'tin').map(({ id }) => id)).toEqual(['gold', ...key.ids]);
  });

  test('on something that holds nothing goes on the mat', () => {
    const { ids, game: next } = paste(game, ['brass'], 'sum');
    expect(next.nodes.get(ids[0] ?? '')?.in).toBeUndefined();
    expect(next.positions.get(ids[0] ?? '')).toEqual(at);
  });

  test('of a lock alone goes on the selected box, else is refused', () => {
    const { ids, game: next } = paste(game, ['wheels'], 'tin');
    expect(next.nodes.get(ids[0] ?? '')).toMatchObject({ on: 'tin', code: '472' });
    const fragment = copyOf(game, ['wheels', 'note']);
    for (const holder of [null, 'shelf', 'sum']) {
      expect(pasteEdits(game, fragment, holder, at, countingIds())).toEqual({
        ok: false,
        refusal: { reason: 'needsContainer', id: 'wheels' },
      });
    }
  });

  test('of nothing does nothing', () => {
    expect(pasteEdits(game, copyOf(game, ['x']), null, at, countingIds())).toEqual({
      ok: true,
      edits: [],
      ids: [],
    });
  });
});

describe('duplicating', () => {
  test('stays in the tray, on the box, or beside it on the mat', () => {
    const copies = duplicateEdits(game, ['brass', 'padlock', 'sum'], countingIds(), { x: 24, y: 24 });
    const next = done(game, copies);
    const roots = copies.ids.map((id) => next.nodes.get(id));
    expect(roots).toMatchObject([
      { kind: 'key', name: 'Brass', in: 'chest' },
      { kind: 'puzzle', name: 'Sum 2' },
      { kind: 'fastener', name: 'Brass', on: 'tin' },
    ]);
    expect(next.positions.get(copies.ids[1] ?? '')).toEqual({ x: 324, y: 104 });
    const links = [...next.links.values()].filter(({ id }) => !game.links.has(id));
    expect(links).toMatchObject([{ from: copies.ids[0], to: copies.ids[2] }]);
  });

  test('keeps a pin on the mat, and drops it where the copy goes into a tray', () => {
    const newId = countingIds();
    const result = applyEdits(game, [{ type: 'pin', ids: ['shelf', 'sum'], pinned: true }]);
    const pinned = result.ok ? result.game : game;
    const copies = duplicateEdits(pinned, ['sum'], newId, { x: 32, y: 32 });
    const [copy = ''] = copies.ids;
    expect(done(pinned, copies).positions.get(copy)).toEqual({ x: 332, y: 112, pinned: true });
    const loose = done(game, pasteEdits(game, copyOf(game, ['note']), null, at, newId));
    const [note = ''] = [...loose.nodes.keys()].filter((id) => !game.nodes.has(id));
    const held = applyEdits(loose, [{ type: 'pin', ids: [note], pinned: true }]);
    const start = held.ok ? held.game : loose;
    const into = done(start, pasteEdits(start, copyOf(start, [note]), 'shelf', at, newId));
    const [last = ''] = contentsOf(into, 'shelf')
      .map(({ id }) => id)
      .slice(-1);
    expect(into.positions.get(last)).toEqual({ x: 0, y: 2 });
  });

  test('numbers on from the name that it has', () => {
    const named = (name: string) => ({
      ...emptyGame,
      nodes: new Map([['a', { id: 'a', kind: 'place', name } as const]]),
    });
    const nameAfter = (start: Game) => {
      const copies = duplicateEdits(start, ['a'], countingIds(), at);
      return done(start, copies).nodes.get(copies.ids[0] ?? '')?.name;
    };
    expect(nameAfter(named('Desk'))).toBe('Desk 2');
    expect(nameAfter(named('Desk 7'))).toBe('Desk 8');
    expect(nameAfter(named('Room 2031'))).toBe('Room 2031 2');
    expect(nameAfter(named(''))).toBe(' 2');
  });
});

test('removing a selection takes what is there, and nothing when nothing is', () => {
  expect(removeEdits(game, ['sum', 'sum', 'x'], ['l1'])).toEqual([
    { type: 'remove', nodes: ['sum'], links: ['l1'] },
  ]);
  expect(removeEdits(game, ['x'], [])).toEqual([]);
});
