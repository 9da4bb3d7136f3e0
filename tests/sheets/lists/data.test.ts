/** The lists as data: what each says, before it is drawn. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { assess } from '../../../src/findings/assess.ts';
import { boxEntries } from '../../../src/sheets/lists/contents.ts';
import { spotEntries } from '../../../src/sheets/lists/hidden.ts';
import { noteOf } from '../../../src/sheets/lists/notes.ts';
import { orderList } from '../../../src/sheets/lists/order.ts';
import { whereaboutsOf } from '../../../src/sheets/lists/whereabouts.ts';
import { lockEntries } from '../../../src/sheets/locks.ts';
import { lockShut, lockTold, noteTold, rescueTold, thingText, whereText } from '../../../src/words/lists.ts';
import { plain } from '../../../src/words/sentence.ts';
import { gameOf } from '../../game-of.ts';
import { gameOf as exampleOf } from '../../games/example.ts';
import { gameArbitrary } from '../../random-game.ts';

const hall = assess(exampleOf('mineral-hall'));

/** A tin in a chest; the key of the chest hangs on a lock of the tin; a badge is handed over at the end. */
const small = assess(
  gameOf(
    [
      { id: 'shelf', kind: 'place', note: 'Under the third book.' },
      { id: 'note', kind: 'clue', in: 'shelf' },
      { id: 'sums', kind: 'puzzle', answer: '472', note: 'Together 472.' },
      { id: 'tin', kind: 'container', in: 'shelf', note: 'Its code, 4 7 2, is set with a pin.' },
      { id: 'wheels', kind: 'fastener', on: 'tin', type: 'number', code: '427' },
      { id: 'tag', kind: 'key', in: 'tin' },
      { id: 'chest', kind: 'container' },
      { id: 'padlock', kind: 'fastener', on: 'chest', type: 'key' },
      { id: 'arrows', kind: 'fastener', on: 'chest', type: 'direction', code: '↑ ↓' },
      { id: 'hook', kind: 'fastener', on: 'chest', type: 'latch' },
      { id: 'last', kind: 'puzzle' },
      { id: 'badge', kind: 'prize' },
      { id: 'spare', kind: 'container', leftOut: true },
      { id: 'sparelock', kind: 'fastener', on: 'spare', type: 'number', code: '999' },
    ],
    ['note>sums', 'sums>wheels', 'sums>arrows', 'tag>padlock', 'chest>last', 'last>badge'],
  ),
);

describe('the codes of all locks', () => {
  it('are in the order of play, without what is left out', () => {
    const entries = lockEntries(small);
    expect(entries.map(({ lock, number }) => [lock, number])).toEqual([
      ['hook', 1],
      ['wheels', 4],
      ['padlock', 5],
      ['arrows', 6],
    ]);
    for (const entry of lockEntries(hall)) {
      expect(entry.number).toBe(hall.measures.number[hall.network.index.get(entry.lock) ?? -1]);
    }
  });

  it('say how each is set, and what opens it', () => {
    const settings = new Map(lockEntries(small).map(({ lock, setting }) => [lock, setting]));
    expect(settings.get('wheels')).toEqual({ set: 'code', words: [['4', '2', '7']], directions: false });
    expect(settings.get('arrows')).toEqual({ set: 'code', words: [['U', 'D']], directions: true });
    expect(settings.get('padlock')).toEqual({ set: 'key', keys: ['tag'] });
    expect(settings.get('hook')).toEqual({ set: 'nothing' });
    const scraps = lockEntries(hall).find(({ lock }) => lock === 'casenumber');
    expect(scraps?.openers).toEqual([
      { node: 'scrap1', at: [1] },
      { node: 'scrap2', at: [2, 3] },
      { node: 'scrap3', at: [4] },
    ]);
  });

  it('tell a code that disagrees with its answer, and one that is missing', () => {
    const wheels = lockEntries(small).find(({ lock }) => lock === 'wheels');
    expect(wheels?.findings.map(({ code }) => code)).toEqual(['codeDisagrees']);
    const bare = assess(
      gameOf([
        { id: 'tin', kind: 'container' },
        { id: 'wheels', kind: 'fastener', on: 'tin', type: 'number' },
      ]),
    );
    expect(lockEntries(bare)).toMatchObject([
      { lock: 'wheels', opens: false, setting: { set: 'missing' }, findings: [{ code: 'nothingOpens' }] },
    ]);
  });
});

