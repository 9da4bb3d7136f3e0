/** A print run: which sheets, in which order, numbered over all; the lists measured from outside on games of every kind. */
import { describe, expect, it } from 'vitest';
import { assess } from '../../src/findings/assess.ts';
import { codeOf, normaliseCode } from '../../src/game/codes.ts';
import { emptyGame, type Game } from '../../src/game/model.ts';
import type { Drawing, TextMark } from '../../src/sheets/drawing.ts';
import { printRun } from '../../src/sheets/index.ts';
import { SHEET_NAMES, type Sheet, type SheetOptions, sheetsOf } from '../../src/sheets/sheet.ts';
import { gameOf } from '../game-of.ts';
import { gameOf as exampleOf, SLUGS } from '../games/example.ts';
import { randomPageGame } from '../random-page-game.ts';
import { ALL_ON } from './all-on.ts';
import { checkRun } from './page-checks/check.ts';

/** All but the map, which is measured by tests of its own. */
const LISTS: SheetOptions = { ...ALL_ON, sheets: SHEET_NAMES.filter((name) => name !== 'map') };

function runOf(game: Game, options: SheetOptions): readonly Sheet[] {
  const run = printRun(assess(game), options, { date: '25 November 2026, 13:40' });
  let step = run.next();
  while (!step.done) step = run.next();
  return step.value;
}

const faultsOf = (game: Game, options: SheetOptions) =>
  checkRun(runOf(game, options), assess(game), options).faults;

const textsOf = (drawings: readonly Drawing[]): TextMark[] =>
  drawings.flatMap(({ marks }) => marks.filter((mark): mark is TextMark => mark.mark === 'text'));
const pagesOf = (sheets: readonly Sheet[]) => sheets.flatMap(({ pages }) => pages);
/** Lines joined, so that what is broken can be found. */
const saidOn = (drawings: readonly Drawing[]) =>
  textsOf(drawings)
    .map(({ text }) => text)
    .join(' ');

describe('a print run', () => {
  it('has the chosen sheets in their order, and no list of codes without codes', () => {
    expect(sheetsOf({ sheets: ['order', 'map'], codes: true })).toEqual(['map', 'order']);
    expect(sheetsOf({ sheets: SHEET_NAMES, codes: false })).toEqual([
      'map',
      'cautions',
      'contents',
      'hidden',
      'order',
    ]);
    expect(runOf(exampleOf('greenhouse-pump'), ALL_ON).map(({ name }) => name)).toEqual([...SHEET_NAMES]);
    expect(runOf(exampleOf('greenhouse-pump'), { ...ALL_ON, sheets: [] })).toEqual([]);
  });

  it('numbers its pages over all sheets, and says title, codes and date on each', () => {
    const pages = pagesOf(runOf(exampleOf('greenhouse-pump'), ALL_ON));
    for (const [i, page] of pages.entries()) {
      const said = saidOn([page]);
      expect(said).toContain(`page ${i + 1} of ${pages.length}`);
      expect(said).toContain('The pump in the greenhouse');
      expect(said).toContain('Codes as in the game');
      expect(said).toContain('25 November 2026, 13:40');
    }
  });

  it('is the same for the same game, whatever the order of its things', () => {
    const game = exampleOf('front-page');
    const turned = {
      ...game,
      nodes: new Map([...game.nodes].reverse()),
      links: new Map([...game.links].reverse()),
    };
    expect(runOf(turned, LISTS)).toEqual(runOf(game, LISTS));
  });
});

