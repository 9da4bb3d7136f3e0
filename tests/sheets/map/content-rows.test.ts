import { expect, test } from 'vitest';
import { assess } from '../../../src/findings/assess.ts';
import type { Game } from '../../../src/game/model.ts';
import type { Mark } from '../../../src/sheets/drawing.ts';
import type { Told } from '../../../src/sheets/map/content.ts';
import { contentOf } from '../../../src/sheets/map/content-of.ts';
import { barFigure } from '../../../src/sheets/map/measure/bar.ts';
import { noteFigure } from '../../../src/sheets/map/measure/note.ts';
import { trayFigure } from '../../../src/sheets/map/measure/tray.ts';
import type { SheetOptions } from '../../../src/sheets/sheet.ts';
import { gameOf } from '../../game-of.ts';
import { ALL_ON } from '../all-on.ts';

const content = (game: Game, options: Partial<SheetOptions> = {}) =>
  contentOf(assess(game), { ...ALL_ON, ...options });

const isText = (mark: Mark) => mark.mark === 'text';

/** What is written and drawn for one thing, a box to tick as '☐', from left to right within a line. */
function saidOf(marks: readonly Mark[], id: string): string[] {
  return marks.flatMap((mark) => {
    if (!('of' in mark) || mark.of !== id) return [];
    if (mark.mark === 'text') return [mark.text];
    if (mark.mark === 'sign') return [`<${mark.sign}>`];
    return mark.mark === 'area' && mark.role === 'tick' ? ['☐'] : [];
  });
}

const trayMarks = (game: Game, options: Partial<SheetOptions> = {}, told = new Map<string, Told[]>()) => {
  const { facts, trays } = content(game, options);
  return trays.flatMap((tray) => [...trayFigure(facts, tray, 'right', 9, 200, told).marks]);
};

/** A box with one lock of this type, for one team. */
function locked(type: string, code?: string): Game {
  const game = gameOf(
    [
      { id: 'tin', kind: 'container', name: 'Tin' },
      { id: 'lock', kind: 'fastener', on: 'tin', type, name: '', ...(code !== undefined && { code }) },
      { id: 'card', kind: 'clue', name: 'Card', ...(code !== undefined && { answer: code }) },
      { id: 'tag', kind: 'key', name: 'Red tag' },
      { id: 'gold', kind: 'prize', name: 'Gold', in: 'tin' },
    ],
    type === 'key' ? ['tag>lock'] : code === undefined ? [] : ['card>lock'],
  );
  return { ...game, head: { lesson: { teams: 1 } } };
}

test.each([
  ['number', '0417', ['<number>', '0417']],
  ['word', 'FERN', ['<word>', 'FERN']],
  ['direction', '↑←', ['<direction>', '<up>', 'U', '<left>', 'L']],
  ['key', undefined, ['<keyLock>', 'Red tag']],
  ['latch', undefined, ['<latch>', 'latch']],
])(
  'a %s lock shows its number, its sign, what it is set to, its time and a box to tick',
  (type, code, shown) => {
    const said = saidOf(trayMarks(locked(type, code)), 'lock');
    expect(said[0]).toBe('1');
    expect(said.slice(1, 1 + shown.length)).toEqual(shown);
    expect(said.slice(1 + shown.length).join(' ')).toMatch(/^[\d.]+ (s|min) ☐$/);
  },
);

test('with all left out a lock is its number and its sign, and what a key lock or latch says is no code', () => {
  const off = { codes: false, times: false, ticks: false };
  expect(saidOf(trayMarks(locked('number', '0417'), off), 'lock')).toEqual(['1', '<number>']);
  expect(saidOf(trayMarks(locked('key'), off), 'lock')).toEqual(['1', '<keyLock>', 'Red tag']);
  expect(saidOf(trayMarks(locked('latch'), off), 'lock')).toEqual(['1', '<latch>', 'latch']);
});

const three = gameOf(
  [
    { id: 'shelf', kind: 'place', name: 'Shelf' },
    { id: 'a', kind: 'clue', name: 'Cube scrap', answer: '6', in: 'shelf' },
    { id: 'b', kind: 'clue', name: 'Disc scrap', answer: '8', in: 'shelf' },
    { id: 'lens', kind: 'tool', name: 'Hand lens' },
    { id: 'sort', kind: 'puzzle', name: 'Sort the scraps', answer: '68', need: 2 },
    { id: 'tin', kind: 'container', name: 'Tin' },
    { id: 'lock', kind: 'fastener', on: 'tin', type: 'number', code: '68', name: '' },
    { id: 'gold', kind: 'prize', name: 'Gold', in: 'tin' },
  ],
  ['a>sort', 'b>sort', 'lens>sort', 'sort>lock', 'a>lock', 'b>lock'],
);

test('a bar says number, name, answer, time and how many are enough', () => {
  const { facts } = content(three);
  const said = (options: Partial<SheetOptions>) =>
    saidOf(barFigure(content(three, options).facts, 'sort', 9, 200, []).marks, 'sort');
  expect(facts.number('sort')).toBe(2);
  expect(said({}).join(' ')).toMatch(/^2 Sort the scraps gives 68 [\d.]+ min · any 2 of 3$/);
  expect(said({ codes: false, times: false })).toEqual(['2', 'Sort the scraps', 'any 2 of 3']);
});

