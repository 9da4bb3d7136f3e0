import { describe, expect, it } from 'vitest';
import { assess } from '../../src/findings/assess.ts';
import { applyEdits } from '../../src/game/edits/index.ts';
import type { Game } from '../../src/game/model.ts';
import { fitKit } from '../../src/kit/fit/index.ts';
import type { Kit } from '../../src/kit/model.ts';
import { type Remedy, type RemedyCode, remediesFor, shortagesOf } from '../../src/kit/remedies/index.ts';
import { translate } from '../../src/kit/remedies/translation.ts';
import { remedyLabel, remedySentence, shortageSentence } from '../../src/words/kit-remedies.ts';
import { plain } from '../../src/words/sentence.ts';
import { gameOf } from '../game-of.ts';
import { boxesGame, DIGITS, kitOf, LETTERS, lockItem } from './cupboards.ts';

function remedies(game: Game, kit: Kit, place = 0): Remedy[] {
  let made = 0;
  const fitting = fitKit(game, kit);
  const shortage = shortagesOf(fitting)[place];
  if (!shortage) throw new Error('nothing is short');
  const fresh = { newId: () => `new${++made}`, nameOf: (kind: string) => kind };
  return remediesFor(assess(game), kit, fitting, shortage, fresh);
}

function taking(game: Game, remedy: Remedy | undefined): Game {
  const applied = applyEdits(game, remedy?.edits ?? []);
  if (!remedy || !applied.ok) throw new Error('no such remedy');
  return applied.game;
}

function of<C extends RemedyCode>(list: readonly Remedy[], code: C) {
  return list.find((remedy): remedy is Extract<Remedy, { code: C }> => remedy.code === code);
}

describe('another lock', () => {
  it('carries the same code where it can: nothing else changes', () => {
    const game = boxesGame([{ type: 'number', code: '472' }], 2);
    const [first] = remedies(game, kitOf(lockItem('tablet', 'typed', 2)));
    expect(first?.code).toBe('otherLock');
    const changed = taking(game, first);
    expect(changed.nodes.size).toBe(game.nodes.size);
    expect(changed.nodes.get('f0')).toMatchObject({ type: 'typed', code: '472' });
  });

  it('with parts from several sources: they go to a puzzle that gives the whole new code', () => {
    const game: Game = {
      ...gameOf(
        [
          { id: 'tin', kind: 'container' },
          { id: 'lock', kind: 'fastener', on: 'tin', type: 'number', code: '472' },
          { id: 'prize', kind: 'prize', in: 'tin' },
          { id: 'a', kind: 'clue', answer: '4' },
          { id: 'b', kind: 'clue', answer: '72' },
          { id: 'lamp', kind: 'tool' },
        ],
        ['a>lock@1', 'b>lock@2,3', 'lamp>lock'],
      ),
      head: { lesson: { teams: 3 } },
    };
    const kit = kitOf(lockItem('w', 'word', 3, { wheels: ['CAB', 'DOG', 'FEN'] }));
    const remedy = of(remedies(game, kit), 'otherCode');
    const changed = taking(game, remedy);
    const into = (id: string) =>
      [...changed.links.values()].filter(({ to }) => to === id).map(({ from }) => from);
    const { legend = '', puzzle = '', code = '' } = remedy?.values ?? {};
    expect(into('lock').sort()).toEqual(['lamp', puzzle].sort());
    expect(into(puzzle).sort()).toEqual(['a', 'b', legend].sort());
    expect(changed.nodes.get(puzzle)).toMatchObject({ answer: code });
    expect(changed.nodes.get('lock')).toMatchObject({
      type: 'word',
      code,
      hardware: { wheels: ['CAB', 'DOG', 'FEN'] },
    });
    expect(changed.nodes.get('a')).toEqual(game.nodes.get('a'));
    const codes = assess(changed).context.codes();
    expect(codes.map(({ state }) => state)).toEqual(['right']);
    expect(fitKit(changed, kit).missing).toBe(0);
  });

  it('with any one of several sources: each is enough as before, and the legend is needed', () => {
    const game = gameOf(
      [
        { id: 'tin', kind: 'container' },
        { id: 'lock', kind: 'fastener', on: 'tin', type: 'number', code: '472', need: 1 },
        { id: 'prize', kind: 'prize', in: 'tin' },
        { id: 'a', kind: 'puzzle', answer: '472' },
        { id: 'b', kind: 'puzzle', answer: '472' },
      ],
      ['a>lock', 'b>lock'],
    );
    const kit = kitOf(lockItem('d', 'direction', 4));
    const remedy = of(remedies(game, kit), 'otherCode');
    const changed = taking(game, remedy);
    expect(changed.nodes.get(remedy?.values.puzzle ?? '')).toMatchObject({ need: 1 });
    expect(changed.nodes.get('lock')).not.toHaveProperty('need');
    expect(
      assess(changed)
        .context.codes()
        .map(({ state }) => state),
    ).toEqual(['right']);
  });

  it('in place of a key: a tag with a code lies where the key lay', () => {
    const game = boxesGame([{ type: 'direction', code: 'UDLR' }, { type: 'key' }], 2);
    const kit = kitOf(
      lockItem('d', 'direction', 2),
      lockItem('n', 'number', 2, { wheels: Array<string>(3).fill(DIGITS) }),
    );
    const remedy = of(remedies(game, kit), 'codeForKey');
    const changed = taking(game, remedy);
    expect(changed.nodes.get('k1')).toMatchObject({ leftOut: true });
    expect(changed.nodes.get(remedy?.values.tag ?? '')).toMatchObject({
      kind: 'clue',
      in: 'b0',
      answer: remedy?.values.code,
    });
    expect(fitKit(changed, kit).missing).toBe(0);
  });

  it('is not offered where there are too few of it', () => {
    const game = boxesGame([{ type: 'number', code: '472' }], 3);
    expect(remedies(game, kitOf(lockItem('d', 'direction', 2))).map(({ code }) => code)).not.toContain(
      'otherCode',
    );
  });
});

