/** The checker finds what is wrong: a page drawn by hand is spoilt in one thing at a time. */
import { describe, expect, test } from 'vitest';
import { assess } from '../../src/findings/assess.ts';
import type { Drawing, Mark, TextMark } from '../../src/sheets/drawing.ts';
import type { SheetOptions } from '../../src/sheets/sheet.ts';
import { checkMap, checkRun } from './page-checks/check.ts';
import type { FaultKind } from './page-checks/fault.ts';
import { area, cleanMarks, drawingOf, HAND_MADE, line, OPTIONS, text } from './page-checks/hand-made.ts';

type Marks = Map<string, Mark[]>;

function faultsOf(spoil: (marks: Marks) => void, options: SheetOptions = OPTIONS, assessment = HAND_MADE) {
  const marks = cleanMarks();
  spoil(marks);
  return checkMap([drawingOf(marks)], assessment, options).faults;
}

function textNamed(marks: Marks, name: string): TextMark {
  const mark = marks.get(name)?.find((one) => one.mark === 'text');
  if (mark?.mark !== 'text') throw new Error(`no text ${name}`);
  return mark;
}

const add = (marks: Marks, ...more: Mark[]) => marks.set('more', more);

test('a clean page passes', () => {
  const report = checkMap([drawingOf(cleanMarks())], HAND_MADE, OPTIONS);
  expect(report).toEqual({ faults: [], pages: 1, smallest: 9, names: 9, crossings: 0, drawn: 2, told: 1 });
});

