import { describe, expect, it } from 'vitest';
import { setCount } from '../../src/kit/edits.ts';
import { fitKit } from '../../src/kit/fit/index.ts';
import { nearestLock } from '../../src/kit/fit/nearest.ts';
import { sameWords } from '../../src/kit/fit/suits.ts';
import type { Kit, KitItem } from '../../src/kit/model.ts';
import { nearestText } from '../../src/words/kit-remedies.ts';
import { gameOf } from '../game-of.ts';
import { boxesGame, DIGITS, kitOf, lockItem, randomCase } from './cupboards.ts';

const three = Array<string>(3).fill(DIGITS);
const box = (id: string, count: number, fields: object = {}): KitItem => ({
  id,
  label: '',
  count,
  what: 'box',
  ...fields,
});
const hasp = (id: string, count: number, holes: number): KitItem => ({
  id,
  label: '',
  count,
  what: 'hasp',
  holes,
});

describe('which lock goes where', () => {
  it('a lock only where its type and wheels carry the code', () => {
    const game = boxesGame(
      [
        { type: 'number', code: '4721' },
        { type: 'word', code: 'QUIZ' },
      ],
      1,
    );
    const kit = kitOf(
      lockItem('n3', 'number', 2, { wheels: three }),
      lockItem('n4', 'number', 1, { wheels: Array<string>(4).fill(DIGITS) }),
      lockItem('w', 'word', 1, { wheels: ['ABCDE', 'UVWX', 'IJK', 'XYZ'] }),
    );
    const { assigned, short, missing } = fitKit(game, kit);
    expect(assigned.get('f0')).toEqual(['n4']);
    expect(assigned.get('f1')).toEqual([null]);
    expect([...short]).toEqual([['f1', 1]]);
    expect(missing).toBe(1);
  });

  it('every team has its own, but of what is shared there are as many as that says', () => {
    const game = boxesGame([{ type: 'direction', code: 'UDLR' }, { type: 'key' }], 6);
    const shared = new Map(game.nodes);
    const b1 = game.nodes.get('b1');
    if (b1?.kind === 'container') shared.set('b1', { ...b1, shared: 2 });
    const { assigned } = fitKit(
      { ...game, nodes: shared },
      kitOf(lockItem('d', 'direction', 9), lockItem('k', 'key', 9)),
    );
    expect(assigned.get('f0')?.length).toBe(6);
    expect(assigned.get('f1')?.length).toBe(2);
  });

  it('what hangs inside a shared box is shared with it', () => {
    const game = gameOf([
      { id: 'cupboard', kind: 'place', shared: 1 },
      { id: 'tin', kind: 'container', in: 'cupboard' },
      { id: 'lock', kind: 'fastener', on: 'tin', type: 'direction' },
    ]);
    expect(fitKit(game, kitOf(), { teams: 5 }).assigned.get('lock')).toEqual([null]);
  });

  it('the lock that can do less is taken where it will do', () => {
    const game = boxesGame([{ type: 'word', code: 'CAB' }], 1);
    const kit = kitOf(
      lockItem('rich', 'word', 1, { wheels: ['ABCDEFGH', 'ABCDEFGH', 'ABCDEFGH'] }),
      lockItem('plain', 'word', 1, { wheels: ['BC', 'AO', 'BT'] }),
    );
    expect(fitKit(game, kit).assigned.get('f0')).toEqual(['plain']);
  });

  it('all copies of a fastener are of one item where that can be had', () => {
    const game = boxesGame(
      [
        { type: 'number', code: '382' },
        { type: 'number', code: '914' },
      ],
      3,
    );
    const kit = kitOf(
      lockItem('red', 'number', 3, { wheels: three }),
      lockItem('blue', 'number', 3, { wheels: three }),
    );
    const { assigned } = fitKit(game, kit);
    expect(new Set(assigned.get('f0')).size).toBe(1);
    expect(new Set(assigned.get('f1')).size).toBe(1);
    expect(assigned.get('f0')).not.toEqual(assigned.get('f1'));
  });

  it('shackle, hole and clearance count where they are stated', () => {
    const game = boxesGame([{ type: 'key' }], 1);
    const thick = lockItem('thick', 'key', 1, { shackleMm: 8, clearanceMm: 20 });
    const why = (tin: KitItem) => fitKit(game, kitOf(thick, tin)).short.has('f0');
    expect(why(box('tin', 1))).toBe(false);
    expect(why(box('tin', 1, { holeMm: 8 }))).toBe(false);
    expect(why(box('tin', 1, { holeMm: 7.5 }))).toBe(true);
    expect(why(box('tin', 1, { roundMm: 25 }))).toBe(true);
  });

  it('a box with several locks needs a hasp with holes enough, and a box that takes one', () => {
    const game = gameOf([
      { id: 'chest', kind: 'container' },
      { id: 'f1', kind: 'fastener', on: 'chest', type: 'number' },
      { id: 'f2', kind: 'fastener', on: 'chest', type: 'direction' },
      { id: 'f3', kind: 'fastener', on: 'chest', type: 'latch' },
    ]);
    const locks = [lockItem('n', 'number', 2), lockItem('d', 'direction', 2)];
    const given = fitKit(
      game,
      kitOf(...locks, hasp('one', 5, 1), hasp('six', 1, 6), box('tin', 2, { takes: 'lock' })),
      {
        teams: 2,
      },
    );
    expect(given.hasps.assigned.get('chest')).toEqual(['six', null]);
    expect(given.boxes.short.get('chest')).toBe(2);
    expect(given.assigned.has('f3')).toBe(false);
    expect(given.missing).toBe(3);
  });

  it('what the kit is silent about is not called short; what there are none of is', () => {
    const game = boxesGame([{ type: 'key' }], 2);
    const locks = lockItem('k', 'key', 2);
    expect(fitKit(game, kitOf(locks))).toMatchObject({ missing: 0, boxes: { isCounted: false } });
    expect(fitKit(game, kitOf(locks, box('tin', 0))).missing).toBe(2);
  });

  it('all that a team types, it types on one device', () => {
    const game = boxesGame(
      [
        { type: 'typed', code: 'A1' },
        { type: 'typed', code: 'B2' },
      ],
      3,
    );
    const two = fitKit(game, kitOf(lockItem('tablet', 'typed', 2)));
    expect(two.assigned.get('f1')).toEqual(['tablet', 'tablet', null]);
    expect(two.missing).toBe(1);
    expect(fitKit(game, kitOf(lockItem('tablet', 'typed', 3))).missing).toBe(0);
  });

  it('keys alike are kept from where one opens the other’s lock too soon, and told where that cannot be', () => {
    const game = boxesGame([{ type: 'key' }, { type: 'key' }], 2);
    const red = lockItem('red', 'key', 4, { keyedAlike: 'red' });
    const alone = fitKit(game, kitOf(red));
    expect(alone.likeKeys).toEqual([{ group: 'red', key: 'f0', lock: 'f1', isTooSoon: true }]);
    const apart = fitKit(game, kitOf(red, lockItem('any', 'key', 2)));
    expect(apart.likeKeys).toEqual([]);
    expect(apart.missing).toBe(0);
  });

  it('keys alike that do no harm are told too, unless one key of the game opens both', () => {
    const lidded = gameOf(
      [
        { id: 'a', kind: 'container' },
        { id: 'b', kind: 'container' },
        { id: 'fa', kind: 'fastener', on: 'a', type: 'key' },
        { id: 'fb', kind: 'fastener', on: 'b', type: 'key' },
        { id: 'ka', kind: 'key' },
        { id: 'kb', kind: 'key' },
        { id: 'prize', kind: 'prize', in: 'b' },
      ],
      ['ka>fa', 'kb>fb'],
    );
    const red = kitOf(lockItem('red', 'key', 8, { keyedAlike: 'red' }));
    expect(fitKit(lidded, red).likeKeys).toEqual([{ group: 'red', key: 'fa', lock: 'fb', isTooSoon: false }]);
    const links = new Map([...lidded.links].map(([id, link]) => [id, { ...link, from: 'ka' }]));
    expect(fitKit({ ...lidded, links }, red).likeKeys).toEqual([]);
  });

  it('a box that bears the name of a box of the game goes there', () => {
    const game = gameOf([
      { id: 'a', kind: 'container', name: 'Safe' },
      { id: 'b', kind: 'container', name: 'Shoe box' },
    ]);
    const box = (id: string, label: string): KitItem => ({ id, label, count: 4, what: 'box' });
    const { boxes } = fitKit(game, kitOf(box('shoe', 'shoe box'), box('other', '')));
    expect(boxes.assigned.get('a')).toEqual(['other', 'other', 'other', 'other']);
    expect(boxes.assigned.get('b')).toEqual(['shoe', 'shoe', 'shoe', 'shoe']);
  });

  it('a tool is known by its name, or by what the teacher chooses', () => {
    const game = gameOf([{ id: 'lens', kind: 'tool', name: 'Hand lens' }]);
    const kit = kitOf({ id: 'm', label: 'magnifier', count: 1, what: 'tool' });
    expect(fitKit(game, kit, { teams: 1 }).missing).toBe(1);
    const chosen = fitKit(game, kit, { teams: 1, pins: new Map([['lens', ['m']]]) });
    expect(chosen.tools.assigned.get('lens')).toEqual(['m']);
    expect(chosen.missing).toBe(0);
  });
});

