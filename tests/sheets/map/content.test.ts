import { expect, test } from 'vitest';
import { assess } from '../../../src/findings/assess.ts';
import type { Game } from '../../../src/game/model.ts';
import type { Told, TrayRow } from '../../../src/sheets/map/content.ts';
import { contentOf } from '../../../src/sheets/map/content-of.ts';
import { barFigure } from '../../../src/sheets/map/measure/bar.ts';
import type { Figure } from '../../../src/sheets/map/measure/figure.ts';
import { trayFigure } from '../../../src/sheets/map/measure/tray.ts';
import type { SheetOptions } from '../../../src/sheets/sheet.ts';
import { textWidth } from '../../../src/type/text.ts';
import { plain } from '../../../src/words/sentence.ts';
import { fixed, gameOf } from '../../game-of.ts';
import { pageGame } from '../../random-page-game.ts';
import { ALL_ON } from '../all-on.ts';

const METRICS = { size: 9, trayWidth: 184, barWidth: 130, noteWidth: 80 };

const content = (game: Game, options: Partial<SheetOptions> = {}) =>
  contentOf(assess(game), { ...ALL_ON, ...options });

function said(row: TrayRow): string {
  const of = row.row === 'caption' ? row.caption : row.id;
  return of === undefined ? row.row : `${row.row} ${of}`;
}

const textsOf = ({ marks }: Figure) => marks.flatMap((mark) => (mark.mark === 'text' ? [mark.text] : []));

/** A puzzle gives the code of a box; in the box lies the key of a second lock, behind which the prize lies. */
const two = gameOf(
  [
    { id: 'shelf', kind: 'place', name: 'Shelf' },
    { id: 'list', kind: 'clue', name: 'Price list', in: 'shelf' },
    { id: 'sum', kind: 'puzzle', name: 'Add it up', answer: '417' },
    { id: 'tin', kind: 'container', name: 'Green tin' },
    { id: 'number', kind: 'fastener', on: 'tin', type: 'number', code: '417', name: '' },
    { id: 'tag', kind: 'key', name: 'Red tag', in: 'tin' },
    { id: 'chest', kind: 'container', name: 'Chest', in: 'shelf' },
    { id: 'padlock', kind: 'fastener', on: 'chest', type: 'key', name: '' },
    { id: 'gold', kind: 'prize', name: 'Gold', in: 'chest' },
    { id: 'spare', kind: 'clue', name: 'Left at home', leftOut: true },
  ],
  ['list>sum', 'sum>number', 'tag>padlock'],
);

test('what lies in a place or box are rows of one tray, locks first, boxes last', () => {
  const { trays, bars, links } = content(two);
  expect(bars).toEqual(['sum']);
  expect(links.map(({ id }) => id)).toEqual(['list>sum', 'sum>number', 'tag>padlock']);
  expect(trays.map(({ rows }) => rows.map((row) => `${said(row)} ${row.depth}`))).toEqual([
    [
      'head shelf 0',
      'thing list 0',
      'head chest 1',
      'lock padlock 1',
      'thing gold 1',
      'foot chest 1',
      'foot shelf 0',
    ],
    ['head tin 0', 'lock number 0', 'thing tag 0', 'foot tin 0'],
  ]);
});

test('a caption takes the room of a name', () => {
  const game = gameOf(
    [
      { id: 'card', kind: 'clue', name: 'Card' },
      { id: 'shelf', kind: 'place', name: 'Shelf', minutes: { low: 0, likely: 0, high: 0 } },
      { id: 'list', kind: 'clue', name: 'List', in: 'shelf' },
    ],
    [],
  );
  const { trays, measureTray } = content(game);
  const heights = trays.map((tray) => measureTray(tray, METRICS, new Map()).height);
  expect(heights).toHaveLength(2);
  expect(heights[0]).toBeCloseTo(heights[1] ?? 0, 6);
});

