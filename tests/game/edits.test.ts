import { describe, expect, test } from 'vitest';
import type { Edit, EditRefusal } from '../../src/game/edits/edit.ts';
import { applyEdits, applyPatchesTo } from '../../src/game/edits/index.ts';
import { type Game, type GameNode, isPinned } from '../../src/game/model.ts';
import { contentsOf, fastenersOf } from '../../src/game/rows.ts';
import { sampleGame } from './sample.ts';

const game = sampleGame();

function edited(...edits: Edit[]): Game {
  return from(game, ...edits);
}

function from(start: Game, ...edits: Edit[]): Game {
  const result = applyEdits(start, edits);
  if (!result.ok) throw new Error(JSON.stringify(result.refusal));
  return result.game;
}

function refusal(...edits: Edit[]): EditRefusal | undefined {
  const result = applyEdits(game, edits);
  return result.ok ? undefined : result.refusal;
}

const rows = (of: Game, holder: string) => contentsOf(of, holder).map(({ id }) => id);
const spotsIn = (of: Game, holder: string) => rows(of, holder).map((id) => of.positions.get(id));
const add = (node: GameNode, at?: { x: number; y: number }): Edit => ({
  type: 'add',
  nodes: [node],
  links: [],
  positions: at ? [[node.id, at]] : [],
});

describe('place', () => {
  test('puts a thing at the end of a tray and rewrites the rows', () => {
    const next = edited({ type: 'place', ids: ['note'], holder: 'chest' });
    expect(next.nodes.get('note')?.in).toBe('chest');
    expect(rows(next, 'chest')).toEqual(['tin', 'brass', 'note']);
    expect(spotsIn(next, 'chest')).toEqual([
      { x: 0, y: 0 },
      { x: 0, y: 1 },
      { x: 0, y: 2 },
    ]);
  });

  test('puts it above the one that it is dropped on', () => {
    expect(rows(edited({ type: 'place', ids: ['note'], holder: 'chest', before: 'brass' }), 'chest')).toEqual(
      ['tin', 'note', 'brass'],
    );
  });

  test('takes a before that is not there, or is moved itself, for the next that stays', () => {
    expect(rows(edited({ type: 'place', ids: ['note'], holder: 'chest', before: 'sum' }), 'chest')).toEqual([
      'tin',
      'brass',
      'note',
    ]);
    expect(rows(edited({ type: 'place', ids: ['tin'], holder: 'chest', before: 'tin' }), 'chest')).toEqual([
      'tin',
      'brass',
    ]);
  });

  test('changes the order in a tray and no node', () => {
    const next = edited({ type: 'place', ids: ['brass'], holder: 'chest', before: 'tin' });
    expect(rows(next, 'chest')).toEqual(['brass', 'tin']);
    expect(next.nodes).toBe(game.nodes);
    expect(next.links).toBe(game.links);
  });

  test('takes out onto the mat, to where it was let go', () => {
    const next = edited({
      type: 'place',
      ids: ['brass'],
      holder: null,
      positions: [['brass', { x: 7, y: 9 }]],
    });
    expect(next.nodes.get('brass')).toStrictEqual({ id: 'brass', kind: 'key', name: 'Brass' });
    expect(next.positions.get('brass')).toEqual({ x: 7, y: 9 });
    expect(next.nodes.get('tin')).toBe(game.nodes.get('tin'));
  });

  test('takes out without a position when none is given', () => {
    expect(edited({ type: 'place', ids: ['brass'], holder: null }).positions.has('brass')).toBe(false);
  });

  test('moves a selection on the mat whole: places and puzzles get their position, what lies in the rest goes along', () => {
    const next = edited({
      type: 'place',
      ids: ['chest', 'sum', 'brass', 'wheels', 'gold'],
      holder: null,
      positions: [
        ['chest', { x: 500, y: 0 }],
        ['sum', { x: 600, y: 0 }],
        ['brass', { x: 700, y: 0 }],
      ],
    });
    expect(next.positions.get('chest')).toEqual({ x: 500, y: 0 });
    expect(next.positions.get('sum')).toEqual({ x: 600, y: 0 });
    expect(next.nodes.get('chest')?.in).toBeUndefined();
    for (const id of ['brass', 'wheels', 'gold', 'tin']) {
      expect(next.nodes.get(id)).toBe(game.nodes.get(id));
      expect(next.positions.get(id)).toBe(game.positions.get(id));
    }
  });

  test('refuses what cannot lie there, and then moves nothing of the selection', () => {
    expect(refusal({ type: 'place', ids: ['note', 'sum'], holder: 'chest' })).toEqual({
      reason: 'cannotHold',
      id: 'sum',
      holder: 'chest',
    });
    expect(refusal({ type: 'place', ids: ['note'], holder: 'brass' })).toMatchObject({
      reason: 'cannotHold',
    });
    expect(refusal({ type: 'place', ids: ['wheels'], holder: null })).toEqual({
      reason: 'needsContainer',
      id: 'wheels',
    });
    expect(refusal({ type: 'place', ids: ['chest'], holder: 'tin' })).toEqual({
      reason: 'insideItself',
      id: 'chest',
      holder: 'tin',
    });
    expect(refusal({ type: 'place', ids: ['tin'], holder: 'tin' })).toMatchObject({ reason: 'insideItself' });
    expect(refusal({ type: 'place', ids: ['note'], holder: 'p9' })).toEqual({ reason: 'unknown', id: 'p9' });
    expect(refusal({ type: 'place', ids: ['k9'], holder: null })).toEqual({ reason: 'unknown', id: 'k9' });
  });
});