const SPOILT: readonly (readonly [FaultKind, string, (marks: Marks) => void])[] = [
  ['overlap', 'two trays', (marks) => add(marks, area('container', 'tin', [100, 150, 200, 300]))],
  ['overlap', 'a bar on a group', (marks) => marks.set('bar', [area('puzzle', 'sum', [230, 110, 410, 180])])],
  [
    'overlap',
    'a box in a place that does not hold it',
    (marks) => add(marks, area('container', 'tin', [50, 150, 100, 185])),
  ],
  ['overlap', 'two texts', (marks) => marks.set('answer', [text('code', 'sum', '4728', 262, 130)])],
  [
    'overlap',
    'a rescue line on a bar',
    (marks) => marks.set('rescue', [text('rescue', 'sum', 'Say', 310, 160)]),
  ],
  [
    'overlap',
    'a box to tick on a text',
    (marks) => marks.set('code', [text('code', 'wheels', '4728', 462, 146)]),
  ],
  [
    'overlap',
    'a plate of one lock on another box',
    (marks) => add(marks, area('plate', 'wheels', [160, 150, 185, 160])),
  ],
  [
    'line on line',
    'in to one, out of it to the other',
    (marks) =>
      marks.set('opens', [
        line(['sum>wheels'], [350, 143], [390, 143], [390, 300], [200.5, 300], [200.5, 128], [404, 143]),
      ]),
  ],
  [
    'line on line',
    'there and back',
    (marks) => marks.set('opens', [line(['sum>wheels'], [350, 143], [390, 143], [370, 143], [404, 143])]),
  ],
  [
    'line along a wall',
    'of the group',
    (marks) => marks.set('opens', [line(['sum>wheels'], [350, 143], [399, 143], [399, 160], [404, 143])]),
  ],
  [
    'line through text',
    'of the thing told beside it',
    (marks) =>
      marks.set('needed', [line(['map>sum'], [82, 142], [82, 167], [200, 167], [200, 125], [230, 125])]),
  ],
  [
    'line through text',
    'a wall through a name',
    (marks) => add(marks, { ...line([], [60, 114], [100, 114]), role: 'wall', arrow: false }),
  ],
  [
    'line through a sign',
    'the number of another step',
    (marks) =>
      marks.set('needed', [line(['map>sum'], [82, 142], [82, 132], [54, 132], [54, 90], [230, 125])]),
  ],
  [
    'line through an area',
    'a group that holds neither end',
    (marks) =>
      marks.set('needed', [
        line(['map>sum'], [82, 142], [200, 142], [200, 225], [450, 225], [450, 240], [230, 125]),
      ]),
  ],
  [
    'line through an area',
    'its own bar',
    (marks) => marks.set('needed', [line(['map>sum'], [82, 142], [200, 142], [200, 125], [233.5, 125])]),
  ],
  [
    'slanted line',
    'in the channel',
    (marks) => marks.set('needed', [line(['map>sum'], [82, 142], [230, 125])]),
  ],
  [
    'text over a wall',
    'of its own tray',
    (marks) => marks.set('thing', [text('name', 'map', 'Map', 172, 145)]),
  ],
  [
    'text covered',
    'by a later area',
    (marks) => add(marks, area('container', 'tin', [410, 115, 545, 220], 'paper')),
  ],
  [
    'text narrower than told',
    'a name',
    (marks) => marks.set('place name', [{ ...text('name', 'shelf', 'Shelf', 70, 117), width: 12 }]),
  ],
  [
    'text too small',
    'a note',
    (marks) => add(marks, { ...text('plain', undefined, 'small', 40, 400), size: 7.4 }),
  ],
  ['too near the edge', 'a text', (marks) => add(marks, text('plain', undefined, 'out', 560, 400))],
  [
    'too near the edge',
    'the thickness of a wall',
    (marks) => add(marks, area('plain', undefined, [28.4, 400, 60, 420])),
  ],
  ['missing', 'a thing', (marks) => marks.delete('prize')],
  ['missing', 'the outline of a box', (marks) => marks.delete('box')],
  [
    'name not whole',
    'a name cut',
    (marks) => marks.set('place name', [text('name', 'shelf', 'She…', 70, 117)]),
  ],
  [
    'row outside its tray',
    'a thing',
    (marks) => marks.set('prize', [text('name', 'loaf', 'Loaf', 440, 400)]),
  ],
  ['link neither drawn nor told', 'a line left out', (marks) => marks.delete('needed')],
  ['link told at one end', 'at the thing alone', (marks) => marks.delete('told at the bar')],
  [
    'link drawn and told',
    'both',
    (marks) => add(marks, { ...text('reference', 'map', '→ 2', 120, 155), links: ['map>sum'] }),
  ],
  [
    'link told wrong',
    'the number of another step',
    (marks) =>
      marks.set('told at the thing', [
        { ...text('reference', 'list', '→ 3', 150, 170), links: ['list>sum'] },
      ]),
  ],
  [
    'line without its end',
    'away from its row',
    (marks) => marks.set('needed', [line(['map>sum'], [150, 155], [200, 155], [200, 125], [230, 125])]),
  ],
  [
    'line without its end',
    'away from its lock',
    (marks) => marks.set('opens', [line(['sum>wheels'], [350, 143], [380, 143])]),
  ],
  [
    'line without its end',
    'in pieces',
    (marks) =>
      marks.set('opens', [
        line(['sum>wheels'], [350, 143], [370, 143]),
        line(['sum>wheels'], [380, 143], [404, 143]),
      ]),
  ],
  ['unknown link', 'a line of nothing', (marks) => add(marks, line(['nothing'], [300, 300], [400, 300]))],
  ['step number', 'left out', (marks) => marks.delete('place number')],
  [
    'step number',
    'of another step',
    (marks) =>
      marks.set('bar number', [
        area('step', 'sum', [234, 116, 250, 132]),
        text('step', 'sum', '1', 239, 127),
      ]),
  ],
  ['step number', 'twice', (marks) => add(marks, text('step', 'sum', '2', 300, 400))],
  ['code missing', 'on the lock', (marks) => marks.set('code', [text('code', 'wheels', '47 8', 440, 146)])],
  ['code missing', 'at the puzzle', (marks) => marks.delete('answer')],
  ['tick boxes', 'one for two teams', (marks) => marks.set('ticks', (marks.get('ticks') ?? []).slice(0, 1))],
  [
    'tick boxes',
    'too small',
    (marks) =>
      marks.set('ticks', [
        area('tick', 'wheels', [480, 137, 490, 147]),
        area('tick', 'wheels', [500, 137, 510, 147]),
      ]),
  ],
  ['page number', 'wrong', (marks) => marks.set('page', [text('plain', undefined, 'Page 1 of 2', 480, 50)])],
  ['page number', 'left out', (marks) => marks.delete('page')],
];

describe('each fault is found', () => {
  test.each(SPOILT)('%s: %s', (kind, _, spoil) => {
    expect(faultsOf(spoil).map((fault) => fault.kind)).toContain(kind);
  });
});