test('a place says its name, number and time; a thing its sign and what it gives; a group its caption', () => {
  const marks = trayMarks(three);
  expect(saidOf(marks, 'shelf').join(' ')).toMatch(/^Shelf 1 [\d.]+ min$/);
  expect(saidOf(marks, 'a')).toEqual(['<clue>', 'Cube scrap', 'gives', '6']);
  expect(saidOf(trayMarks(three, { codes: false }), 'a')).toEqual(['<clue>', 'Cube scrap']);
  expect(saidOf(marks, 'lens')).toEqual(['<tool>', 'Hand lens']);
  expect(marks.filter(isText).map(({ text }) => text)).toContain('In hand from the start');
});

test('several sources of a lock are told as one list, each part with its own link', () => {
  const from = (other: string): Told => ({ link: `${other}>lock`, other, otherEnd: 'from' });
  const marks = trayMarks(three, {}, new Map([['lock', [from('sort'), from('a'), from('b')]]]));
  const told = marks.filter(isText).filter(({ role }) => role === 'reference');
  expect(told.map(({ text, links }) => [text, links])).toEqual([
    ['from 2,', ['sort>lock']],
    ['Cube scrap (Shelf),', ['a>lock']],
    ['Disc scrap (Shelf)', ['b>lock']],
  ]);
});

/** A lens in a tin that opens at step 3, a card that is handed over, and what is needed with them. */
const lens = gameOf(
  [
    { id: 'shelf', kind: 'place', name: 'Shelf' },
    { id: 'list', kind: 'clue', name: 'List', in: 'shelf', answer: '417' },
    { id: 'sum', kind: 'puzzle', name: 'Add it up', answer: '417' },
    { id: 'tin', kind: 'container', name: 'Lens tin', in: 'shelf' },
    { id: 'lock', kind: 'fastener', on: 'tin', type: 'number', code: '417', name: '' },
    { id: 'lens', kind: 'tool', name: 'Hand lens', in: 'tin' },
    { id: 'torch', kind: 'tool', name: 'Torch', in: 'shelf' },
    { id: 'cells', kind: 'tool', name: 'Cells' },
    { id: 'label', kind: 'clue', name: 'Tiny label', in: 'shelf' },
    { id: 'card', kind: 'clue', name: 'Card' },
    { id: 'shed', kind: 'place', name: 'Shed' },
    { id: 'box', kind: 'container', name: 'Box', in: 'shed' },
    { id: 'flap', kind: 'fastener', on: 'box', type: 'other', name: '' },
    { id: 'gold', kind: 'prize', name: 'Gold', in: 'box' },
  ],
  [
    'list>sum',
    'sum>lock',
    'lens>label',
    'cells>torch',
    'list>label',
    'sum>card',
    'card>label',
    'sum>shed',
    'label>shed',
    'torch>flap',
    'label>flap',
    'lens>flap',
  ],
);

test.each([
  ['label', ['lens', 'list', 'card'], 'read with Hand lens (Lens tin, 3), List (Shelf, 1), Card (after 2)'],
  ['torch', ['cells'], 'used with Cells'],
  ['card', ['sum'], 'given after 2'],
  ['shed', ['sum', 'label'], 'found after 2, Tiny label (Shelf)'],
  [
    'flap',
    ['torch', 'label', 'lens'],
    'with Torch (Shelf, 1), Hand lens (Lens tin, 3), from Tiny label (Shelf)',
  ],
])('%s says what each of its links means for it', (at, others, words) => {
  const told = others.map((other): Told => ({ link: `${other}>${at}`, other, otherEnd: 'from' }));
  const marks = trayMarks(lens, {}, new Map([[at, told]]));
  const references = marks.filter(isText).filter(({ role }) => role === 'reference');
  expect(references.map(({ text }) => text).join(' ')).toBe(words);
  expect(new Set(references.flatMap(({ links }) => links ?? []))).toEqual(
    new Set(told.map(({ link }) => link)),
  );
});

test.each([
  ['lens', 'label', 'needed to read Tiny label (Shelf)'],
  ['cells', 'torch', 'needed to use Torch (Shelf)'],
  ['lens', 'gate', 'opens Gate'],
  ['lens', 'ask', 'needed for Ask'],
  ['label', 'cellar', 'leads to Cellar'],
])('%s says what it does for %s, which has no number', (at, other, words) => {
  const never = gameOf(
    [
      ...lens.nodes.values(),
      { id: 'dark', kind: 'clue', name: 'Dark', in: 'gatebox' },
      { id: 'gatebox', kind: 'container', name: 'Gate' },
      { id: 'gate', kind: 'fastener', on: 'gatebox', type: 'other', name: '' },
      { id: 'ask', kind: 'puzzle', name: 'Ask' },
      { id: 'cellar', kind: 'place', name: 'Cellar' },
    ],
    ['dark>gate', 'dark>ask', 'dark>cellar'],
  );
  expect(content(never).facts.number(other)).toBe(0);
  const told: Told = { link: `${at}>${other}`, other, otherEnd: 'to' };
  const marks = trayMarks(never, {}, new Map([[at, [told]]]));
  const references = marks.filter(isText).filter(({ role }) => role === 'reference');
  expect(references.map(({ text }) => text).join(' ')).toBe(words);
});

