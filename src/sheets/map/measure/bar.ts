/** A puzzle: a bar with cut corners; number, name, answer, minutes, and what is told and not drawn. */
import type { NodeId } from '../../../game/model.ts';
import { NOTES } from '../../../words/sheet-map.ts';
import type { Mark, Spot } from '../../drawing.ts';
import { moved } from '../../marks.ts';
import type { Facts } from '../content/facts.ts';
import type { Told } from '../content.ts';
import { answerLines } from './answer.ts';
import { type BarFigure, stacked } from './figure.ts';
import {
  broken,
  extended,
  givesPiece,
  type Line,
  lineOf,
  notePieces,
  stepPiece,
  textLines,
} from './pieces.ts';
import { puzzleTelling, tellingLines } from './told.ts';
import { type Type, typeOf } from './type.ts';

const PAD = 0.45;
const CUT = 0.65;
/** Told lines are given all of the bar where less than this is left beside the number. */
const NARROW = 10;
/** Between heights at which lines may arrive. */
const ENTRY_STEP = 2;
export const WALL = 1.5;

export function barFigure(
  facts: Facts,
  id: NodeId,
  size: number,
  width: number,
  told: readonly Told[],
): BarFigure {
  const type = typeOf(size);
  const pad = PAD * size;
  const number = stepPiece(facts.isReached(id) ? facts.number(id) : 0, type, id);
  const x = pad + number.width + 1.3 * type.gap;
  const lines = linesOf(facts, id, width - x - pad, type);
  // Under the number where there is little room beside it.
  const isNarrow = width - x - pad < NARROW * size && lines.length > 1;
  const toldX = isNarrow ? 1.2 * pad : x;
  const tellings = toldLines(facts, id, width - toldX - pad, type, told);
  const first = pad + Math.max(type.circle, type.line) / 2;
  const below = first - type.line / 2 + (lines.length + tellings.length) * type.line;
  const full = Math.max(pad + type.circle, below) + pad;
  const outline: Mark = {
    mark: 'area',
    role: 'puzzle',
    corners: cutCorners(width, full, Math.min(CUT * size, full / 3)),
    fill: 'paper',
    stroke: facts.isReached(id) ? 'ink' : 'second',
    width: WALL,
    of: id,
  };
  return {
    height: full,
    marks: [
      outline,
      ...number.marks.map((mark) => moved(mark, pad, first)),
      ...stacked(lines, x, first, type),
      ...stacked(tellings, toldX, first + lines.length * type.line, type),
    ],
    ends: new Map([[id, first]]),
    entries: entriesOf(full, CUT * size + 2),
  };
}

function linesOf(facts: Facts, id: NodeId, width: number, type: Type): Line[] {
  const lines = textLines(facts.name(id), width, type.name, { role: 'name', of: id });
  const gives = givesPiece(id, type);
  const answer = answerLines(facts, id, width - gives.width - type.gap, type) ?? [];
  for (const [i, line] of answer.entries()) {
    lines.push(
      i === 0
        ? extended(lineOf([gives]), [{ ...line, before: type.gap }])
        : extended({ width: gives.width, marks: [] }, [{ ...line, before: type.gap }]),
    );
  }
  const minutes = facts.minutes(id);
  const remarks = [...facts.remarks(id), ...(facts.isReached(id) ? [] : [NOTES.neverReached])];
  lines.push(...broken(notePieces(minutes, remarks, id, width, type), width));
  return lines;
}

/** What it needs, then what it leads to. */
function toldLines(facts: Facts, id: NodeId, width: number, type: Type, told: readonly Told[]): Line[] {
  const inOrder = [...told].sort((a, b) => Number(a.otherEnd === 'to') - Number(b.otherEnd === 'to'));
  return tellingLines(inOrder, (one) => puzzleTelling(facts, one), id, width, type);
}

function entriesOf(height: number, margin: number): number[] {
  const room = height - 2 * margin;
  const steps = Math.max(1, Math.floor(room / ENTRY_STEP));
  return Array.from({ length: steps + 1 }, (_, i) => margin + (room * i) / steps);
}

function cutCorners(width: number, height: number, cut: number): Spot[] {
  const w = WALL / 2;
  return [
    { x: cut, y: w },
    { x: width - cut, y: w },
    { x: width - w, y: cut },
    { x: width - w, y: height - cut },
    { x: width - cut, y: height - w },
    { x: cut, y: height - w },
    { x: w, y: height - cut },
    { x: w, y: cut },
  ];
}
