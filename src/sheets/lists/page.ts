/** A list on its pages: title, what the list is for, columns, and a margin left free for pencil notes. */
import type { Assessment } from '../../findings/assess.ts';
import { titleOf } from '../../words/keep.ts';
import { COLUMNS, CONTINUED } from '../../words/lists.ts';
import type { Sentence } from '../../words/sentence.ts';
import { lessonText, SHEET_TITLES } from '../../words/sheets.ts';
import type { Drawing, Mark } from '../drawing.ts';
import { type Flow, fewestPages, type Row, type Section, type Strip, stripsHeight } from '../flow.ts';
import { FOOT_HEIGHT } from '../foot.ts';
import { bandMarks, headingOf } from '../map/draw/heading.ts';
import { movedDown, rule, textMark } from '../marks.ts';
import { millimetres, type Paper } from '../paper.ts';
import { prose } from '../prose.ts';
import type { LayoutOptions, SheetName } from '../sheet.ts';
import { space } from './parts.ts';
import { SMALL, TEXT } from './type.ts';

/** Left and right edge of what is printed. */
export interface Columns {
  readonly left: number;
  readonly right: number;
}

/** At the outer edge, beside the margin of every page. */
const PENCIL = millimetres(20);
const PENCIL_GAP = millimetres(4);

export function columnsOf(paper: Paper): Columns {
  return { left: paper.margin, right: paper.width - paper.margin - PENCIL };
}

export interface ListContent {
  readonly name: SheetName;
  /** Under the title; a paragraph each. */
  readonly intro: readonly Sentence[];
  readonly flow: Flow;
}

export interface ListFrame {
  readonly assessment: Assessment;
  readonly options: LayoutOptions;
  readonly paper: Paper;
}

/** A head that takes more of the first page than this is torn as a row is: a title may have thousands of letters. */
const TALLEST_HEAD = 0.6;

/** Without the foot, which knows how many pages there are in all. */
export function listPages(content: ListContent, frame: ListFrame): Drawing[] {
  const { paper } = frame;
  const { margin, width, height } = paper;
  const head = headStrips(content, frame);
  const again = againStrips(content, paper);
  const isEndless = stripsHeight(head) > height * TALLEST_HEAD;
  const first = isEndless ? [] : head;
  const above: Section[] = isEndless ? [{ rows: [{ before: 0, cells: [head] }] }] : [];
  const pages = fewestPages(
    { ...content.flow, sections: [...above, ...content.flow.sections] },
    {
      first: margin + stripsHeight(first),
      others: margin + stripsHeight(again),
      bottom: height - margin - FOOT_HEIGHT,
    },
  );
  return pages.map((marks, page) => ({
    width,
    height,
    marks: [...stacked(page === 0 ? first : again, margin), ...pencilMargin(paper), ...marks],
  }));
}

function stacked(strips: readonly Strip[], top: number): Mark[] {
  let y = top;
  return strips.flatMap((strip) => {
    const marks = strip.marks.map((mark) => movedDown(mark, y));
    y += strip.height;
    return marks;
  });
}

const TITLE_TYPE = { size: 17, leading: 21 } as const;
const LESSON_TYPE = { size: 9, ink: 'second' } as const;

function headStrips({ name, intro }: ListContent, { assessment, options, paper }: ListFrame): Strip[] {
  const { left, right } = columnsOf(paper);
  const wide = right - left;
  const title = prose([{ strong: SHEET_TITLES[name] }], left, wide, TITLE_TYPE);
  const lesson = textMark(lessonText(assessment.game), { x: right, y: 15 }, { ...LESSON_TYPE, align: 'end' });
  const game = prose([{ strong: titleOf(assessment.game.head.title) }], left, wide, TEXT);
  const paragraphs = intro.flatMap((text) => [
    space(5),
    ...prose(text, left, wide, { ...SMALL, ink: 'second' }),
  ]);
  return [
    { height: 0, marks: [lesson] },
    ...title,
    ...game,
    ...band(assessment, options, left, wide),
    ...paragraphs,
    space(10),
  ];
}

/** A game that cannot be won says so on whatever is printed of it. */
function band(assessment: Assessment, options: LayoutOptions, left: number, width: number): Strip[] {
  const { stop } = headingOf(assessment, options);
  return stop === undefined ? [] : [space(6), bandMarks(stop, left, width)];
}

function againStrips({ name }: ListContent, paper: Paper): Strip[] {
  const { left, right } = columnsOf(paper);
  return [...prose([{ strong: SHEET_TITLES[name] }, `, ${CONTINUED}`], left, right - left, TEXT), space(8)];
}

function pencilMargin(paper: Paper): Mark[] {
  const { right } = columnsOf(paper);
  const x = right + PENCIL_GAP;
  const top = paper.margin;
  const bottom = paper.height - paper.margin - FOOT_HEIGHT;
  return [
    rule({ x, y: top }, { x, y: bottom }, 0.5, 'hair', [0.5, 3]),
    textMark(COLUMNS.pencil, { x: x + 6, y: top + 8 }, { size: 8, ink: 'second' }),
  ];
}

/** A list that has nothing to list says so. */
export function saidAlone(text: string, paper: Paper): Section {
  const { left, right } = columnsOf(paper);
  return { rows: [{ before: 0, cells: [prose([text], left, right - left, TEXT)] }] };
}

/** Heads of columns over a line. */
export function headsRow(
  heads: readonly {
    readonly x: number;
    readonly text: string;
    readonly align?: 'start' | 'middle' | 'end';
  }[],
  { left, right }: Columns,
): Row {
  const marks = heads.map(({ x, text, align = 'start' }) =>
    textMark(text, { x, y: 8 }, { size: 8, weight: 'strong', ink: 'second', align }),
  );
  return {
    before: 0,
    cells: [[{ height: 18, marks: [...marks, rule({ x: left, y: 12 }, { x: right, y: 12 }, 1, 'ink')] }]],
  };
}