describe('the other ways', () => {
  it('sharing says what it costs', () => {
    const game = boxesGame([{ type: 'number', code: '472' }], 4);
    const remedy = of(remedies(game, kitOf(lockItem('n', 'number', 1))), 'share');
    expect(remedy?.values).toMatchObject({ thing: 'b0', shared: 1, teams: 4 });
    expect(remedy?.values.minutes).toBeGreaterThan(0);
    expect(taking(game, remedy).nodes.get('b0')).toMatchObject({ shared: 1 });
  });

  it('sharing comes before another code only where it costs little, and before the teacher at any rate', () => {
    const placesIn = (teams: number, work: number) => {
      const game = boxesGame([{ type: 'number', code: '472' }], teams);
      const lock = game.nodes.get('f0');
      const nodes = new Map(game.nodes);
      if (lock) nodes.set('f0', { ...lock, minutes: { low: work, likely: work, high: work } });
      const kit = kitOf(lockItem('n', 'number', 1), lockItem('d', 'direction', teams));
      const list = remedies({ ...game, nodes }, kit);
      const place = (code: RemedyCode) => list.findIndex((one) => one.code === code);
      return {
        minutes: of(list, 'share')?.values.minutes ?? 0,
        share: place('share'),
        code: place('otherCode'),
        teacher: place('standIn'),
      };
    };
    const cheap = placesIn(2, 0.5);
    expect(cheap.minutes).toBeLessThan(2);
    expect(cheap.share).toBeLessThan(cheap.code);
    const dear = placesIn(6, 8);
    expect(dear.minutes).toBeGreaterThan(2);
    expect(dear.code).toBeGreaterThanOrEqual(0);
    expect(dear.share).toBeGreaterThan(dear.code);
    expect(dear.share).toBeLessThan(dear.teacher);
  });

  it('a stand-in needs no lock and no box, and what leads to it is needed as before', () => {
    const game = boxesGame([{ type: 'number', code: '472' }], 4);
    const kit = kitOf({ id: 'b', label: '', count: 0, what: 'box' });
    const changed = taking(game, of(remedies(game, kit), 'standIn'));
    expect(changed.nodes.get('f0')).toMatchObject({ type: 'latch', checked: true, code: '472' });
    expect(fitKit(changed, kit).missing).toBe(0);
    const { context, network } = assess(changed);
    expect(context.without(network.index.get('k0') ?? -1)[network.index.get('prize') ?? -1]).toBe(0);
  });

  it('a tool of which there is none: the teacher lends it', () => {
    const game = gameOf(
      [
        { id: 'lens', kind: 'tool', name: 'Hand lens' },
        { id: 'clue', kind: 'clue', name: 'Small print' },
        { id: 'prize', kind: 'prize' },
      ],
      ['lens>clue', 'clue>prize'],
    );
    const kit = kitOf({ id: 'm', label: 'mirror', count: 1, what: 'tool' });
    const remedy = of(remedies(game, kit), 'lend');
    expect(remedy && remedyLabel(game, kit.items, remedy)).toBe('Let the teacher lend Hand lens');
    const changed = taking(game, remedy);
    expect(changed.nodes.get('lens')).toMatchObject({ checked: true });
    expect(fitKit(changed, kit).missing).toBe(0);
  });

  it('a game that cannot be won yet has remedies too', () => {
    const game = gameOf([
      { id: 'tin', kind: 'container' },
      { id: 'lock', kind: 'fastener', on: 'tin', type: 'number', code: '472' },
    ]);
    expect(remedies(game, kitOf(lockItem('tablet', 'typed', 4))).map(({ code }) => code)).toContain(
      'otherLock',
    );
  });

  it('each has words', () => {
    const game = boxesGame([{ type: 'number', code: '472' }, { type: 'key' }], 2);
    const kit = kitOf(lockItem('n', 'number', 1), lockItem('d', 'direction', 2, { label: 'red' }));
    const fitting = fitKit(game, kit);
    for (const [place, shortage] of shortagesOf(fitting).entries()) {
      expect(plain(shortageSentence(game, shortage))).toMatch(/\.$/);
      for (const remedy of remedies(game, kit, place)) {
        expect(remedyLabel(game, kit.items, remedy)).not.toMatch(/undefined|\d{2}new/);
        expect(plain(remedySentence(game, remedy))).toMatch(/\.$/);
      }
    }
  });
});