describe('the name of a lock', () => {
  const own = assess(
    gameOf(
      [
        { id: 'tin', kind: 'container', name: 'Biscuit tin' },
        { id: 'plain', kind: 'fastener', on: 'tin', type: 'number', name: 'New lock' },
        { id: 'ofBox', kind: 'fastener', on: 'tin', type: 'word', name: 'Biscuit tin word lock' },
        { id: 'ofKey', kind: 'fastener', on: 'tin', type: 'key', name: 'Red key lock' },
        { id: 'own', kind: 'fastener', on: 'tin', type: 'direction', name: 'Small red padlock' },
        { id: 'letter', kind: 'fastener', on: 'tin', type: 'dial', name: 'Dial lock B' },
        { id: 'none', kind: 'fastener', on: 'tin', type: 'latch', name: ' ' },
        { id: 'red', kind: 'key', name: 'Red key' },
      ],
      ['red>ofKey'],
    ),
  );

  it('is told where it says more than type, box and key', () => {
    const told = ['plain', 'ofBox', 'ofKey', 'own', 'letter', 'none'].map((id) => plain(lockTold(own, id)));
    expect(told).toEqual([
      'number lock',
      'word lock',
      'key lock',
      'Small red padlock, direction lock',
      'Dial lock B, dial lock',
      'latch',
    ]);
  });

  it('stands where a lock is shut, and the key after it', () => {
    expect(plain(lockShut(own, 'own', []))).toBe('shut Small red padlock (direction lock)');
    expect(plain(lockShut(own, 'ofKey', [{ key: 'red', where: ['in hand from the start'] }]))).toBe(
      'shut the key lock; it opens with Red key (in hand from the start)',
    );
  });
});

describe('what lies in what', () => {
  const games = gameArbitrary({ size: 30 }).map((game) => assess(game));

  it('packs every box before the one that it lies in, and has each box and its contents once', () => {
    fc.assert(
      fc.property(games, (assessment) => {
        const { network, context } = assessment;
        const entries = boxEntries(assessment);
        const placeOf = new Map(entries.map(({ box }, place) => [box, place]));
        expect(placeOf.size).toBe(
          network.ids.filter((_, node) => context.kindOf(node) === 'container').length,
        );
        const listed = entries.flatMap(({ things, boxes, locks }) => [...things, ...boxes, ...locks]);
        expect(new Set(listed).size).toBe(listed.length);
        for (const [place, { boxes }] of entries.entries()) {
          for (const box of boxes) expect(placeOf.get(box)).toBeLessThan(place);
        }
      }),
      { seed: 9, numRuns: 150 },
    );
  });

  it('shuts a lock before its only key is packed, wherever the game can be played that way', () => {
    fc.assert(
      fc.property(games, (assessment) => {
        const { network, measures, context } = assessment;
        const placeOf = new Map(boxEntries(assessment).map(({ box }, place) => [box, place]));
        for (const [node, id] of network.ids.entries()) {
          if (context.kindOf(node) !== 'key' || measures.reached[node] !== 1) continue;
          const holder = placeOf.get(whereaboutsOf(assessment, id).holders[0] ?? '');
          for (const { to } of context.linksFrom(id)) {
            const lock = network.index.get(to) ?? -1;
            const isOnly = network.k[lock] === context.linksTo(to).length;
            const takes = (measures.finish[lock] ?? 0) > (measures.start[lock] ?? 0);
            if (measures.reached[lock] !== 1 || !isOnly || !takes || holder === undefined) continue;
            const box = placeOf.get(whereaboutsOf(assessment, to).holders[0] ?? '');
            if (box !== undefined) expect(box).toBeLessThan(holder);
          }
        }
      }),
      { seed: 10, numRuns: 150 },
    );
  });

  it('tells a key that lies in the box that it opens', () => {
    const shut = assess(
      gameOf(
        [
          { id: 'tin', kind: 'container' },
          { id: 'padlock', kind: 'fastener', on: 'tin', type: 'key' },
          { id: 'tag', kind: 'key', in: 'tin' },
          { id: 'badge', kind: 'prize', in: 'tin' },
        ],
        ['tag>padlock'],
      ),
    );
    expect(boxEntries(shut)).toMatchObject([{ box: 'tin', shutIn: [{ code: 'ring' }] }]);
    for (const { shutIn } of boxEntries(hall)) expect(shutIn).toEqual([]);
  });
});