describe('what is near', () => {
  const game = boxesGame([{ type: 'word', code: 'QUIZ' }], 1);

  it('of locks that cannot carry the code, the nearest says which wheel lacks which letter', () => {
    const far = lockItem('far', 'word', 1, { wheels: ['ABC', 'ABC', 'ABC', 'ABC'] });
    const brass = lockItem('brass', 'word', 1, { label: 'brass', wheels: ['ABC', 'TUV', 'HIJ', 'XYZ'] });
    const nearest = nearestLock(game, kitOf(far, brass), 'f0');
    expect(nearest && nearestText(nearest)).toBe('Brass: wheel 1 has no Q (it shows A to C).');
    expect(nearestLock(game, kitOf(far, lockItem('any', 'word', 1)), 'f0')).toBeUndefined();
    expect(nearestLock(game, kitOf({ ...brass, count: 0 }), 'f0')).toBeUndefined();
  });

  it('names are the same for all ways of writing them', () => {
    for (const [a, b] of [
      ['Café tray', 'the cafe  tray'],
      ['UV lamp', 'UV lamps'],
      ['Hand-lens', 'hand lens'],
    ] as const) {
      expect(sameWords(a, b)).toBe(true);
    }
    expect(sameWords('Glas', 'Glass')).toBe(false);
    expect(sameWords('★', '♥')).toBe(false);
  });

  it('what is only usual of a type keeps no lock away: nothing is said of the marks of this dial', () => {
    const dials = boxesGame([{ type: 'dial', code: '50 10 20' }], 1);
    expect(fitKit(dials, kitOf(lockItem('d', 'dial', 1))).missing).toBe(0);
    expect(fitKit(dials, kitOf(lockItem('d', 'dial', 1, { marks: 40 }))).missing).toBe(1);
  });
});

