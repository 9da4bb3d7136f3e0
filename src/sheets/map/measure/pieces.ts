/** Lines of text and small drawings, side by side and broken to a width: one description for measuring and for drawing. */
import type { LinkId, NodeId } from '../../../game/model.ts';
import { type TextStyle, textWidth, wrap } from '../../../type/text.ts';
import type { Ink, Mark, TextRole } from '../../drawing.ts';
import { moved, rectangle, textMark } from '../../marks.ts';
import type { SignName } from '../../signs.ts';
import { dropOf, type Type } from './type.ts';

/** What is never broken. Its marks stand right of x = 0, and the middle of its line is y = 0. */
export interface Piece {
  readonly width: number;
  readonly marks: readonly Mark[];
  /** Space before it where it is not the first of its line. */
  readonly before: number;
}

export interface Line {
  readonly width: number;
  readonly marks: readonly Mark[];
}

export interface Look {
  readonly role: TextRole;
  readonly ink?: Ink;
  readonly of?: NodeId;
  readonly links?: readonly LinkId[];
}

export function textPiece(text: string, style: TextStyle, look: Look, before = 0): Piece {
  const { role, ink = 'ink', of, links } = look;
  const mark = textMark(
    text,
    { x: 0, y: dropOf(style) },
    { ...style, role, ink, ...(of !== undefined && { of }), ...(links && { links }) },
  );
  return { width: mark.width, marks: [mark], before };
}

export function signPiece(sign: SignName, side: number, ink: Ink, before = 0, of?: NodeId): Piece {
  return {
    width: side,
    marks: [{ mark: 'sign', sign, x: 0, y: -side / 2, size: side, ink, ...(of !== undefined && { of }) }],
    before,
  };
}

/** The number of a step in its filled circle, which is longer for three figures; hollow for a step that is never reached. */
export function stepPiece(number: number, type: Type, of: NodeId, before = 0): Piece {
  const { circle, step } = type;
  const text = String(number);
  const width = number > 0 ? Math.max(circle, textWidth(text, step) + 0.5 * circle) : circle;
  const corners = rectangle(0, -circle / 2, width, circle);
  if (number === 0) {
    const hollow: Mark = {
      mark: 'area',
      role: 'unreached',
      corners: rectangle(0.5, -circle / 2 + 0.5, circle - 1, circle - 1),
      rounded: circle / 2,
      fill: 'paper',
      stroke: 'second',
      width: 1,
      dash: [2, 1.6],
      of,
    };
    return { width, marks: [hollow], before };
  }
  return {
    width,
    marks: [
      { mark: 'area', role: 'step', corners, rounded: circle / 2, fill: 'ink', of },
      textMark(
        text,
        { x: width / 2, y: dropOf(step) },
        { ...step, role: 'step', align: 'middle', ink: 'paper', of },
      ),
    ],
    before,
  };
}

/** Pieces as one that is not broken. */
export function together(pieces: readonly Piece[], before = 0): Piece {
  return { ...lineOf(pieces), before };
}

export function lineOf(pieces: readonly Piece[]): Line {
  const marks: Mark[] = [];
  let x = 0;
  for (const [i, piece] of pieces.entries()) {
    if (i > 0) x += piece.before;
    for (const mark of piece.marks) marks.push(moved(mark, x, 0));
    x += piece.width;
  }
  return { width: x, marks };
}

/** As many on each line as fit; a piece wider than the line stands alone. */
export function broken(pieces: readonly Piece[], width: number): Line[] {
  return distributed(pieces, width).map(lineOf);
}

function distributed(pieces: readonly Piece[], width: number): Piece[][] {
  const lines: Piece[][] = [];
  let used = 0;
  for (const piece of pieces) {
    const line = lines.at(-1);
    if (line && used + piece.before + piece.width <= width + 1e-6) {
      line.push(piece);
      used += piece.before + piece.width;
    } else {
      lines.push([piece]);
      used = piece.width;
    }
  }
  return lines;
}

/** The last of the lines goes on with the pieces as far as they fit; the rest stands on lines after it. */
export function continuedWith(lines: readonly Line[], pieces: readonly Piece[], width: number): Line[] {
  const last = lines.at(-1);
  if (!last) return broken(pieces, width);
  return [...lines.slice(0, -1), ...broken([{ ...last, before: 0 }, ...pieces], width)];
}

/** The same, each line from its end to its beginning. */
export function continuedBackwards(lines: readonly Line[], pieces: readonly Piece[], width: number): Line[] {
  const last = lines.at(-1);
  const all = last ? [{ ...last, before: 0 }, ...pieces] : pieces;
  return [...lines.slice(0, -1), ...distributed(all, width).map((line) => lineOf(backwards(line)))];
}

function backwards(line: readonly Piece[]): Piece[] {
  return line.map((piece, i) => ({ ...piece, before: line[i + 1]?.before ?? 0 })).reverse();
}

/** A text broken into lines no wider than the width. */
export function textLines(text: string, width: number, style: TextStyle, look: Look): Line[] {
  return wrap(text, width, style).map((part) => lineOf([textPiece(part, style, look)]));
}

/** '4 min ·', 'any 2 of 3': each no wider than the width. `backwards`: for a line that is set from its end, where the dot stands behind the later one. */
export function notePieces(
  minutes: string | undefined,
  remarks: readonly string[],
  of: NodeId,
  width: number,
  { note, gap }: Type,
  ink: Ink = 'second',
  backwards = false,
): Piece[] {
  const all = minutes === undefined ? remarks : [minutes, ...remarks];
  return all.flatMap((text, i) => {
    const role = i === 0 && minutes !== undefined ? 'minutes' : 'note';
    const isDotted = backwards ? i > 0 : i < all.length - 1;
    const dotted = isDotted ? `${text} ·` : text;
    return wrap(dotted, width, note).map((part) => textPiece(part, note, { role, ink, of }, gap));
  });
}

/** The same line with more pieces after it. */
export function extended(line: Line, pieces: readonly Piece[]): Line {
  return lineOf([{ ...line, before: 0 }, ...pieces]);
}
