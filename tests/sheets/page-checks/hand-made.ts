/** A page drawn by hand, right in everything, to be spoilt in one thing at a time. */
import { assess } from '../../../src/findings/assess.ts';
import type {
  AreaMark,
  AreaRole,
  Drawing,
  Ink,
  LineMark,
  Mark,
  TextMark,
  TextRole,
} from '../../../src/sheets/drawing.ts';
import { millimetres, paperOf } from '../../../src/sheets/paper.ts';
import type { SheetOptions } from '../../../src/sheets/sheet.ts';
import { textWidth } from '../../../src/type/text.ts';
import { gameOf } from '../../game-of.ts';

export const OPTIONS: SheetOptions = {
  paper: 'A4',
  orientation: 'portrait',
  codes: true,
  times: true,
  rescue: true,
  ticks: true,
  colour: true,
  sheets: ['map'],
};

const game = gameOf(
  [
    { id: 'shelf', kind: 'place', name: 'Shelf' },
    { id: 'map', kind: 'clue', name: 'Map', in: 'shelf' },
    { id: 'list', kind: 'clue', name: 'List', in: 'shelf' },
    { id: 'sum', kind: 'puzzle', name: 'Add', answer: '4728' },
    { id: 'tin', kind: 'container', name: 'Tin' },
    { id: 'wheels', kind: 'fastener', name: '', on: 'tin', type: 'number', code: '4728' },
    { id: 'loaf', kind: 'prize', name: 'Loaf', in: 'tin' },
  ],
  ['map>sum', 'list>sum', 'sum>wheels'],
);

/** Can be won in three steps: the shelf, the sum, the lock on the tin. */
export const HAND_MADE = assess({ ...game, head: { lesson: { teams: 2 } } });

export function text(role: TextRole, of: string | undefined, words: string, x: number, y: number): TextMark {
  const style = { size: 9, weight: 'regular', family: role === 'code' ? 'codes' : 'words' } as const;
  return {
    mark: 'text',
    role,
    ...(of !== undefined && { of }),
    text: words,
    x,
    y,
    align: 'start',
    width: textWidth(words, style),
    ...style,
    ink: 'ink',
  };
}

export function area(
  role: AreaRole,
  of: string | undefined,
  box: readonly [left: number, top: number, right: number, bottom: number],
  fill?: Ink,
): AreaMark {
  const [left, top, right, bottom] = box;
  return {
    mark: 'area',
    role,
    ...(of !== undefined && { of }),
    corners: [
      { x: left, y: top },
      { x: right, y: top },
      { x: right, y: bottom },
      { x: left, y: bottom },
    ],
    ...(fill && { fill }),
    stroke: 'ink',
    width: 0.5,
  };
}

export function line(links: readonly string[], ...points: readonly (readonly [number, number])[]): LineMark {
  return {
    mark: 'line',
    role: 'link',
    links,
    points: points.map(([x, y]) => ({ x, y })),
    width: 0.75,
    ink: 'ink',
    arrow: true,
  };
}

function step(of: string, number: string, x: number, y: number): Mark[] {
  return [area('step', of, [x, y, x + 16, y + 16], 'ink'), text('step', of, number, x + 5, y + 11)];
}

const SIDE = millimetres(4);
const tick = (of: string, x: number, y: number) => area('tick', of, [x, y, x + SIDE, y + SIDE]);

/** By name, so that a test can take one away or change it. Painted in this order. */
export function cleanMarks(): Map<string, Mark[]> {
  return new Map<string, Mark[]>([
    ['title', [text('title', undefined, 'The lighthouse', 40, 50)]],
    ['page', [text('plain', undefined, 'Page 1 of 1', 480, 50)]],
    ['place', [area('place', 'shelf', [40, 100, 180, 190])]],
    ['place number', step('shelf', '1', 46, 106)],
    ['place name', [text('name', 'shelf', 'Shelf', 70, 117)]],
    [
      'thing',
      [
        text('name', 'map', 'Map', 60, 145),
        { mark: 'sign', sign: 'clue', of: 'map', x: 46, y: 136, size: 10, ink: 'ink' },
      ],
    ],
    ['told thing', [text('name', 'list', 'List', 60, 170)]],
    ['told at the thing', [{ ...text('reference', 'list', '→ 2', 150, 170), links: ['list>sum'] }]],
    ['bar', [area('puzzle', 'sum', [230, 110, 350, 180])]],
    ['bar number', step('sum', '2', 234, 116)],
    ['bar name', [text('name', 'sum', 'Add', 256, 127)]],
    ['answer', [text('code', 'sum', '4728', 290, 127)]],
    ['told at the bar', [{ ...text('reference', 'sum', '+ List (Shelf)', 256, 145), links: ['list>sum'] }]],
    ['minutes', [text('minutes', 'sum', '5 min', 256, 165)]],
    ['group', [area('group', undefined, [400, 95, 555, 230])]],
    ['caption', [text('plain', undefined, 'On the tables', 410, 108)]],
    ['box', [area('container', 'tin', [410, 115, 545, 220])]],
    ['box name', [text('name', 'tin', 'Tin', 420, 127)]],
    ['plate', [area('plate', 'wheels', [404, 134, 540, 152], 'metalSoft')]],
    ['lock number', step('wheels', '3', 420, 135)],
    ['code', [text('code', 'wheels', '4728', 440, 146)]],
    ['ticks', [tick('wheels', 480, 137), tick('wheels', 500, 137)]],
    ['prize', [text('name', 'loaf', 'Loaf', 440, 180)]],
    ['needed', [line(['map>sum'], [82, 142], [200, 142], [200, 125], [230, 125])]],
    ['opens', [line(['sum>wheels'], [350, 143], [404, 143])]],
    ['rescue', [text('rescue', 'sum', 'Say: count again.', 250, 220)]],
  ]);
}

export function drawingOf(marks: ReadonlyMap<string, readonly Mark[]>): Drawing {
  const { width, height } = paperOf('A4', 'portrait');
  return { width, height, marks: [...marks.values()].flat() };
}