describe('fasten', () => {
  test('hangs a lock on another box, in row order, with its links', () => {
    const next = edited({ type: 'fasten', ids: ['wheels'], on: 'tin', before: 'padlock' });
    expect(fastenersOf(next, 'tin').map(({ id }) => id)).toEqual(['wheels', 'padlock']);
    expect(next.links).toBe(game.links);
  });

  test('refuses what is no lock and what is no box', () => {
    expect(refusal({ type: 'fasten', ids: ['wheels'], on: 'shelf' })).toEqual({
      reason: 'needsContainer',
      id: 'wheels',
    });
    expect(refusal({ type: 'fasten', ids: ['brass'], on: 'tin' })).toMatchObject({ reason: 'cannotHold' });
  });
});

describe('move', () => {
  test('changes positions and nothing else', () => {
    const next = edited({ type: 'move', positions: [['sum', { x: -0, y: 3 }]] });
    expect(next.nodes).toBe(game.nodes);
    expect(next.links).toBe(game.links);
    expect(next.head).toBe(game.head);
    expect(next.positions.get('sum')).toEqual({ x: 0, y: 3 });
    expect(next.positions.get('shelf')).toBe(game.positions.get('shelf'));
  });

  test('to where a thing is gives nothing to undo', () => {
    const result = applyEdits(game, [{ type: 'move', positions: [['sum', { x: 300, y: 80 }]] }]);
    expect(result).toMatchObject({ ok: true, patches: [], inverse: [] });
    expect(result.ok && result.game).toBe(game);
  });

  test('refuses a position that is none', () => {
    expect(refusal({ type: 'move', positions: [['sum', { x: Number.NaN, y: 3 }]] })).toEqual({
      reason: 'badValue',
      id: 'sum',
      field: 'at',
    });
  });
});