test('what lies in nothing shares a caption: in hand, or given by one puzzle', () => {
  const game = gameOf(
    [
      { id: 'ask', kind: 'puzzle' },
      { id: 'card', kind: 'clue' },
      { id: 'lens', kind: 'tool' },
      { id: 'cup', kind: 'prize' },
    ],
    ['card>ask', 'ask>cup', 'lens>ask'],
  );
  expect(content(game).trays.map(({ rows }) => rows.map(said))).toEqual([
    ['caption hand', 'thing card', 'thing lens', 'foot'],
    ['caption given', 'thing cup', 'foot'],
  ]);
});

test('what the teacher gives out at a minute is not in hand from the start', () => {
  const game = gameOf(
    [
      { id: 'ask', kind: 'puzzle', atMinute: 20 },
      { id: 'card', kind: 'clue' },
      { id: 'lens', kind: 'tool', atMinute: 12 },
      { id: 'tin', kind: 'container', atMinute: 9 },
      { id: 'cup', kind: 'prize', in: 'tin' },
    ],
    ['card>ask', 'lens>ask', 'ask>cup'],
  );
  const { facts, trays } = content(game);
  expect(trays.map(({ rows }) => rows.map(said)).sort()).toEqual([
    ['caption given', 'thing lens', 'foot'],
    ['caption hand', 'thing card', 'foot'],
    ['head tin', 'thing cup', 'foot tin'],
  ]);
  expect(facts.caption('tin')).toBe('given');
  expect(['ask', 'lens', 'tin', 'card'].map(facts.remarks)).toEqual([
    ['from minute 20'],
    ['at minute 12'],
    ['at minute 9'],
    [],
  ]);
});

test('no id is taken for a caption', () => {
  const game = gameOf(
    [
      { id: 'hand', kind: 'place', name: 'First drawer' },
      { id: 'given', kind: 'container', name: 'Second drawer' },
      { id: 'tables', kind: 'container', name: 'Third drawer', in: 'hand' },
      { id: '__proto__', kind: 'puzzle', name: 'Hand over' },
      { id: 'constructor', kind: 'clue', name: 'Card' },
      { id: 'caption hand', kind: 'prize', name: 'Cup' },
    ],
    ['constructor>__proto__', '__proto__>caption hand'],
  );
  const { facts, trays } = content(game);
  expect(trays.map(({ rows }) => rows.map(said).join(', ')).sort()).toEqual([
    'caption given, thing caption hand, foot',
    'caption hand, thing constructor, foot',
    'head given, foot given',
    'head hand, head tables, foot tables, foot hand',
  ]);
  expect(new Set(trays.map(({ key }) => key)).size).toBe(4);
  const marks = trays.flatMap((tray) => [...trayFigure(facts, tray, 'left', 9, 184, new Map()).marks]);
  const areas = marks.flatMap((mark) => (mark.mark === 'area' && mark.role !== 'step' ? [mark] : []));
  expect(areas.map(({ role, of }) => `${role} ${of ?? ''}`.trim()).sort()).toEqual([
    'container given',
    'container tables',
    'group',
    'group',
    'place hand',
  ]);
  const texts = trays.flatMap((tray) => textsOf(trayFigure(facts, tray, 'left', 9, 184, new Map())));
  for (const text of [
    'First drawer',
    'Second drawer',
    'Third drawer',
    'In hand from the start',
    'Given by the teacher',
  ]) {
    expect(
      texts.filter((one) => one === text),
      text,
    ).toHaveLength(1);
  }
});

test('parts of a tray keep the rows of the whole, each once, however often it is cut', () => {
  const [shelf] = content(two).trays;
  if (!shelf) throw new Error('There is no tray.');
  const [above, rest] = content(two).cut(shelf, 2);
  // Two heads say there that it goes on.
  const [middle, below] = content(two).cut(rest, 2);
  expect([above, middle, below].map(({ cutFrom }) => cutFrom)).toEqual(
    [0, 2, 3].map((before) => ({ whole: shelf.key, before })),
  );
  expect([above, middle, below].map(({ rows }) => rows.map(said).join(', '))).toEqual([
    'head shelf, thing list, foot shelf',
    'head shelf, head chest, foot chest, foot shelf',
    'head shelf, head chest, lock padlock, thing gold, foot chest, foot shelf',
  ]);
  expect(new Set([shelf, above, rest, middle, below].map(({ key }) => key)).size).toBe(5);
});