describe('what the options leave out is not on the page', () => {
  test('codes', () => {
    const marksWithout = (marks: Marks) => {
      marks.delete('code');
      marks.delete('answer');
    };
    expect(faultsOf(marksWithout, { ...OPTIONS, codes: false })).toEqual([]);
    const hidden = (marks: Marks) => {
      marksWithout(marks);
      marks.set('rescue', [text('rescue', 'sum', 'It is 47 28.', 250, 220)]);
    };
    expect(faultsOf(hidden, { ...OPTIONS, codes: false })).toMatchObject([{ kind: 'code given away' }]);
    expect(faultsOf(() => undefined, { ...OPTIONS, codes: false })[0]).toMatchObject({
      kind: 'code given away',
    });
  });

  test.each([
    ['times', 'minutes'],
    ['rescue', 'rescue'],
  ] as const)('%s', (option, name) => {
    const without = { ...OPTIONS, [option]: false };
    expect(faultsOf(() => undefined, without)).toMatchObject([{ kind: 'left out by the options' }]);
    expect(faultsOf((marks) => marks.delete(name), without)).toEqual([]);
  });

  test('boxes to tick', () => {
    const without = { ...OPTIONS, ticks: false };
    expect(faultsOf(() => undefined, without)).toMatchObject([{ kind: 'tick boxes' }]);
    expect(faultsOf((marks) => marks.delete('ticks'), without)).toEqual([]);
  });
});

test('a game that cannot be won wants its band', () => {
  const { game } = HAND_MADE;
  const closed = assess({ ...game, links: new Map([...game.links].filter(([id]) => id !== 'sum>wheels')) });
  const spoil = (marks: Marks) => {
    marks.delete('opens');
    marks.delete('lock number');
  };
  expect(faultsOf(spoil, OPTIONS, closed)).toMatchObject([{ kind: 'no band' }]);
  const withBand = (marks: Marks) => {
    spoil(marks);
    add(
      marks,
      area('plain', undefined, [40, 60, 540, 80], 'stopSoft'),
      text('plain', undefined, 'No way', 50, 74),
    );
  };
  expect(faultsOf(withBand, OPTIONS, closed)).toEqual([]);
});

test('a thing told to another page says which', () => {
  const marks = cleanMarks();
  const second: Marks = new Map();
  for (const name of ['bar', 'bar number', 'bar name', 'answer', 'told at the bar', 'minutes', 'rescue']) {
    second.set(name, marks.get(name) ?? []);
    marks.delete(name);
  }
  marks.delete('needed');
  marks.delete('opens');
  const said = (name: string, of: string, words: string, links: string[]): Mark => {
    const { x, y } = textNamed(cleanMarks(), name);
    return { ...text('reference', of, words, x, y), links };
  };
  marks.set('page', [text('plain', undefined, 'Page 1 of 2', 480, 50)]);
  second.set('page', [text('plain', undefined, 'Page 2 of 2', 480, 50)]);
  marks.set('told at the thing', [
    said('told at the thing', 'list', '→ 2', ['list>sum']),
    { ...text('reference', 'map', '→ 2', 120, 145), links: ['map>sum'] },
    { ...text('reference', 'wheels', 'from 2', 510, 180), links: ['sum>wheels'] },
  ]);
  second.set('told at the bar', [
    said('told at the bar', 'sum', '+ List, Map (1)', ['list>sum', 'map>sum']),
    { ...text('reference', 'sum', '→ 3 (page 1)', 256, 155), links: ['sum>wheels'] },
  ]);
  second.delete('minutes');
  const drawings = [drawingOf(marks), drawingOf(second)];
  // '2' is both the number of the step and its page.
  expect(checkMap(drawings, HAND_MADE, OPTIONS).faults).toEqual([]);
  second.set('told at the bar', [
    said('told at the bar', 'sum', '+ List, Map', ['list>sum', 'map>sum']),
    { ...text('reference', 'sum', '→ 3', 256, 155), links: ['sum>wheels'] },
  ]);
  const faults = checkMap([drawingOf(marks), drawingOf(second)], HAND_MADE, OPTIONS).faults;
  expect(faults.map(({ kind }) => kind)).toEqual(['link told wrong', 'link told wrong', 'link told wrong']);
});

test('a list is checked as a page', () => {
  const page = { width: 595, height: 842, marks: [text('plain', undefined, 'Page 1 of 1', 480, 50)] };
  const faults = (drawing: Drawing) =>
    checkRun([{ name: 'order', pages: [drawing] }], HAND_MADE, OPTIONS).faults;
  expect(faults(page)).toEqual([]);
  const spoilt = { ...page, marks: [...page.marks, text('plain', undefined, 'Codes', 482, 52)] };
  expect(faults(spoilt)).toMatchObject([{ kind: 'overlap' }]);
});
