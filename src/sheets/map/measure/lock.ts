/** A lock as a row: its plate across the wall that faces the spine, and a box to tick for each team. */
import type { NodeId } from '../../../game/model.ts';
import { LOCK_STATES } from '../../../words/canvas.ts';
import { list } from '../../../words/numbers.ts';
import { NOTES } from '../../../words/sheet-map.ts';
import type { Mark } from '../../drawing.ts';
import { moved, rectangle, rule, TICK, textMark, tickBox } from '../../marks.ts';
import { lockSign } from '../../signs.ts';
import type { Facts } from '../content/facts.ts';
import type { Told } from '../content.ts';
import { answerLines } from './answer.ts';
import { stacked } from './figure.ts';
import {
  continuedWith,
  type Line,
  lineOf,
  notePieces,
  signPiece,
  stepPiece,
  textLines,
  textPiece,
} from './pieces.ts';
import type { RowFigure } from './row.ts';
import { plainTelling, tellingLines, usesOf } from './told.ts';
import { dropOf, type Type } from './type.ts';
import type { TrayWalls } from './walls.ts';

const PAD = 0.35;
const GAP = 0.45;
/** Between boxes to tick. */
const TICK_GAP = 2;
/** A code that is not yet known is written in here. */
const BLANK = 5;

export function lockRow(
  facts: Facts,
  id: NodeId,
  depth: number,
  walls: TrayWalls,
  told: readonly Told[],
  type: Type,
): RowFigure {
  const { size } = type;
  const { left, right } = walls.at(depth);
  const isLeft = walls.side === 'left';
  const edge = isLeft ? right + walls.overhang : left - walls.overhang;
  const room = right - left + walls.overhang - 0.6 * size;
  const pad = PAD * size;
  const node = facts.node(id);
  const step = stepPiece(facts.number(id), type, id);
  const sign = signPiece(
    lockSign(node?.kind === 'fastener' ? node.type : undefined),
    type.sign,
    'metal',
    type.gap,
    id,
  );
  const lead = lineOf(
    facts.isStep(id) ? (isLeft ? [sign, { ...step, before: type.gap }] : [step, sign]) : [sign],
  );
  const textWidth = room - lead.width - 2 * pad - 1.2 * type.gap;
  const lines = plateLines(facts, id, told, textWidth, type);
  const inside = Math.max(0, ...lines.map((line) => line.width));
  const plate = lead.width + inside + 2 * pad + (inside > 0 ? 1.2 * type.gap : 0);
  const plateHeight = Math.max(type.circle, lines.length * type.line) + 0.5 * size;
  const top = (GAP * size) / 2;
  const middle = top + 0.25 * size + Math.max(type.circle, type.line) / 2;
  const bottom = Math.max(top + plateHeight, middle - type.line / 2 + lines.length * type.line + 0.2 * size);
  const x = isLeft ? edge - plate : edge;
  const leadX = isLeft ? x + plate - pad - lead.width : x + pad;
  const textX = isLeft ? x + pad : x + plate - pad - inside;
  const ticks = tickMarks(facts, id, {
    plate: isLeft ? { from: left + 0.5 * size, to: x } : { from: x + plate, to: right - 0.5 * size },
    below: isLeft ? { from: left + 0.5 * size, to: right } : { from: left, to: right - 0.5 * size },
    middle,
    bottom,
    isLeft,
  });
  const height = Math.max(bottom, ticks.bottom) + top;
  return {
    height,
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
      ...lead.marks.map((mark) => moved(mark, leadX, middle)),
      ...lines.flatMap((line, i) =>
        stacked([line], isLeft ? textX + inside - line.width : textX, middle + i * type.line, type),
      ),
      ...ticks.marks,
    ],
  };
}

