/** A tray with all that lies in it, and where a line may reach into it. */
import type { NodeId } from '../../../game/model.ts';
import type { Side } from '../../../map/layout.ts';
import { CONTINUED_WIDEST } from '../../../words/sheet-map.ts';
import type { Mark } from '../../drawing.ts';
import { moved } from '../../marks.ts';
import type { Facts } from '../content/facts.ts';
import { isOpening, isOwnRow, type Opening, type Tellings, type Tray, type TrayRow } from '../content.ts';
import type { MeasuredTray } from '../measured.ts';
import type { TrayFigure } from './figure.ts';
import { captionRow, continuedLook, continuedRoom, headRow } from './head.ts';
import { lockRow } from './lock.ts';
import { textLines } from './pieces.ts';
import type { RowFigure } from './row.ts';
import { thingRow } from './thing.ts';
import { type Type, typeOf } from './type.ts';
import { backdrop, hasp } from './wall-marks.ts';
import { type TrayWalls, wallsOf } from './walls.ts';

/** Under the last row inside a wall, and between a wall and the next below it. */
const INSIDE = 0.35;
const BELOW = 0.4;

/** Where a tray that is cut goes on, when that is known. */
export interface Continuation {
  readonly from: string;
  readonly on: string;
}

const [UNKNOWN_PLACE] = CONTINUED_WIDEST;
/** For measuring. */
const UNKNOWN: Continuation = { from: UNKNOWN_PLACE, on: UNKNOWN_PLACE };

/** What is open while rows are set. */
interface Opened {
  readonly row: Opening;
  readonly top: number;
  /** Of what is drawn under its rows: in the order in which trays begin, outer before inner. */
  readonly slot: number;
  /** Middles of the plates on it. */
  readonly locks: number[];
}

export function trayFigure(
  facts: Facts,
  tray: Tray,
  side: Side,
  size: number,
  width: number,
  told: Tellings,
  continuation: Continuation = UNKNOWN,
): TrayFigure {
  const type = typeOf(size);
  const walls = wallsIn(facts, tray, side, width, type);
  const ends = new Map<NodeId, number>();
  const reach = new Map<NodeId, number>();
  const tops: number[] = [];
  const marks: Mark[] = [];
  const under: (readonly Mark[])[] = [];
  const open: Opened[] = [];
  let y = 0;
  for (const row of tray.rows) {
    tops.push(y);
    const figure = rowFigure(facts, row, walls, told, continuation, type);
    for (const mark of figure.marks) marks.push(moved(mark, 0, y));
    if (isOwnRow(row) && figure.middle !== undefined) {
      ends.set(row.id, y + figure.middle);
      if (figure.reach !== undefined) reach.set(row.id, figure.reach);
    }
    if (isOpening(row)) {
      under.push([]);
      open.push({ row, top: y, slot: under.length - 1, locks: [] });
    } else if (row.row === 'lock') open.at(-1)?.locks.push(y + (figure.middle ?? 0));
    y += figure.height;
    if (row.row === 'foot') {
      const closed = open.pop();
      if (!closed) continue;
      const bottom = y - (row.depth > 0 ? BELOW * size : 0);
      under[closed.slot] = [
        ...backdrop(facts, closed.row, { top: closed.top, bottom, continues: row.continues }, walls, type),
        ...hasp(walls, row.depth, closed.locks, type),
      ];
    }
  }
  tops.push(y);
  return { height: y, marks: [...under.flat(), ...marks], ends, reach, tops };
}

function wallsIn(facts: Facts, tray: Tray, side: Side, width: number, type: Type): TrayWalls {
  const [first] = tray.rows;
  const isBox = first?.row === 'head' && facts.node(first.id)?.kind === 'container';
  return wallsOf(tray, side, width, type, isBox);
}

type RowSize = Pick<RowFigure, 'height' | 'middle'>;

/** A layout measures the same rows over and over, in trays that were cut elsewhere or tell something else. */
const rowSizes = new WeakMap<Facts, Map<string, RowSize>>();

/** The same as of the figure, without its marks; rows are kept apart by all that their height depends on. */
export function trayMeasured(
  facts: Facts,
  tray: Tray,
  size: number,
  width: number,
  told: Tellings,
): MeasuredTray {
  const type = typeOf(size);
  const walls = wallsIn(facts, tray, 'left', width, type);
  const known = rowSizes.get(facts) ?? new Map<string, RowSize>();
  rowSizes.set(facts, known);
  const ends = new Map<NodeId, number>();
  const tops: number[] = [];
  let y = 0;
  for (const row of tray.rows) {
    tops.push(y);
    const key = rowKey(row, walls, told, size);
    let measured = known.get(key);
    if (!measured) {
      const { height, middle } = rowFigure(facts, row, walls, told, UNKNOWN, type);
      measured = { height, ...(middle !== undefined && { middle }) };
      known.set(key, measured);
    }
    if (isOwnRow(row) && measured.middle !== undefined) ends.set(row.id, y + measured.middle);
    y += measured.height;
  }
  tops.push(y);
  return { height: y, ends, tops };
}

function rowKey(row: TrayRow, walls: TrayWalls, told: Tellings, size: number): string {
  const { left, right } = walls.at(row.depth);
  const isCut = isOpening(row) ? row.continued : row.row === 'foot' && row.continues;
  let key = `${row.row} ${isCut} ${row.depth} ${size} ${left} ${right} ${walls.overhang}`;
  if (row.row === 'foot') return key;
  if (row.row === 'caption') return `${key} ${row.caption}`;
  key += ` ${row.id}`;
  for (const { link, otherEnd, elsewhere } of told.get(row.id) ?? []) {
    const where = elsewhere ? ('page' in elsewhere ? elsewhere.page : elsewhere.half) : '';
    key += `\n${otherEnd} ${where} ${link}`;
  }
  return key;
}

function rowFigure(
  facts: Facts,
  row: TrayRow,
  walls: TrayWalls,
  told: Tellings,
  continuation: Continuation,
  type: Type,
): RowFigure {
  switch (row.row) {
    case 'head': {
      const continued = row.continued ? continuation.from : '';
      return headRow(facts, { id: row.id, depth: row.depth, continued }, walls, told.get(row.id) ?? [], type);
    }
    case 'caption': {
      const continued = row.continued ? continuation.from : '';
      return captionRow({ caption: row.caption, depth: row.depth, continued }, walls, type);
    }
    case 'lock':
      return lockRow(facts, row.id, row.depth, walls, told.get(row.id) ?? [], type);
    case 'thing':
      return thingRow(facts, row.id, row.depth, walls, told.get(row.id) ?? [], type);
    case 'foot':
      return footRow(continuedLook(row.id), row.depth, row.continues ? continuation.on : '', walls, type);
  }
}

function footRow(
  look: ReturnType<typeof continuedLook>,
  depth: number,
  continues: string,
  walls: TrayWalls,
  type: Type,
): RowFigure {
  const { size } = type;
  const height = (INSIDE + (depth > 0 ? BELOW : 0)) * size;
  if (continues === '') return { height, marks: [] };
  const { left, right } = walls.at(depth);
  const pad = 0.6 * size;
  const lines = textLines(continues, right - left - 2 * pad, type.note, look);
  return {
    height: height + continuedRoom(right - left - 2 * pad, type) * type.line,
    marks: lines.flatMap((line, i) =>
      line.marks.map((mark) => moved(mark, left + pad, type.line / 2 + i * type.line)),
    ),
  };
}