describe('pins and small changes', () => {
  const game = boxesGame(
    [
      { type: 'number', code: '382' },
      { type: 'number', code: '914' },
    ],
    2,
  );
  const kit = kitOf(
    lockItem('red', 'number', 2, { wheels: three }),
    lockItem('blue', 'number', 2, { wheels: three }),
    lockItem('word', 'word', 1),
  );

  it('a pin is kept', () => {
    const { assigned, loosePins } = fitKit(game, kit, { pins: new Map([['f0', ['blue', undefined]]]) });
    expect(assigned.get('f0')?.[0]).toBe('blue');
    expect(loosePins).toEqual([]);
  });

  it('a pin that cannot be kept is told, with the reason', () => {
    const pins = new Map([
      ['f0', ['gone', 'word']],
      ['f1', ['red', 'red']],
    ]);
    const poorer = setCount(kit, 'red', 1);
    expect(fitKit(game, poorer, { pins }).loosePins).toEqual([
      { node: 'f0', item: 'gone', why: 'gone' },
      { node: 'f0', item: 'word', why: 'type' },
      { node: 'f1', item: 'red', why: 'taken' },
    ]);
  });

  it('what was assigned stays when the kit grows or another lock changes', () => {
    const pins = new Map([['f0', ['blue', 'blue']]]);
    const before = fitKit(game, kit, { pins });
    const grown: Kit = { ...kit, items: [lockItem('new', 'number', 9, { wheels: three }), ...kit.items] };
    const after = fitKit(game, grown, { previous: before });
    expect([...after.assigned]).toEqual([...before.assigned]);
  });
});

describe('any game and kit', () => {
  it('no thing serves twice, what serves suits, and the same is found again', () => {
    for (let seed = 0; seed < 200; seed++) {
      const { game, kit } = randomCase(seed);
      const fitting = fitKit(game, kit);
      const used = new Map<string, number>();
      for (const [node, items] of fitting.assigned) {
        for (const id of items) {
          if (id === null) continue;
          used.set(id, (used.get(id) ?? 0) + 1);
          const item = kit.items.find((one) => one.id === id);
          const lock = game.nodes.get(node);
          expect(item?.what === 'lock' && lock?.kind === 'fastener' && item.type === lock.type).toBe(true);
        }
      }
      for (const { id, count } of kit.items) expect(used.get(id) ?? 0).toBeLessThanOrEqual(count);
      expect(fitKit(game, kit)).toEqual(fitting);
    }
  });

  it('a thousand teams are as many as a class could have', () => {
    const game = boxesGame([{ type: 'key' }], 1_000_000);
    expect(fitKit(game, kitOf()).missing).toBe(50);
  });
});