describe('the lists on paper', () => {
  it.each(SLUGS)('say every code of %s, and none without codes', (slug) => {
    const game = exampleOf(slug);
    const [codes] = runOf(game, { ...LISTS, sheets: ['codes'] });
    const bare = textsOf(pagesOf(runOf(game, { ...LISTS, codes: false })));
    for (const node of game.nodes.values()) {
      const code = codeOf(game, node.id);
      if (code === undefined) continue;
      if (node.kind === 'fastener') {
        const set = textsOf(codes?.pages ?? []).filter(({ of, role }) => of === node.id && role === 'code');
        expect(normaliseCode(set.map(({ text }) => text).join(''))).toBe(code);
      }
      // One of one or two digits may be the number of a step.
      const says = ({ text, role }: TextMark) => role !== 'name' && words(text).includes(code);
      if (code.length > 2) expect(bare.filter(says)).toEqual([]);
    }
    expect(bare.filter(({ role }) => role === 'code')).toEqual([]);
  });

  it('have as many boxes to tick as there are sets, and none when they are not wanted', () => {
    const ticksOf = (options: SheetOptions) =>
      pagesOf(runOf(exampleOf('greenhouse-pump'), options)).flatMap(({ marks }) =>
        marks.filter((mark) => mark.mark === 'area' && mark.role === 'tick' && mark.of === 'greentag'),
      );
    expect(ticksOf(LISTS)).toHaveLength(6);
    expect(ticksOf({ ...LISTS, ticks: false })).toHaveLength(0);
  });

  it('leave out times and rescues that are not wanted', () => {
    const said = saidOn(pagesOf(runOf(exampleOf('front-page'), { ...LISTS, times: false, rescue: false })));
    expect(said).not.toMatch(/\bmin\b|If stuck/);
    expect(saidOn(pagesOf(runOf(exampleOf('front-page'), LISTS)))).toMatch(/5\.5 min.*If stuck:/);
  });

  it('say what is missing, what disagrees and what cannot be', () => {
    const said = saidOn(
      pagesOf(
        runOf(
          gameOf(
            [
              { id: 'sums', kind: 'puzzle', answer: '472' },
              { id: 'tin', kind: 'container', name: 'Green tin' },
              { id: 'wheels', kind: 'fastener', on: 'tin', type: 'number', code: '427' },
              { id: 'chest', kind: 'container', name: 'Chest', in: 'tin' },
              { id: 'padlock', kind: 'fastener', on: 'chest', type: 'key' },
              { id: 'tag', kind: 'key', name: 'Red tag', in: 'chest' },
              { id: 'badge', kind: 'prize', in: 'chest' },
            ],
            ['sums>wheels', 'tag>padlock'],
          ),
          LISTS,
        ),
      ),
    );
    expect(said).toContain('This game cannot be won.');
    expect(said).toMatch(/wheels\s+is set to\s+427\s*, but\s+sums\s+gives\s+472/);
    expect(said).toMatch(/The key\s+Red tag\s+lies in\s+Chest\s*, the box that it opens/);
    expect(said).toContain('Never reached');
  });

  it.each([
    ['nothing', emptyGame],
    ['one place', gameOf([{ id: 'shelf', kind: 'place' }])],
    ['one box', gameOf([{ id: 'tin', kind: 'container' }])],
  ])('are readable pages of %s', (_, game) => {
    expect(pagesOf(runOf(game, LISTS))).toHaveLength(SHEET_NAMES.length - 1);
    expect(faultsOf(game, LISTS)).toEqual([]);
  });

  it('cut nothing and cover nothing on 40 random games', () => {
    for (let seed = 1; seed <= 40; seed++) {
      const game = randomPageGame(seed, {
        steps: 8 + ((seed * 7) % 40),
        oddNames: 0.3,
        longCodes: 0.3,
        ring: seed % 5 === 0,
        leftOut: seed % 3 === 0,
      });
      const paper = seed % 2 === 0 ? 'A4' : 'Letter';
      const options: SheetOptions = { ...LISTS, paper, ticks: seed % 4 !== 0, codes: seed % 3 !== 0 };
      expect({ seed, faults: faultsOf(game, options) }).toEqual({ seed, faults: [] });
    }
  });

  it('put the longest names, codes and notes on pages without an end', () => {
    const long = 'Under the third book of the second row '.repeat(150);
    const game = gameOf(
      [
        { id: 'shelf', kind: 'place', name: 'S'.repeat(200), note: long },
        { id: 'note', kind: 'clue', in: 'shelf', name: long },
        { id: 'tin', kind: 'container', in: 'shelf', name: long },
        { id: 'wheels', kind: 'fastener', on: 'tin', type: 'typed', code: '4'.repeat(60) },
        { id: 'arrows', kind: 'fastener', on: 'tin', type: 'direction', code: 'UDLR'.repeat(15) },
      ],
      ['note>wheels', 'note>arrows'],
    );
    const titled = { ...game, head: { title: long, lesson: { teams: 12 } } };
    expect(faultsOf(titled, LISTS)).toEqual([]);
    const said = textsOf(pagesOf(runOf(titled, LISTS)));
    const set = said.filter(({ of, role }) => of === 'arrows' && role === 'code');
    expect(set.map(({ text }) => text).join('')).toContain('UDLR'.repeat(15));
  });
});

function words(text: string): string[] {
  return text.toUpperCase().split(/[^\p{L}\p{N}]+/u);
}
