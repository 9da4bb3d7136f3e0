/** A lock as a row: its plate across the wall that faces the spine, and a box to tick for each team. */
import type { NodeId } from '../../../game/model.ts';
import { moved, rectangle } from '../../marks.ts';
import { lockSign } from '../../signs.ts';
import type { Facts } from '../content/facts.ts';
import type { Told } from '../content.ts';
import { cappedLines } from './capped.ts';
import { stacked } from './figure.ts';
import {
  continuedBackwards,
  continuedWith,
  type Line,
  lineOf,
  notePieces,
  type Piece,
  signPiece,
  stepPiece,
} from './pieces.ts';
import { positionLines } from './positions.ts';
import type { RowFigure } from './row.ts';
import { settingLines, statePieces } from './setting.ts';
import { tickMarks } from './ticks.ts';
import { plainLines, tellingsByNumber } from './told.ts';
import type { Type } from './type.ts';
import type { TrayWalls } from './walls.ts';

const PAD = 0.35;
/** Of what lies below or beside the plate. */
const CLEAR = 0.5;
const GAP = 0.45;
/** Above and below the text on a plate. */
const EDGE = 0.25;

export function lockRow(
  facts: Facts,
  id: NodeId,
  depth: number,
  walls: TrayWalls,
  told: readonly Told[],
  type: Type,
): RowFigure {
  const { size, line } = type;
  const { left, right } = walls.at(depth);
  const isLeft = walls.side === 'left';
  const edge = isLeft ? right + walls.overhang : left - walls.overhang;
  const pad = PAD * size;
  const room = right - left + walls.overhang - 0.6 * size - 2 * pad;
  const lead = lineOf(leadPieces(facts, id, isLeft, type));
  const beside = lead.width + 1.2 * type.gap;
  const { lines, below } = plateLines(facts, id, told, { room, beside, isLeft }, type);
  const inside = Math.max(0, ...lines.map(({ width }) => width));
  const first = lead.width + (inside > 0 ? 1.2 * type.gap + inside : 0);
  const plate = Math.max(first, ...below.map(({ width }) => width)) + 2 * pad;
  const x = isLeft ? edge - plate : edge;

  const top = (GAP * size) / 2;
  const head = Math.max(type.circle, line);
  const middle = top + EDGE * size + head / 2;
  const belowAt = Math.max(middle + lines.length * line, middle + head / 2 + line / 2);
  const bottom =
    Math.max(
      middle + head / 2,
      middle + (lines.length - 0.5) * line,
      below.length > 0 ? belowAt + (below.length - 0.5) * line : 0,
    ) +
    EDGE * size;
  const ticks = tickMarks(facts, id, {
    plate: isLeft ? { from: left + CLEAR * size, to: x } : { from: x + plate, to: right - CLEAR * size },
    below: { from: left + CLEAR * size, to: right - CLEAR * size },
    middle,
    bottom,
    isLeft,
  });
  const textX = isLeft ? edge - pad - beside : edge + pad + beside;
  return {
    height: Math.max(bottom, ticks.bottom) + top,
    middle,
    reach: edge,
    marks: [
      {
        mark: 'area',
        role: 'plate',
        corners: rectangle(x, top, plate, bottom - top),
        rounded: 2,
        fill: 'metalSoft',
        stroke: 'metal',
        width: 1,
        of: id,
      },
      ...lead.marks.map((mark) => moved(mark, isLeft ? edge - pad - lead.width : edge + pad, middle)),
      ...lines.flatMap((one, i) =>
        stacked([one], isLeft ? textX - one.width : textX, middle + i * line, type),
      ),
      ...stacked(below, x + pad, belowAt, type),
      ...ticks.marks,
    ],
  };
}

/** The number stands at the outer edge, where lines arrive. */
function leadPieces(facts: Facts, id: NodeId, isLeft: boolean, type: Type): Piece[] {
  const node = facts.node(id);
  const name = lockSign(node?.kind === 'fastener' ? node.type : undefined);
  const sign = signPiece(name, type.sign, 'metal', type.gap, id);
  if (!facts.isStep(id)) return [sign];
  const step = stepPiece(facts.number(id), type, id, type.gap);
  return isLeft ? [sign, step] : [step, sign];
}

interface PlateRoom {
  /** Inside the plate, from side to side. */
  readonly room: number;
  /** Of it for number and sign, on the first lines. */
  readonly beside: number;
  readonly isLeft: boolean;
}

/** What matters most stands next to the number; what is told, below it. */
function plateLines(
  facts: Facts,
  id: NodeId,
  told: readonly Told[],
  { room, beside, isLeft }: PlateRoom,
  type: Type,
): { readonly lines: readonly Line[]; readonly below: readonly Line[] } {
  // A code that would be broken beside the sign stands under it.
  const isBeside =
    settingLines(facts, id, told, room - beside, type).length <=
    settingLines(facts, id, told, room, type).length;
  const width = isBeside ? room - beside : room;
  const { numbers, others } = tellingsByNumber(facts, id, told, width, type);
  const isBackwards = isLeft && isBeside;
  const minutes = notePieces(facts.minutes(id), facts.remarks(id), id, width, type, 'ink', isBackwards);
  const pieces = [
    ...statePieces(facts, id, width, type),
    ...minutes.map((piece, i) => (i === 0 ? { ...piece, before: 1.5 * type.gap } : piece)),
    ...numbers,
  ];
  const set = isBackwards ? continuedBackwards : continuedWith;
  const lines = set(settingLines(facts, id, told, width, type), pieces, width);
  const tellingLines = (some: readonly Told[]) => {
    const leftOut = others.filter((one) => !some.includes(one));
    const positions = positionLines(facts, id, some, leftOut, room, type);
    return [...positions.lines, ...plainLines(facts, id, positions.others, room, type)];
  };
  const tellings = cappedLines(
    others,
    tellingLines,
    { of: id, width: room, beside: lines.length },
    facts.options,
    type,
  );
  return isBeside ? { lines, below: tellings } : { lines: [], below: [...lines, ...tellings] };
}
