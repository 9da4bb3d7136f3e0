/** A puzzle: a bar with cut corners; number, name, answer, minutes, and what is told and not drawn. */
import type { NodeId } from '../../../game/model.ts';
import { NOTES } from '../../../words/sheet-map.ts';
import type { Mark, Spot } from '../../drawing.ts';
import { moved } from '../../marks.ts';
import type { Facts } from '../content/facts.ts';
import type { Told } from '../content.ts';
import { ENDS_APART } from '../measured.ts';
import { answerLines, givesLines, glanceWidth } from './answer.ts';
import { cappedLines } from './capped.ts';
import { type BarFigure, stacked } from './figure.ts';
import { broken, type Line, notePieces, stepPiece, textLines } from './pieces.ts';
import { puzzleLines } from './told.ts';
import { type Type, typeOf } from './type.ts';

const PAD = 0.45;
const CUT = 0.65;
/** Of what stands below the number, in paddings. */
const INDENT = 1.3;
/** Less than this beside the number is little. */
const NARROW = 7;
/** Of the first height at which a line may arrive, from the corner. */
const ENTRY_INSET = 2;
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
  const beside = width - x - pad;
  const names = textLines(facts.name(id), beside, type.name, { role: 'name', of: id });
  // Under the number where there is little room beside it, or where that saves breaking the answer.
  const isNarrow =
    width - pad - type.circle - 1.3 * type.gap - pad < NARROW * size ||
    pieces(facts, id, beside, type) > pieces(facts, id, width - (INDENT + 1) * pad, type);
  const belowX = isNarrow ? INDENT * pad : x;
  const lines = belowLines(facts, id, width - belowX - pad, type, told, names.length);
  const first = pad + Math.max(type.circle, type.line) / 2;
  const under = first + (names.length - 0.5) * type.line;
  const top = isNarrow ? Math.max(under, pad + type.circle + 0.1 * size) : under;
  const needed = Math.max(pad + type.circle, top + lines.length * type.line) + pad;
  const margin = CUT * size + ENTRY_INSET;
  const full = Math.max(needed, 2 * margin + ENDS_APART);
  const down = (full - needed) / 2;
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
      ...number.marks.map((mark) => moved(mark, pad, first + down)),
      ...stacked(names, x, first + down, type),
      ...stacked(lines, belowX, top + type.line / 2 + down, type),
    ],
    ends: new Map([[id, first + down]]),
    entries: entriesOf(full, margin),
  };
}

/** In how many the answer is broken. */
function pieces(facts: Facts, id: NodeId, width: number, type: Type): number {
  return answerLines(facts, id, width, type)?.length ?? 0;
}

/** In a bar that is no narrower, the answer of the puzzle is not broken, unless it is long. */
export function barWidthFor(facts: Facts, id: NodeId, size: number): number {
  const glance = glanceWidth(facts, id, typeOf(size));
  return glance > 0 ? Math.ceil(glance + (INDENT + 1) * PAD * size) : 0;
}

/** Answer, minutes, what it needs, what it leads to. */
function belowLines(
  facts: Facts,
  id: NodeId,
  width: number,
  type: Type,
  told: readonly Told[],
  above: number,
): Line[] {
  const remarks = [...facts.remarks(id), ...(facts.isReached(id) ? [] : [NOTES.neverReached])];
  const lines = [
    ...givesLines(facts, id, width, type),
    ...broken(notePieces(facts.minutes(id), remarks, id, width, type), width),
  ];
  const isInput = ({ otherEnd }: Told) => otherEnd === 'from';
  const tellings = (some: readonly Told[]) =>
    puzzleLines(facts, [...some.filter(isInput), ...some.filter((one) => !isInput(one))], id, width, type);
  // What it leads to matters most where not all can be told.
  const byWeight = [...told.filter((one) => !isInput(one)), ...told.filter(isInput)];
  return [
    ...lines,
    ...cappedLines(byWeight, tellings, { of: id, width, beside: above + lines.length }, facts.options, type),
  ];
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