describe('what is hidden where', () => {
  it('has places by first search, then the tables, hands, and what the teacher keeps', () => {
    expect(spotEntries(small)).toEqual([
      { spot: { place: 'shelf' }, openers: [], need: undefined, things: ['note', 'tin'] },
      { spot: { caption: 'tables' }, openers: [], need: undefined, things: ['chest'] },
      { spot: { caption: 'given' }, openers: [], need: undefined, things: ['badge'] },
    ]);
    const globe = spotEntries(hall).find(({ spot }) => 'place' in spot && spot.place === 'globe');
    expect(globe?.openers).toEqual(['findbox']);
  });

  it('tells what is given out at a minute with what the teacher keeps, and when', () => {
    const timed = assess(
      gameOf(
        [
          { id: 'sums', kind: 'puzzle' },
          { id: 'lens', kind: 'tool', atMinute: 12 },
          { id: 'tin', kind: 'container', atMinute: 9 },
          { id: 'note', kind: 'clue', in: 'tin' },
          { id: 'badge', kind: 'prize', atMinute: 30 },
        ],
        ['lens>sums', 'note>sums', 'sums>badge'],
      ),
    );
    expect(spotEntries(timed)).toMatchObject([
      { spot: { caption: 'given' }, things: ['lens', 'badge', 'tin'] },
    ]);
    const where = (id: string) => plain(whereText(timed, whereaboutsOf(timed, id)));
    expect(['lens', 'note', 'badge'].map(where)).toEqual([
      'given out at minute 12',
      'in tin, given out at minute 9',
      'given after sums, from minute 30',
    ]);
    expect(['lens', 'badge'].map((id) => thingText(timed, id))).toEqual([
      'tool, given out at minute 12',
      'prize, from minute 30',
    ]);
  });

  it('together with the boxes has every thing once', () => {
    fc.assert(
      fc.property(gameArbitrary({ size: 30 }), (game) => {
        const assessment = assess(game);
        const { network, context } = assessment;
        const listed = [
          ...spotEntries(assessment).flatMap(({ things }) => things),
          ...boxEntries(assessment).flatMap(({ things, boxes, locks }) => [...things, ...boxes, ...locks]),
        ];
        const all = network.ids.filter((_, node) => !['place', 'puzzle'].includes(context.kindOf(node)));
        expect([...listed].sort()).toEqual([...all].sort());
      }),
      { seed: 11, numRuns: 150 },
    );
  });
});

describe('the order of play on paper', () => {
  it('has a line, a rescue and a note for each step', () => {
    const { steps, unreached } = orderList(small, { codes: true, rescue: true });
    const [search, sums] = ['shelf', 'sums'].map((id) => steps.find(({ line }) => line.node === id));
    expect(search?.note).toBe('Under the third book.');
    expect(plain(sums?.rescue ?? [])).toBe('Tell the team what sums gives: 472.');
    expect(unreached).toEqual([]);
    expect(orderList(small, { codes: true, rescue: false }).steps[0]?.rescue).toEqual([]);
  });

  it('has the note first, as it is, and then what is left to do', () => {
    const [hint, plan] = ['if stuck: shine at the margin.', 'Taped to its back.'];
    const told = (note: string) => plain(noteTold(note));
    expect([told(hint), told(plan)]).toEqual([hint, `Note: ${plan}`]);
    const rescue = (note?: string) => plain(rescueTold(note, ['Say it.']));
    expect(rescue()).toBe('If stuck: Say it.');
    expect(rescue(plan)).toBe('If stuck: Say it.');
    expect(rescue(hint)).toBe('Still stuck: Say it.');
  });

  it('lists what is never reached, and why', () => {
    const stuck = assess(
      gameOf([
        { id: 'tin', kind: 'container' },
        { id: 'wheels', kind: 'fastener', on: 'tin', type: 'number', code: '1' },
        { id: 'badge', kind: 'prize', in: 'tin' },
      ]),
    );
    const { unreached, blocks } = orderList(stuck, { codes: true, rescue: true });
    expect([...unreached].sort()).toEqual(['badge', 'tin']);
    expect(blocks.map(({ code }) => code)).toEqual(['nothingOpens']);
  });
});

describe('notes on a page without codes', () => {
  it('leave out what explains a puzzle, and what says a code', () => {
    expect(noteOf(small, true)('tin')).toBe('Its code, 4 7 2, is set with a pin.');
    const notes = noteOf(small, false);
    expect(notes('sums')).toBeUndefined();
    expect(notes('tin')).toBeUndefined();
    expect(notes('shelf')).toBe('Under the third book.');
  });
});