test('a puzzle gives what it hands over, and is needed for what lies somewhere', () => {
  const { facts } = content(lens);
  const told = ['card', 'label'].map((other): Told => ({ link: `sum>${other}`, other, otherEnd: 'to' }));
  const references = barFigure(facts, 'sum', 9, 300, told)
    .marks.filter(isText)
    .filter(({ role }) => role === 'reference');
  expect(references.map(({ text }) => text)).toEqual([
    'gives Card',
    'needed to read Tiny label (Shelf), for\u00A04 and 5',
  ]);
});

test('three puzzles or more at one end are told by their numbers, with the page of each', () => {
  const ids = ['a', 'b', 'c', 'd'];
  const game = gameOf(
    [
      ...ids.map((id) => ({ id, kind: 'puzzle' as const, name: `First ${id}` })),
      { id: 'sum', kind: 'puzzle', name: 'Sum' },
    ],
    ids.map((id) => `${id}>sum`),
  );
  const { facts } = content(game);
  const said = (others: readonly string[]) => {
    const told = others.map(
      (other): Told => ({
        link: `${other}>sum`,
        other,
        otherEnd: 'from',
        ...(other === 'b' && { elsewhere: { page: 2 } }),
      }),
    );
    const references = barFigure(facts, 'sum', 9, 400, told)
      .marks.filter(isText)
      .filter(({ role }) => role === 'reference');
    for (const { links = [] } of references) expect(links.length).toBeGreaterThan(0);
    return references.map(({ text }) => text);
  };
  expect(said(['c', 'a', 'b'])).toEqual(['from 1, 2 (page 2), 3']);
  expect(said(['a', 'b'])).toEqual(['from 1', 'from 2 (page 2)']);
});

test('a code of eight symbols stays whole in the narrowest bar; one of sixty is broken and not cut', () => {
  const code = '1234567890'.repeat(6);
  for (const answer of ['GLOBETRO', code]) {
    const game = gameOf([{ id: 'p', kind: 'puzzle', name: 'Find it', answer }], []);
    const { facts } = content(game);
    const parts = barFigure(facts, 'p', 9, 75, [])
      .marks.filter(isText)
      .filter(({ role }) => role === 'code')
      .map(({ text }) => text);
    expect(parts.join('')).toBe(answer);
    if (answer.length === 8) expect(parts).toHaveLength(1);
    else expect(parts.length).toBeGreaterThan(1);
  }
});

test.each([
  ['long', `${'Unbreakable'.repeat(10)} ${'word '.repeat(18)}end`],
  ['emoji', '👩‍🔬🔑 Der Schlüssel 🗝️🏺'.repeat(4)],
  ['right-to-left', 'המפתח האדום של המוזיאון '.repeat(5).trim()],
])('a %s name is drawn whole, inside what it belongs to', (_, name) => {
  const game = gameOf(
    [
      { id: 'shelf', kind: 'place', name },
      { id: 'note', kind: 'clue', name, in: 'shelf' },
      { id: 'sum', kind: 'puzzle', name, answer: '417' },
      { id: 'tin', kind: 'container', name, in: 'shelf' },
      { id: 'lock', kind: 'fastener', on: 'tin', type: 'key', name: '' },
      { id: 'tag', kind: 'key', name },
      { id: 'gold', kind: 'prize', name, in: 'tin' },
    ],
    ['note>sum', 'tag>lock'],
  );
  const { facts, trays, notes } = content(game);
  const figures = [
    { width: 80, ...barFigure(facts, 'sum', 9, 80, []) },
    ...trays.map((tray) => ({ width: 120, ...trayFigure(facts, tray, 'left', 9, 120, new Map()) })),
    ...notes.map((note) => ({ width: 70, ...noteFigure(facts, note, 9, 70) })),
  ];
  expect(notes.length).toBeGreaterThan(0);
  const bare = (text: string) => text.replace(/\s/g, '');
  for (const { width, height, marks } of figures) {
    for (const { text, x, y, align, width: wide, size } of marks.filter(isText)) {
      const start = x - (align === 'end' ? wide : align === 'middle' ? wide / 2 : 0);
      expect(start, text).toBeGreaterThan(-0.01);
      expect(start + wide, text).toBeLessThan(width + 0.01);
      expect(y - 0.6 * size, text).toBeGreaterThan(-0.01);
      expect(y, text).toBeLessThan(height);
    }
  }
  const marks = figures.flatMap((figure) => [...figure.marks]);
  for (const id of ['shelf', 'note', 'sum', 'tin', 'tag', 'gold']) {
    const whole = marks.filter(isText).filter(({ of, role }) => of === id && role === 'name');
    expect(bare(whole.map(({ text }) => text).join('')), id).toBe(bare(name));
  }
});
