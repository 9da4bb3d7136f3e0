/** The upper end of a tray: name, number where it is a step, and what is said under it. */
import type { NodeId } from '../../../game/model.ts';
import type { Caption } from '../../../map/layout.ts';
import { widestWord, wrap } from '../../../type/text.ts';
import { fieldCaption, ownCaption } from '../../../words/canvas.ts';
import { CONTINUED_WIDEST } from '../../../words/sheet-map.ts';
import type { Mark } from '../../drawing.ts';
import { moved } from '../../marks.ts';
import type { Facts } from '../content/facts.ts';
import type { Told } from '../content.ts';
import { stacked } from './figure.ts';
import {
  continuedWith,
  type Line,
  notePieces,
  type Piece,
  stepPiece,
  textLines,
  textPiece,
} from './pieces.ts';
import type { RowFigure } from './row.ts';
import { plainLines } from './told.ts';
import type { Type } from './type.ts';
import type { TrayWalls } from './walls.ts';

const PAD = 0.6;
/** Of a number, so that it stands clear of the tape corners. */
const STEP_INSET = 0.85;
const TOP = 0.5;
const BOTTOM = 0.3;

/** Of 'continued from page 2'; under a caption it belongs to no node. */
export function continuedLook(id: NodeId | undefined) {
  return { role: 'note', ink: 'second', ...(id !== undefined && { of: id }) } as const;
}

interface HeadRow {
  readonly id: NodeId;
  readonly depth: number;
  /** 'continued from page 2'; empty when it is not. */
  readonly continued: string;
}

/** Lines kept for saying where a tray goes on, whatever is said. */
export function continuedRoom(width: number, { note }: Type): number {
  return Math.max(...CONTINUED_WIDEST.map((text) => wrap(text, width, note).length));
}

export function headRow(
  facts: Facts,
  { id, depth, continued }: HeadRow,
  walls: TrayWalls,
  told: readonly Told[],
  type: Type,
): RowFigure {
  const { size } = type;
  const { left, right } = walls.at(depth);
  const pad = PAD * size;
  const inset = STEP_INSET * size;
  const isLeft = walls.side === 'left';
  const step = continued === '' && facts.isStep(id) ? stepPiece(facts.number(id), type, id) : undefined;
  const stepRoom = step ? inset - pad + step.width + type.gap : 0;
  const room = right - left - 2 * pad - stepRoom;
  const row = { id, depth, continued };
  const minutes = step ? timePiece(facts, id, type) : undefined;
  const besideRoom = room - (minutes ? minutes.width + type.gap : 0);
  const beside = titleLines(facts, row, besideRoom, undefined, type);
  const isTorn = widestWord(facts.name(id), type.name) > besideRoom;
  const below = titleLines(facts, row, room, minutes && facts.minutes(id), type);
  const isBeside = beside.length <= below.length && !isTorn;
  const lines = [...(isBeside ? beside : below), ...underLines(facts, row, told, room, type)];
  const x = left + pad + (isLeft ? 0 : stepRoom);
  const kept = keptFor(continued, room, type);
  const middle = TOP * size + type.line / 2;
  const marks: Mark[] = stacked(lines, x, middle, type);
  if (step) {
    const at = isLeft ? right - inset - step.width : left + inset;
    marks.push(...step.marks.map((mark) => moved(mark, at, middle)));
    const time = isLeft ? at - type.gap : right - pad;
    if (minutes && isBeside)
      marks.push(...minutes.marks.map((mark) => moved(mark, time - minutes.width, middle)));
  }
  const tip = step ? inset - 0.2 * size : 0;
  return {
    height: TOP * size + (lines.length + kept) * type.line + BOTTOM * size,
    marks,
    middle,
    reach: isLeft ? right - tip : left + tip,
  };
}

/** The caption that things share, which is no step and has nothing to tell. */
export function captionRow(
  {
    caption,
    depth,
    continued,
  }: { readonly caption: Caption; readonly depth: number; readonly continued: string },
  walls: TrayWalls,
  type: Type,
): RowFigure {
  const { size } = type;
  const { left, right } = walls.at(depth);
  const pad = PAD * size;
  const room = right - left - 2 * pad;
  const lines = [
    ...textLines(fieldCaption(caption), room, type.name, { role: 'plain' }),
    ...(continued === '' ? [] : textLines(continued, room, type.note, continuedLook(undefined))),
  ];
  const kept = keptFor(continued, room, type);
  return {
    height: TOP * size + (lines.length + kept) * type.line + BOTTOM * size,
    marks: stacked(lines, left + pad, TOP * size + type.line / 2, type),
  };
}

/** Lines kept free: where a tray goes on is not known when it is measured. */
function keptFor(continued: string, width: number, type: Type): number {
  return continued === '' ? 0 : continuedRoom(width, type) - wrap(continued, width, type.note).length;
}

/** The name, and behind it or below it what is remarked of it. */
function titleLines(
  facts: Facts,
  row: HeadRow,
  width: number,
  minutes: string | undefined,
  type: Type,
): Line[] {
  const { id } = row;
  const names = textLines(facts.name(id), width, type.name, { role: 'name', of: id });
  return continuedWith(names, notePieces(minutes, remarksOf(facts, row), id, width, type), width);
}

function timePiece(facts: Facts, id: NodeId, { note }: Type): Piece | undefined {
  const text = facts.minutes(id);
  return text === undefined ? undefined : textPiece(text, note, { role: 'minutes', ink: 'second', of: id });
}

function remarksOf(facts: Facts, { id, depth, continued }: HeadRow): readonly string[] {
  if (continued !== '') return [];
  const isAlone = depth === 0 && facts.node(id)?.kind === 'container';
  const caption = facts.caption(id);
  return [...(isAlone && caption ? [ownCaption(caption)] : []), ...facts.remarks(id)];
}

function underLines(
  facts: Facts,
  { id, continued }: HeadRow,
  told: readonly Told[],
  width: number,
  type: Type,
): Line[] {
  if (continued !== '') return textLines(continued, width, type.note, continuedLook(id));
  return plainLines(facts, id, told, width, type);
}
