/**
 * The paginator: rows one under another onto as many pages as they take. Headings come again where what they head goes on, none
 * stands alone at the foot of a page, and a row is torn only when it is taller than a page: between its strips.
 */
import type { Mark } from './drawing.ts';
import { movedDown } from './marks.ts';

/** What is never torn, such as one line of text. Its marks have their x on the page and their y from its own upper edge. */
export interface Strip {
  readonly height: number;
  readonly marks: readonly Mark[];
}

export interface Row {
  /** Side by side, each from top to bottom. */
  readonly cells: readonly (readonly Strip[])[];
  /** Under the tallest of the cells. */
  readonly below?: readonly Strip[];
  /** Space above; none at the top of a page. */
  readonly before: number;
}

/** What is drawn under the rows of one section on one page, such as the walls of a box. Heights are on the page. */
export type Backdrop = (part: {
  readonly top: number;
  readonly bottom: number;
  /** It began on a page before, or goes on on the next. */
  readonly continued: boolean;
  readonly continues: boolean;
}) => readonly Mark[];

export interface Section {
  /** Comes again, as continued, on each page that the section goes on to. */
  readonly heading?: (continued: boolean) => Row;
  readonly rows: readonly Row[];
  readonly backdrop?: Backdrop;
  /** Space kept inside the backdrop, below the last row. */
  readonly padding?: number;
}

export interface Flow {
  /** Heads of columns: at the top of every page. */
  readonly heads?: Row;
  readonly sections: readonly Section[];
}

/** Heights on the page between which rows stand. */
export interface FlowFrame {
  readonly first: number;
  readonly others: number;
  readonly bottom: number;
}

/** A section that takes no more than this part of a page is not torn. */
const KEPT_WHOLE = 0.35;
/** A heading that takes more than this part of a page is torn as a row is, and does not come again. */
const TALL_HEADING = 0.4;

/** What sums of heights may differ by without a meaning. */
const ROUNDING = 1e-6;

export function heightOf(row: Row): number {
  return cellsHeight(row) + stripsHeight(row.below ?? []);
}

function cellsHeight(row: Row): number {
  return Math.max(0, ...row.cells.map(stripsHeight));
}

export function stripsHeight(strips: readonly Strip[]): number {
  return strips.reduce((sum, { height }) => sum + height, 0);
}

/** The marks of each page. There is at least one page. */
export function paginate(flow: Flow, frame: FlowFrame): Mark[][] {
  const pages = new Pages(flow, frame);
  for (const section of flow.sections) pages.add(section);
  return pages.made;
}

/** Share of the space between rows that is left where they stand closer. */
const CLOSER = 0.5;

/** The same with rows a little closer where that saves a page: the last would hold next to nothing. */
export function fewestPages(flow: Flow, frame: FlowFrame): Mark[][] {
  const usual = paginate(flow, frame);
  if (usual.length < 2) return usual;
  const closer = (row: Row): Row => ({ ...row, before: CLOSER * row.before });
  const sections = flow.sections.map((section) => ({ ...section, rows: section.rows.map(closer) }));
  const tight = paginate({ ...flow, sections }, frame);
  return tight.length < usual.length ? tight : usual;
}

class Pages {
  readonly made: Mark[][] = [];
  readonly #heads: Row | undefined;
  readonly #frame: FlowFrame;
  #page: Mark[] = [];
  #y = 0;
  /** Nothing stands on the page yet but heads. */
  #isFresh = true;

  constructor(flow: Flow, frame: FlowFrame) {
    this.#heads = flow.heads;
    this.#frame = frame;
    this.#turn();
  }

