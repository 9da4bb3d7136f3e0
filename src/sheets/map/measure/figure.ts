/** A part of the map, measured and drawn at once, from its own upper left corner. */
import type { NodeId } from '../../../game/model.ts';
import type { Mark } from '../../drawing.ts';
import { moved } from '../../marks.ts';
import type { Line } from './pieces.ts';
import type { Type } from './type.ts';

export interface Figure {
  readonly height: number;
  readonly marks: readonly Mark[];
  /** Where lines leave and arrive: the middle of the first line of the row of each node. */
  readonly ends: ReadonlyMap<NodeId, number>;
}

export interface TrayFigure extends Figure {
  /** Where each row begins, and at the end the lower edge of the last. */
  readonly tops: readonly number[];
  /** How far into the tray a line reaches, from its left edge: to the text, sign or plate that it means. */
  readonly reach: ReadonlyMap<NodeId, number>;
}

export interface BarFigure extends Figure {
  readonly entries: readonly number[];
}

/** Lines one under another, the middle of the first at y. */
export function stacked(lines: readonly Line[], x: number, y: number, type: Type): Mark[] {
  return lines.flatMap((line, i) => line.marks.map((mark) => moved(mark, x, y + i * type.line)));
}
