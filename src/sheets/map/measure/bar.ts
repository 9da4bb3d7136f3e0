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
  type Line,
  lineOf,
  notePieces,
  signPiece,
  stepPiece,
  textLines,
} from './pieces.ts';
import { puzzleTelling, tellingLines } from './told.ts';
import { type Type, typeOf } from './type.ts';

const PAD = 0.45;
const CUT = 0.65;
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
  const lines = linesOf(facts, id, width - x - pad, type, told);
  const height = Math.max(type.circle, lines.length * type.line) + 2 * pad;
  const first = pad + Math.max(type.circle, type.line) / 2;
  const used = first - type.line / 2 + lines.length * type.line + pad;
  const full = Math.max(height, used);
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
    ],
    ends: new Map([[id, first]]),
    entries: entriesOf(full, CUT * size + 2),
  };
}

function linesOf(facts: Facts, id: NodeId, width: number, type: Type, told: readonly Told[]): Line[] {
  const lines = textLines(facts.name(id), width, type.name, { role: 'name', of: id });
  const arrow = signPiece('leadsTo', type.size, 'ink', 0, id);
  const answer = answerLines(facts, id, width - arrow.width - type.gap, type) ?? [];
  for (const [i, line] of answer.entries()) {
    lines.push(
      i === 0
        ? extended(lineOf([arrow]), [{ ...line, before: type.gap }])
        : extended({ width: arrow.width, marks: [] }, [{ ...line, before: type.gap }]),
    );
  }
  const minutes = facts.minutes(id);
  const remarks = [...facts.remarks(id), ...(facts.isReached(id) ? [] : [NOTES.neverReached])];
  lines.push(...broken(notePieces(minutes, remarks, id, width, type), width));
  const inOrder = [...told].sort((a, b) => Number(a.otherEnd === 'to') - Number(b.otherEnd === 'to'));
  lines.push(...tellingLines(inOrder, (one) => puzzleTelling(facts, one), id, width, type));
  return lines;
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