function plateLines(facts: Facts, id: NodeId, told: readonly Told[], width: number, type: Type): Line[] {
  const { numbers, others } = usesOf(facts, id, told, type);
  const state = stateOf(facts, id);
  const lines = continuedWith(
    settingLines(facts, id, told, width, type),
    [
      ...(state === undefined
        ? []
        : [
            textPiece(
              state,
              { ...type.note, weight: 'strong' },
              { role: 'note', ink: 'stop', of: id },
              type.gap,
            ),
          ]),
      ...notePieces(facts.minutes(id), facts.remarks(id), id, width, type).map((piece, i) =>
        i === 0 ? { ...piece, before: 1.5 * type.gap } : piece,
      ),
      ...numbers,
    ],
    width,
  );
  return [...lines, ...tellingLines(others, (one) => plainTelling(facts, id, one), id, width, type)];
}

function stateOf(facts: Facts, id: NodeId): string | undefined {
  if (!facts.isReached(id)) return LOCK_STATES.cannotOpen;
  const { context, network } = facts.assessment;
  const isWrong = context.codes().some((code) => code.state === 'wrong' && network.ids[code.node] === id);
  return isWrong ? LOCK_STATES.wrongCode : undefined;
}

function settingLines(facts: Facts, id: NodeId, told: readonly Told[], width: number, type: Type): Line[] {
  const entry = facts.locks.get(id);
  switch (entry?.setting.set) {
    case 'key': {
      const names = entry.setting.keys.map(facts.name);
      const text = list(names, entry.need === undefined ? 'and' : 'or');
      const links = told.filter(({ otherEnd }) => otherEnd === 'from').map(({ link }) => link);
      return textLines(text, width, type.name, { role: 'name', of: id, links });
    }
    case 'nothing':
      return textLines(NOTES.latch, width, type.thing, { role: 'note', of: id });
    case 'code':
      return answerLines(facts, id, width, type) ?? [];
    default:
      return facts.options.codes ? [blank(Math.min(width, BLANK * type.size), type)] : [];
  }
}

function blank(width: number, type: Type): Line {
  const y = type.drop;
  return { width, marks: [rule({ x: 0, y }, { x: width, y }, 0.8, 'ink', [1, 1.6])] };
}

interface Room {
  readonly from: number;
  readonly to: number;
}

interface TickRoom {
  /** Beside the plate, and below it. */
  readonly plate: Room;
  readonly below: Room;
  readonly middle: number;
  readonly bottom: number;
  readonly isLeft: boolean;
}

/** At the wall that is away from the spine, one under another from lock to lock; below the plate where they do not fit beside it. */
function tickMarks(
  { options, teams }: Facts,
  id: NodeId,
  { plate, below, middle, bottom, isLeft }: TickRoom,
): { readonly marks: readonly Mark[]; readonly bottom: number } {
  if (!options.ticks) return { marks: [], bottom: 0 };
  const pitch = TICK + TICK_GAP;
  const isBeside = plate.to - plate.from >= teams * pitch + TICK_GAP;
  const room = isBeside ? plate : below;
  const perRow = Math.max(1, Math.floor((room.to - room.from + TICK_GAP) / pitch));
  const top = isBeside ? middle - TICK / 2 : bottom + TICK_GAP;
  const marks: Mark[] = [];
  for (let team = 0; team < teams; team++) {
    const count = Math.min(perRow, teams);
    const first = isLeft ? room.from : room.to - count * pitch + TICK_GAP;
    const x = first + (team % perRow) * pitch;
    const y = top + Math.floor(team / perRow) * pitch;
    marks.push(tickBox(x, y, id));
    if (teams > 1) marks.push(teamNumber(team + 1, x, y, id));
  }
  const rows = Math.ceil(teams / perRow);
  return { marks, bottom: top + rows * pitch - TICK_GAP };
}

const TEAM = { size: 7.5, weight: 'regular', family: 'words' } as const;

function teamNumber(team: number, x: number, y: number, of: NodeId): Mark {
  return textMark(
    String(team),
    { x: x + TICK / 2, y: y + TICK / 2 + dropOf(TEAM) },
    { ...TEAM, align: 'middle', ink: 'second', of },
  );
}