describe('pin', () => {
  const pinned = edited({ type: 'pin', ids: ['shelf', 'sum'], pinned: true });

  test('changes positions and nothing else, and is let go again', () => {
    expect(pinned.positions.get('sum')).toEqual({ x: 300, y: 80, pinned: true });
    expect(pinned.nodes).toBe(game.nodes);
    expect(pinned.links).toBe(game.links);
    const loose = from(pinned, { type: 'pin', ids: ['sum'], pinned: false });
    expect(loose.positions.get('sum')).toEqual({ x: 300, y: 80 });
    expect(isPinned(loose, 'shelf')).toBe(true);
  });

  test('stays with what is moved by hand, and goes with what is put into a tray', () => {
    const moved = from(pinned, { type: 'move', positions: [['sum', { x: 5, y: 6 }]] });
    expect(moved.positions.get('sum')).toEqual({ x: 5, y: 6, pinned: true });
    const free = from(
      pinned,
      { type: 'place', ids: ['note'], holder: null, positions: [['note', { x: 9, y: 9 }]] },
      { type: 'pin', ids: ['note'], pinned: true },
    );
    expect(isPinned(free, 'note')).toBe(true);
    const back = from(free, { type: 'place', ids: ['note'], holder: 'shelf', before: 'chest' });
    expect(back.positions.get('note')).toEqual({ x: 0, y: 0 });
  });

  test('is refused in trays, on walls and without a position', () => {
    for (const id of ['note', 'wheels']) {
      expect(refusal({ type: 'pin', ids: ['sum', id], pinned: true })).toEqual({ reason: 'notOnMat', id });
    }
    expect(
      refusal({ type: 'place', ids: ['note'], holder: null }, { type: 'pin', ids: ['note'], pinned: true }),
    ).toEqual({ reason: 'notOnMat', id: 'note' });
  });

  test('means nothing in a tray, whatever a file says', () => {
    const strange = { ...game, positions: new Map([['note', { x: 0, y: 1, pinned: true }]]) };
    expect(isPinned(strange, 'note')).toBe(false);
  });
});

describe('links', () => {
  test('are drawn, filled and taken away', () => {
    const drawn = edited({ type: 'link', id: 'l4', from: 'note', to: 'wheels', at: [1, 3] });
    expect(drawn.links.get('l4')).toStrictEqual({ id: 'l4', from: 'note', to: 'wheels', at: [1, 3] });
    const whole = from(drawn, { type: 'setLink', id: 'l4', at: undefined });
    expect(whole.links.get('l4')).toStrictEqual({ id: 'l4', from: 'note', to: 'wheels' });
    expect(from(whole, { type: 'unlink', ids: ['l4', 'l4'] }).links.size).toBe(3);
  });

  test('are refused with the reason of the table', () => {
    const link = (from: string, to: string): Edit => ({ type: 'link', id: 'l4', from, to });
    const why = (reason: string) => ({ reason: 'link', refusal: reason });
    expect(refusal(link('note', 'sum'))).toMatchObject(why('twice'));
    expect(refusal(link('sum', 'sum'))).toMatchObject(why('self'));
    expect(refusal(link('gold', 'sum'))).toMatchObject(why('kinds'));
    expect(refusal(link('note', 'x'))).toMatchObject(why('unknown'));
    expect(refusal({ type: 'link', id: 'l1', from: 'sum', to: 'note' })).toEqual({
      reason: 'taken',
      id: 'l1',
    });
    expect(refusal({ type: 'setLink', id: 'l1', at: [0] })).toEqual({
      reason: 'badValue',
      id: 'l1',
      field: 'at',
    });
    expect(refusal({ type: 'unlink', ids: ['l9'] })).toEqual({ reason: 'unknown', id: 'l9' });
  });
});