describe('a code turned into another', () => {
  const number = { type: 'number', hardware: undefined };
  const on = (wheels: readonly string[]) => ({ type: 'word', hardware: { wheels: [...wheels] } });

  it('by the legend, sign by sign, gives what the lock can show', () => {
    for (const code of ['472', '4724', '47', '8', '123456']) {
      const found = translate([...code], number, on([LETTERS, 'AEIOU', LETTERS, 'XYZW']), new Set(), code);
      const table = new Map(found?.signs);
      const out = [...code].flatMap((sign) => table.get(sign) ?? []);
      expect(found?.code).toHaveLength(4);
      expect(out.slice(0, 4)).toEqual(found?.code);
      expect('AEIOU').toContain(found?.code[1]);
      // All digits are in the legend, so that it does not give the code away.
      expect(found?.signs.map(([sign]) => sign)).toEqual([...DIGITS]);
    }
  });

  it('is none where a sign would have to be two things at once', () => {
    expect(translate(['4', '4'], number, on(['AB', 'CD']), new Set(), 'x')).toBeUndefined();
  });

  it('keeps away from codes that are taken, and is the same each time', () => {
    const first = translate([...'472'], number, on(['AB', 'CD', 'EF']), new Set(), 'x');
    const again = translate([...'472'], number, on(['AB', 'CD', 'EF']), new Set(), 'x');
    expect(again).toEqual(first);
    const other = translate(
      [...'472'],
      number,
      on(['AB', 'CD', 'EF']),
      new Set([first?.code.join('') ?? '']),
      'x',
    );
    expect(other?.code).not.toEqual(first?.code);
  });
});