test('a tray is cut between rows, with the heads and feet of what is open', () => {
  const { trays, cut } = content(two);
  const [shelf] = trays;
  if (!shelf) throw new Error('There is no tray.');
  const [above, below] = cut(shelf, 4);
  expect(above.rows.map(said)).toEqual([
    'head shelf',
    'thing list',
    'head chest',
    'lock padlock',
    'foot chest',
    'foot shelf',
  ]);
  expect(above.rows.flatMap((row) => (row.row === 'foot' ? [row.continues] : []))).toEqual([true, true]);
  expect(below.rows.map(said)).toEqual([
    'head shelf',
    'head chest',
    'thing gold',
    'foot chest',
    'foot shelf',
  ]);
  expect(below.rows.flatMap((row) => (row.row === 'head' ? [row.continued] : []))).toEqual([true, true]);
});

test.each([7.5, 11])('a bar that says next to nothing has room for two lines, at %s points', (size) => {
  const { measureBar } = content(two, { codes: false, times: false });
  const { height, entries } = measureBar('sum', { ...METRICS, size }, new Map());
  expect((entries.at(-1) ?? 0) - (entries[0] ?? 0)).toBeGreaterThan(9.999);
  expect(height).toBeLessThan(40);
});

test('a lock that is fed in parts says which position each source gives, told or drawn', () => {
  const made = content(
    gameOf(
      [
        { id: 'tin', kind: 'container', name: 'Tin' },
        { id: 'scrap', kind: 'clue', name: 'Cube scrap', in: 'tin', answer: '6' },
        { id: 'sum', kind: 'puzzle', name: 'Sum', answer: '84' },
        { id: 'case', kind: 'container', name: 'Case' },
        { id: 'wheels', kind: 'fastener', name: '', on: 'case', type: 'number', code: '864' },
        { id: 'win', kind: 'prize', in: 'case' },
      ],
      ['scrap>wheels@2', 'sum>wheels@1,3'],
    ),
  );
  const tray = made.trays.find(({ key }) => key.includes('case'));
  const said = (told: readonly Told[]) =>
    tray
      ? trayFigure(made.facts, tray, 'left', 9, 184, new Map([['wheels', told]])).marks.flatMap((mark) =>
          mark.mark === 'text' && mark.of === 'wheels' && /:/.test(mark.text)
            ? [{ text: mark.text, links: mark.links }]
            : [],
        )
      : [];
  const scrap: Told = { link: 'scrap>wheels@2', other: 'scrap', otherEnd: 'from' };
  const sum: Told = { link: 'sum>wheels@1,3', other: 'sum', otherEnd: 'from', elsewhere: { page: 2 } };
  expect(said([scrap])).toEqual([
    { text: 'positions 1 and 3: step 1,', links: undefined },
    { text: '2: Cube scrap (Tin)', links: [scrap.link] },
  ]);
  expect(said([scrap, sum])).toEqual([
    { text: 'positions 1 and 3: step 1 (page 2),', links: [sum.link] },
    { text: '2: Cube scrap (Tin)', links: [scrap.link] },
  ]);
});

test('a puzzle and the lock that it alone opens share a rescue line', () => {
  const made = content(two);
  const said = made.notes.map((note) => [
    note.steps.map((id) => made.numbers.get(id)).join(', '),
    plain(made.facts.rescue(note)),
  ]);
  expect(said).toEqual([
    ['1', 'Without it Add it up cannot be solved. Point the team to Shelf.'],
    ['2, 3', 'Without them Green tin stays shut. Say: 417.'],
    ['4', 'Without it Chest stays shut. Open the lock.'],
  ]);
  expect(content(two, { rescue: false }).notes).toEqual([]);
});