describe('fields', () => {
  const set = (id: string, fields: Record<string, unknown>): Edit => ({ type: 'setFields', id, fields });

  test('are set, merged into estimates, and taken away again', () => {
    const minutes = { low: 1, likely: 2, high: 3, later: true };
    const once = edited(set('sum', { minutes, text: 'Add them.' }));
    const twice = from(once, set('sum', { minutes: { low: 0, likely: 2, high: 9 }, text: undefined }));
    expect(twice.nodes.get('sum')).toStrictEqual({
      id: 'sum',
      kind: 'puzzle',
      name: 'Sum',
      answer: '472',
      minutes: { low: 0, likely: 2, high: 9, later: true },
    });
  });

  test.each([
    ['id', 'x'],
    ['kind', 'place'],
    ['in', 'chest'],
    ['on', 'chest'],
    ['at', { x: 0, y: 0 }],
    ['need', 0],
    ['need', 'some'],
    ['hands', 0.5],
    ['name', undefined],
    ['name', 'Sums'],
    ['leftOut', true],
    ['minutes', { low: 3, likely: 2, high: 1 }],
    ['minutes', { low: 1 }],
    ['atMinute', -1],
    ['atMinute', 1e308],
    ['minutes', { low: 0, likely: 1, high: 1e7 }],
    ['later', Number.NaN],
    ['later', new Date(0)],
    ['later', [undefined]],
  ])('are refused: %s %j', (field, value) => {
    expect(refusal(set('sum', { [field]: value }))).toEqual({ reason: 'badValue', id: 'sum', field });
  });

  test('named __proto__ are refused', () => {
    expect(refusal(set('sum', JSON.parse('{"__proto__":1}')))).toMatchObject({ field: '__proto__' });
  });

  test('leaving out is written, using again is not', () => {
    const out = edited({ type: 'leaveOut', ids: ['sum', 'note'], leftOut: true });
    expect(out.nodes.get('sum')?.leftOut).toBe(true);
    const used = from(out, { type: 'leaveOut', ids: ['sum'], leftOut: false });
    expect(used.nodes.get('sum')).toStrictEqual(game.nodes.get('sum'));
    expect(used.nodes.get('note')).toBe(out.nodes.get('note'));
  });

  test('of the head are set, the lesson field by field, those of the file refused', () => {
    const once = edited({ type: 'setHead', fields: { lesson: { pupils: 20, teams: 5 } } });
    const twice = from(once, { type: 'setHead', fields: { lesson: { teams: undefined }, title: 'Tea' } });
    expect(twice.head).toStrictEqual({ title: 'Tea', lesson: { pupils: 20 } });
    expect(twice.nodes).toBe(game.nodes);
    expect(refusal({ type: 'setHead', fields: { nodes: [] } })).toEqual({
      reason: 'badValue',
      id: '',
      field: 'nodes',
    });
    expect(refusal({ type: 'setHead', fields: { lesson: { pupils: -1 } } })).toMatchObject({
      field: 'lesson',
    });
  });

  test('rename changes the name alone', () => {
    const next = edited({ type: 'rename', id: 'sum', name: '<b>Sum</b>' });
    expect(next.nodes.get('sum')).toStrictEqual({ ...game.nodes.get('sum'), name: '<b>Sum</b>' });
  });
});

describe('add', () => {
  test('puts a thing into a tray below what is there, or where it is let go on the mat', () => {
    const next = edited(
      add({ id: 'coin', kind: 'tool', name: 'Coin', in: 'chest' }),
      add({ id: 'sill', kind: 'place', name: 'Sill' }, { x: 5, y: 6 }),
    );
    expect(rows(next, 'chest')).toEqual(['tin', 'brass', 'coin']);
    expect(next.positions.get('sill')).toEqual({ x: 5, y: 6 });
  });

  test('refuses ids in use, holders that cannot be, rings and bad fields', () => {
    expect(refusal(add({ id: 'sum', kind: 'puzzle', name: 'x' }))).toEqual({ reason: 'taken', id: 'sum' });
    expect(refusal(add({ id: 'k', kind: 'key', name: 'x', in: 'p9' }))).toEqual({
      reason: 'unknown',
      id: 'p9',
    });
    expect(refusal(add({ id: 'k', kind: 'key', name: 'x', in: 'sum' }))).toMatchObject({
      reason: 'cannotHold',
    });
    expect(refusal(add({ id: 'f', kind: 'fastener', name: 'x', on: 'sum' }))).toEqual({
      reason: 'needsContainer',
      id: 'f',
    });
    expect(refusal(add({ id: 'f', kind: 'puzzle', name: 'x', hands: -1 }))).toMatchObject({ field: 'hands' });
    expect(refusal(add({ id: 'f', kind: 'puzzle', name: 'x', at: { x: 1, y: 1 } }))).toMatchObject({
      field: 'at',
    });
    const ring: Edit = {
      type: 'add',
      nodes: [
        { id: 'a', kind: 'container', name: 'A', in: 'b' },
        { id: 'b', kind: 'container', name: 'B', in: 'a' },
      ],
      links: [],
      positions: [],
    };
    expect(refusal(ring)).toMatchObject({ reason: 'insideItself' });
  });
});

