/** A thing as a row: number, sign, name, and behind it the numbers of the steps that it is told to be used in. */
import type { NodeId } from '../../../game/model.ts';
import type { Mark } from '../../drawing.ts';
import { moved } from '../../marks.ts';
import type { Facts } from '../content/facts.ts';
import type { Told } from '../content.ts';
import { givesLines } from './answer.ts';
import { stacked } from './figure.ts';
import {
  broken,
  continuedWith,
  type Line,
  lineOf,
  notePieces,
  type Piece,
  signPiece,
  stepPiece,
  textLines,
} from './pieces.ts';
import type { RowFigure } from './row.ts';
import { plainLines, tellingsByNumber } from './told.ts';
import type { Type } from './type.ts';
import type { TrayWalls } from './walls.ts';

const PAD = 0.6;
/** Least length of a line inside its tray. */
const STUB = 1.1;
const GAP = 0.3;
/** Told lines are given all of the row where less than this is left beside the sign. */
const NARROW = 8;

const SIGNS = { key: 'key', clue: 'clue', tool: 'tool', prize: 'prize' } as const;

export function thingRow(
  facts: Facts,
  id: NodeId,
  depth: number,
  walls: TrayWalls,
  told: readonly Told[],
  type: Type,
): RowFigure {
  const { size } = type;
  const { left, right } = walls.at(depth);
  const stub = STUB * size;
  const x = left + (walls.side === 'left' ? PAD * size : stub);
  const width = right - left - PAD * size - stub;
  const lead = lineOf(leadPieces(facts, id, type));
  const indent = lead.width + type.gap;
  const { numbers, others } = tellingsByNumber(facts, id, told, width - indent, type);
  const names = textLines(facts.name(id), width - indent, type.thing, { role: 'name', of: id });
  const named = continuedWith(names, numbers, width - indent);
  const isDrawn = told.length < (facts.degree.get(id) ?? 0);
  const more = moreLines(facts, id, width - indent, type);
  // Under the sign where there is little room beside it.
  const toldIndent = width - indent < NARROW * size ? 0 : indent;
  const tellings = plainLines(facts, id, others, width - toldIndent, type);
  const lines = [...named, ...more];
  const middle = (GAP * size) / 2 + type.line / 2;
  // A number that no line passes stands at the edge, where the eye runs down.
  const edge = !isDrawn && walls.side === 'left' ? right - PAD * size : x + width;
  const atEdge = numbers.length > 0 && !isDrawn && named.length === names.length;
  const marks: Mark[] = [
    ...lead.marks.map((mark) => moved(mark, x, middle)),
    ...(atEdge
      ? [
          ...stacked([...names, ...lines.slice(names.length)], x + indent, middle, type),
          ...edgeMarks(numbers, edge, middle + (names.length - 1) * type.line),
        ]
      : stacked(lines, x + indent, middle, type)),
    ...stacked(tellings, x + toldIndent, middle + lines.length * type.line, type),
  ];
  const end = x + indent + (lines[0]?.width ?? 0);
  return {
    height: Math.max((lines.length + tellings.length) * type.line, type.sign) + GAP * size,
    marks,
    middle,
    reach: walls.side === 'left' ? end + type.gap : x - 0.15 * size,
  };
}

function edgeMarks(numbers: readonly Piece[], edge: number, y: number): Mark[] {
  const line = lineOf(numbers);
  return line.marks.map((mark) => moved(mark, edge - line.width, y));
}

function leadPieces(facts: Facts, id: NodeId, type: Type): Piece[] {
  const kind = facts.node(id)?.kind;
  const sign = kind === 'key' || kind === 'tool' || kind === 'prize' ? SIGNS[kind] : SIGNS.clue;
  const pieces: Piece[] = [];
  if (facts.isStep(id)) pieces.push(stepPiece(facts.number(id), type, id));
  pieces.push(signPiece(sign, type.sign, 'ink', type.gap, id));
  return pieces;
}

function moreLines(facts: Facts, id: NodeId, width: number, type: Type): Line[] {
  return [
    ...givesLines(facts, id, width, type),
    ...broken(notePieces(facts.minutes(id), facts.remarks(id), id, width, type), width),
  ];
}