test('a lock that does not follow its puzzle has a rescue line of its own; of several on a box the lock is named', () => {
  const made = content(
    gameOf(
      [
        { id: 'first', kind: 'puzzle', name: 'First sum', answer: '12', ...fixed(1) },
        { id: 'second', kind: 'puzzle', name: 'Second sum', answer: 'ASH', ...fixed(2) },
        { id: 'tin', kind: 'container', name: 'Tin' },
        { id: 'word', kind: 'fastener', name: '', on: 'tin', type: 'word', code: 'ASH', ...fixed(1) },
        { id: 'bolt', kind: 'fastener', name: '', on: 'tin', type: 'key', ...fixed(1) },
        { id: 'key', kind: 'key', name: 'Red key' },
        { id: 'case', kind: 'container', name: 'Case', in: 'tin' },
        { id: 'wheels', kind: 'fastener', name: '', on: 'case', type: 'number', code: '12', ...fixed(1) },
        { id: 'win', kind: 'prize', in: 'case' },
      ],
      ['first>wheels', 'second>word', 'key>bolt'],
    ),
  );
  const said = made.notes.map((note) => [
    note.steps.map((id) => made.numbers.get(id)).join(', '),
    plain(made.facts.rescue(note)),
  ]);
  expect(said).toEqual([
    ['1', 'Without it Tin stays shut. Open its key lock.'],
    ['2', 'Without it Case stays shut. Say: 12.'],
    ['3, 4', 'Without them the word lock on Tin stays shut. Say: ASH.'],
    ['5', 'Without it Case stays shut. Open the lock: 12.'],
  ]);
});

test('without codes neither rows, bars nor rescue lines say one', () => {
  const made = content(two, { codes: false });
  const said = [
    ...textsOf(barFigure(made.facts, 'sum', 9, 130, [])),
    ...made.trays.flatMap((tray) => textsOf(trayFigure(made.facts, tray, 'left', 9, 184, new Map()))),
    ...made.notes.map((note) => plain(made.facts.rescue(note))),
  ];
  expect(said.join(' ')).not.toMatch(/417/);
  expect(said).toContain('Red tag');
});

test.each(['417', 'CRUST', 'WWWWWWWW'])(
  'a bar of the least width holds the answer %s in one piece',
  (answer) => {
    const game = gameOf(
      [
        { id: 'list', kind: 'clue', name: 'List' },
        { id: 'sum', kind: 'puzzle', name: 'Sum', answer },
      ],
      ['list>sum'],
    );
    const { facts, leastBarWidth } = content(game);
    for (const size of [7.5, 9, 11]) {
      const width = leastBarWidth('sum', size);
      expect(textsOf(barFigure(facts, 'sum', size, width, []))).toContain(answer);
      expect(textsOf(barFigure(facts, 'sum', size, 0.8 * width, []))).not.toContain(answer);
    }
  },
);

test('links that are not drawn are told at both ends', () => {
  const { facts, trays } = content(two);
  const told = (link: string, other: string, otherEnd: 'from' | 'to', more: Partial<Told> = {}): Told => ({
    link,
    other,
    otherEnd,
    ...more,
  });
  const tellings = new Map([
    ['list', [told('list>sum', 'sum', 'to', { elsewhere: { page: 2 } })]],
    ['sum', [told('list>sum', 'list', 'from'), told('sum>number', 'number', 'to')]],
    ['number', [told('sum>number', 'sum', 'from', { elsewhere: { half: 'right' } })]],
    ['padlock', [told('tag>padlock', 'tag', 'from')]],
    ['tag', [told('tag>padlock', 'padlock', 'to')]],
  ]);
  const references = (figure: Figure) =>
    figure.marks
      .flatMap((mark) => (mark.mark === 'text' && mark.role === 'reference' ? [mark.text] : []))
      .join(' | ');
  expect(references(barFigure(facts, 'sum', 9, 200, tellings.get('sum') ?? []))).toBe(
    '+ Price list (Shelf) | opens 3: Green tin',
  );
  expect(trays.map((tray) => references(trayFigure(facts, tray, 'left', 9, 184, tellings)))).toEqual([
    '2 | page 2 | in Green tin',
    'from 2 (right half) | 4',
  ]);
});