describe('remove', () => {
  test('of a box takes its locks and their links, and drops what it held into its own holder where it stood', () => {
    const next = edited({ type: 'remove', nodes: ['chest'], links: [] });
    expect([...next.nodes.keys()].sort()).toEqual([
      'brass',
      'gold',
      'note',
      'padlock',
      'shelf',
      'sum',
      'tin',
    ]);
    expect(rows(next, 'shelf')).toEqual(['tin', 'brass', 'note']);
    expect([...next.links.keys()]).toEqual(['l1', 'l3']);
    expect(next.nodes.get('padlock')).toBe(game.nodes.get('padlock'));
  });

  test('of a place drops onto the mat, one below the other from where it stood', () => {
    const next = edited({ type: 'remove', nodes: ['shelf', 'chest'], links: [] });
    for (const id of ['tin', 'brass', 'note']) expect(next.nodes.get(id)?.in).toBeUndefined();
    const spots = ['tin', 'brass', 'note'].map((id) => next.positions.get(id));
    expect(new Set(spots.map((spot) => spot?.x))).toEqual(new Set([40]));
    expect(spots.map((spot) => spot?.y).sort()).toEqual([128, 176, 80].sort());
  });

  test('of the content too leaves nothing behind', () => {
    const all = [...game.nodes.keys()];
    const next = edited({ type: 'remove', nodes: all, links: ['l1'] });
    expect([next.nodes.size, next.links.size, next.positions.size]).toEqual([0, 0, 0]);
  });

  test('refuses what is not there', () => {
    expect(refusal({ type: 'remove', nodes: ['sum', 'x'], links: [] })).toEqual({
      reason: 'unknown',
      id: 'x',
    });
    expect(refusal({ type: 'remove', nodes: [], links: ['sum'] })).toEqual({ reason: 'unknown', id: 'sum' });
  });
});

test('a list of edits is done whole or not at all, and is undone as one', () => {
  const edits: Edit[] = [
    { type: 'rename', id: 'sum', name: 'Total' },
    { type: 'place', ids: ['brass'], holder: 'shelf' },
  ];
  const result = applyEdits(game, edits);
  expect(result.ok && applyPatchesTo(result.game, result.inverse)).toEqual(game);
  expect(refusal(...edits, { type: 'rename', id: 'x', name: '' })).toEqual({ reason: 'unknown', id: 'x' });
});

test('ids that are names of every object are ids like others', () => {
  const nodes: GameNode[] = ['__proto__', 'constructor', 'toString'].map((id) => ({
    id,
    kind: 'container',
    name: id,
  }));
  const result = applyEdits(game, [
    { type: 'add', nodes, links: [], positions: [['__proto__', { x: 1, y: 1 }]] },
    { type: 'place', ids: ['constructor'], holder: '__proto__' },
    { type: 'setFields', id: '__proto__', fields: { text: 'Old' } },
    { type: 'remove', nodes: ['toString'], links: [] },
  ]);
  if (!result.ok) throw new Error(result.refusal.reason);
  expect(result.game.nodes.get('constructor')?.in).toBe('__proto__');
  const undone = applyPatchesTo(result.game, result.inverse);
  expect(undone).toEqual(game);
  expect(applyPatchesTo(undone, result.patches)).toEqual(result.game);
});