  add(section: Section): void {
    const { heading, rows, padding = 0 } = section;
    const head = heading?.(false);
    const page = this.#frame.bottom - this.#frame.others;
    if (head && heightOf(head) > page * TALL_HEADING) {
      const { heading: _, ...rest } = section;
      this.add({ ...rest, rows: [head, ...rows] });
      return;
    }
    const [first] = rows;
    const spaceFor = (some: readonly Row[]) =>
      some.reduce((sum, row) => sum + row.before + heightOf(row), 0) + padding;
    const above = head ? [head] : [];
    const whole = spaceFor([...above, ...rows]);
    const least = first ? spaceFor([...above, first]) : 0;
    if (!this.#isFresh && !this.#fits(whole <= page * KEPT_WHOLE ? whole : least)) this.#turn();

    let part = this.#open(head, false);
    for (let row of rows) {
      if (heightOf(row) > this.#room(row, padding)) {
        if (!part.isEmpty) part = this.#next(section, part);
        // Taller than a page: as much as fits, then the rest.
        for (let room = this.#room(row, padding); heightOf(row) > room; room = this.#room(row, padding)) {
          const [now, rest] = tear(row, room);
          this.#place(now);
          row = rest;
          part = this.#next(section, part);
        }
      }
      this.#place(row);
      part.isEmpty = false;
    }
    this.#close(section, part, false);
  }

  /** For a row, after the space above it. */
  #room({ before }: Row, padding: number): number {
    const room = this.#frame.bottom - this.#y - (this.#isFresh ? 0 : before) - padding;
    return room + ROUNDING;
  }

  #fits(height: number): boolean {
    return this.#y + height <= this.#frame.bottom + ROUNDING;
  }

  #turn(): void {
    this.#page = [];
    this.#y = this.made.length === 0 ? this.#frame.first : this.#frame.others;
    this.made.push(this.#page);
    this.#isFresh = true;
    if (this.#heads) this.#place(this.#heads);
    this.#isFresh = true;
  }

  #place(row: Row): void {
    if (!this.#isFresh) this.#y += row.before;
    for (const strips of row.cells) this.#stack(strips, this.#y);
    this.#stack(row.below ?? [], this.#y + cellsHeight(row));
    this.#y += heightOf(row);
    this.#isFresh = false;
  }

  #stack(strips: readonly Strip[], top: number): void {
    let y = top;
    for (const { height, marks } of strips) {
      for (const mark of marks) this.#page.push(movedDown(mark, y));
      y += height;
    }
  }

  #open(head: Row | undefined, continued: boolean): Part {
    const before = this.#isFresh ? 0 : (head?.before ?? 0);
    const part = { top: this.#y + before, at: this.#page.length, continued, isEmpty: true };
    if (head) this.#place(head);
    return part;
  }

  #next(section: Section, part: Part): Part {
    this.#close(section, part, true);
    this.#turn();
    return this.#open(section.heading?.(true), true);
  }

  /** The backdrop goes under what was placed since the part was opened. */
  #close({ backdrop, padding = 0 }: Section, { top, at, continued }: Part, continues: boolean): void {
    this.#y += padding;
    if (backdrop) this.#page.splice(at, 0, ...backdrop({ top, bottom: this.#y, continued, continues }));
  }
}

interface Part {
  readonly top: number;
  /** How many marks the page had when it was opened. */
  readonly at: number;
  readonly continued: boolean;
  isEmpty: boolean;
}

/** As many strips as fit into the height, at least one in all; and the rest. */
function tear(row: Row, height: number): [Row, Row] {
  const counts = row.cells.map((strips) => fitting(strips, height));
  const isTorn = row.cells.some((strips, i) => (counts[i] ?? 0) < strips.length);
  if (!isTorn) {
    const below = row.below ?? [];
    const above = cellsHeight(row);
    const count = Math.max(above > 0 ? 0 : 1, fitting(below, height - above));
    return [
      { ...row, below: below.slice(0, count) },
      { before: 0, cells: [], below: below.slice(count) },
    ];
  }
  const isStuck = counts.every((count, i) => count === 0 || row.cells[i]?.length === 0);
  const taken = isStuck ? counts.map(() => 1) : counts;
  return [
    { before: row.before, cells: row.cells.map((strips, i) => strips.slice(0, taken[i])) },
    { ...row, before: 0, cells: row.cells.map((strips, i) => strips.slice(taken[i])) },
  ];
}

function fitting(strips: readonly Strip[], height: number): number {
  let used = 0;
  let count = 0;
  for (const strip of strips) {
    used += strip.height;
    if (used > height) break;
    count += 1;
  }
  return count;
}