test('things are told together that lie in one box, not those in boxes of one name', () => {
  const game = gameOf(
    [
      { id: 'left', kind: 'container', name: 'Red tin' },
      { id: 'right', kind: 'container', name: 'Red tin' },
      { id: 'a', kind: 'clue', name: 'Map', in: 'left' },
      { id: 'b', kind: 'clue', name: 'List', in: 'right' },
      { id: 'c', kind: 'tool', name: 'Lens', in: 'left' },
      { id: 'sum', kind: 'puzzle', name: 'Add it up' },
    ],
    ['a>sum', 'b>sum', 'c>sum'],
  );
  const told = ['a', 'b', 'c'].map((other): Told => ({ link: `${other}>sum`, other, otherEnd: 'from' }));
  const { marks } = barFigure(content(game).facts, 'sum', 9, 300, told);
  const references = marks.flatMap((mark) =>
    mark.mark === 'text' && mark.role === 'reference' ? [{ text: mark.text, links: mark.links }] : [],
  );
  expect(references).toEqual([
    { text: '+ Map, Lens (Red tin)', links: ['a>sum', 'c>sum'] },
    { text: '+ List (Red tin)', links: ['b>sum'] },
  ]);
});

test('what is not said by the options takes no room', () => {
  const tall = (options: Partial<SheetOptions>) => {
    const { measureTray, measureBar, trays } = content(two, options);
    const none = new Map();
    return trays.reduce(
      (sum, tray) => sum + measureTray(tray, METRICS, none).height,
      measureBar('sum', METRICS, none).height,
    );
  };
  const all = tall({});
  expect(tall({ times: false })).toBeLessThan(all);
  expect(tall({ ticks: false, codes: false, times: false })).toBeLessThan(tall({ times: false }));
});

test('on either side of the spine a tray is as high, and nothing in it is wider than it', () => {
  for (let seed = 1; seed <= 6; seed++) {
    const { facts, trays, measureTray } = content(pageGame(seed));
    for (const tray of trays) {
      for (const width of [90, 184]) {
        const metrics = { ...METRICS, trayWidth: width };
        const measured = measureTray(tray, metrics, new Map());
        for (const side of ['left', 'right'] as const) {
          const figure = trayFigure(facts, tray, side, 9, width, new Map());
          expect(figure.height).toBeCloseTo(measured.height, 6);
          expect(figure.tops).toHaveLength(tray.rows.length + 1);
          expect([...figure.ends]).toEqual([...measured.ends]);
          for (const mark of figure.marks) {
            if (mark.mark !== 'text') continue;
            const from =
              mark.x - (mark.align === 'end' ? mark.width : mark.align === 'middle' ? mark.width / 2 : 0);
            expect(from, mark.text).toBeGreaterThan(-0.01);
            expect(from + mark.width, mark.text).toBeLessThan(width + 0.01);
            expect(mark.size).toBeGreaterThanOrEqual(7.5);
            expect(mark.width).toBeCloseTo(textWidth(mark.text, mark), 6);
          }
        }
      }
    }
  }
});

test('what is never reached has no number and no time, and its lock says so', () => {
  const game = gameOf(
    [
      { id: 'tin', kind: 'container', name: 'Tin' },
      { id: 'lock', kind: 'fastener', on: 'tin', type: 'number', name: '' },
      { id: 'end', kind: 'prize', in: 'tin' },
    ],
    [],
  );
  const { facts, trays } = content(game);
  const texts = trays.flatMap((tray) => textsOf(trayFigure(facts, tray, 'left', 9, 184, new Map())));
  expect(texts).toContain('cannot open');
  expect(texts.filter((text) => /^\d+$|\bs$|min/.test(text) && text.length > 1)).toEqual([]);
});
