/** Sentences set in lines: names bold, codes in mono, broken to a width. Each line is a strip of its own. */
import { isDirections, symbolsOf } from '../game/codes.ts';
import type { NodeId } from '../game/model.ts';
import { type TextStyle, textWidth, tidySpaces, wrap } from '../type/text.ts';
import type { Part, Sentence } from '../words/sentence.ts';
import { textOf } from '../words/sentence.ts';
import type { Ink, Mark, TextRole } from './drawing.ts';
import type { Strip } from './flow.ts';
import type { SignName } from './signs.ts';

export interface ProseStyle {
  readonly size: number;
  /** From line to line. */
  readonly leading: number;
  readonly ink?: Ink;
  /** Of all that is no name and no code. */
  readonly weight?: 'regular' | 'strong';
  /** Of names; strong when not said. */
  readonly names?: 'regular' | 'strong';
  readonly role?: TextRole;
  /** Codes that are directions, drawn as arrows with their letters. */
  readonly directions?: ReadonlySet<string>;
}

/** A piece that is not broken: text in one style, or an arrow. `part` tells those of one part of the sentence, which are drawn as one. */
interface Piece {
  readonly part: number;
  readonly width: number;
  readonly content:
    | { readonly text: string; readonly style: TextStyle; readonly role: TextRole; readonly of?: NodeId }
    | { readonly sign: SignName };
}

/** What stands together without a space. */
interface Word {
  readonly pieces: readonly Piece[];
  readonly width: number;
  /** Of the space before it; 0 where a longer word was broken. */
  readonly space: number;
}

const ARROWS: ReadonlyMap<string, SignName> = new Map([
  ['U', 'up'],
  ['D', 'down'],
  ['L', 'left'],
  ['R', 'right'],
]);

/** At least one line, however narrow. x is where they begin on the page. */
export function prose(sentence: Sentence, x: number, width: number, style: ProseStyle): Strip[] {
  const lines: Word[][] = [[]];
  let used = 0;
  for (const word of wordsOf(sentence, width, style)) {
    const line = lines.at(-1) ?? [];
    const gap = line.length === 0 ? 0 : word.space;
    if (line.length > 0 && used + gap + word.width > width + 1e-6) {
      lines.push([word]);
      used = word.width;
    } else {
      line.push(word);
      used += gap + word.width;
    }
  }
  return lines.map((line) => ({ height: style.leading, marks: lineMarks(line, x, style) }));
}

function plainStyle({ size, weight = 'regular' }: ProseStyle): TextStyle {
  return { size, weight, family: 'words' };
}

function wordsOf(sentence: Sentence, width: number, style: ProseStyle): Word[] {
  const words: Word[] = [];
  const plainSpace = textWidth(' ', plainStyle(style));
  let pieces: Piece[] = [];
  let before: Piece | undefined;
  const end = () => {
    const [first] = pieces;
    if (!first) return;
    const space =
      before?.part === first.part && 'style' in first.content
        ? textWidth(' ', first.content.style)
        : plainSpace;
    words.push(...whole(pieces, width, space));
    before = pieces.at(-1);
    pieces = [];
  };
  for (const [i, part] of sentence.entries()) {
    const text = textOf(part).replace(/[^\S\u00A0]+/gu, ' ');
    if (isDirectionCode(part, style)) {
      // Kept whole by a piece for each move; broken between moves where it is longer than a line.
      pieces.push(...moves(text, i, style));
      continue;
    }
    for (const [j, word] of text.split(' ').entries()) {
      if (j > 0) end();
      if (word === '') continue;
      const own = styleOf(part, style);
      pieces.push({
        part: i,
        width: textWidth(word, own.style),
        content: { text: word, ...own },
      });
    }
  }
  end();
  return words;
}

function isDirectionCode(part: Part, { directions }: ProseStyle): boolean {
  return (
    typeof part === 'object' &&
    'code' in part &&
    isDirections(part.code) &&
    directions?.has(part.code) === true
  );
}

function styleOf(
  part: Part,
  style: ProseStyle,
): { readonly style: TextStyle; readonly role: TextRole; readonly of?: NodeId } {
  const { size, role = 'plain', names = 'strong' } = style;
  if (typeof part === 'string' || 'topic' in part) return { style: plainStyle(style), role };
  if ('code' in part) return { style: { size, weight: 'strong', family: 'codes' }, role: 'code' };
  const strong: TextStyle = { size, weight: 'strong', family: 'words' };
  if ('strong' in part) return { style: strong, role };
  return { style: { ...strong, weight: names }, role: 'name', of: part.node };
}

/** An arrow and its letter for each move. */
function moves(code: string, part: number, { size }: ProseStyle): Piece[] {
  const last: TextStyle = { size, weight: 'strong', family: 'codes' };
  const symbols = symbolsOf(code);
  return symbols.flatMap((text, i): Piece[] => {
    const style = i < symbols.length - 1 ? { ...last, spacing: size * 0.25 } : last;
    const sign = ARROWS.get(text);
    const letter: Piece = {
      part,
      width: textWidth(text, style),
      content: { text, style, role: 'code' },
    };
    return sign === undefined
      ? [letter]
      : [{ part, width: arrowSide(size) + 0.5, content: { sign } }, letter];
  });
}

const arrowSide = (size: number) => size * 0.85;

const sum = (pieces: readonly Piece[]) => pieces.reduce((total, piece) => total + piece.width, 0);

/** One word, or when it is wider than a line as many as it takes. */
function whole(pieces: readonly Piece[], width: number, space: number): Word[] {
  const all = sum(pieces);
  if (all <= width) return [{ pieces, width: all, space }];
  return kept(
    pieces.flatMap((piece) => broken(piece, width)),
    width,
  ).map((together, i) => ({
    pieces: together,
    width: sum(together),
    space: i > 0 ? 0 : space,
  }));
}

/** An arrow stays with its letter; what ends a sentence stays with what it ends, where there is room for both. */
function kept(pieces: readonly Piece[], width: number): Piece[][] {
  const groups: Piece[][] = [];
  for (const piece of pieces) {
    const group = groups.at(-1);
    const last = group?.at(-1);
    const isEnd = 'text' in piece.content && /^[.,:;]$/.test(piece.content.text);
    const fits = group !== undefined && sum(group) + piece.width <= width;
    if (group && last && ('sign' in last.content || (isEnd && fits))) group.push(piece);
    else groups.push([piece]);
  }
  return groups;
}

function broken(piece: Piece, width: number): Piece[] {
  const { content } = piece;
  if (piece.width <= width || 'sign' in content) return [piece];
  return wrap(content.text, width, content.style).map((text) => ({
    ...piece,
    width: textWidth(text, content.style),
    content: { ...content, text },
  }));
}

/** Neighbours of one part are one mark, so that a name is read as one. */
function lineMarks(line: readonly Word[], x: number, style: ProseStyle): Mark[] {
  const { size, leading, ink = 'ink' } = style;
  const baseline = (leading - size) / 2 + size * 0.79;
  const marks: Mark[] = [];
  let at = x;
  let open: { readonly piece: Piece; readonly from: number; text: string } | undefined;
  const close = () => {
    if (open === undefined || 'sign' in open.piece.content) return;
    const { role, of, style: own } = open.piece.content;
    marks.push({
      mark: 'text',
      role,
      text: open.text,
      x: open.from,
      y: baseline,
      align: 'start',
      width: textWidth(open.text, own),
      size: own.size,
      weight: own.weight,
      family: own.family,
      ink,
      ...(own.spacing && { spacing: own.spacing }),
      ...(of !== undefined && { of }),
    });
    open = undefined;
  };
  for (const [i, word] of line.entries()) {
    const gap = i === 0 ? 0 : word.space;
    for (const [j, piece] of word.pieces.entries()) {
      const between = j === 0 && gap > 0 ? ' ' : '';
      if ('sign' in piece.content) {
        close();
        at += j === 0 ? gap : 0;
        const side = arrowSide(size);
        marks.push({
          mark: 'sign',
          sign: piece.content.sign,
          x: at,
          y: baseline - size * 0.74,
          size: side,
          ink,
        });
        at += piece.width;
        continue;
      }
      const goesOn = open?.piece.part === piece.part;
      if (open && goesOn) {
        open.text += between + piece.content.text;
        at = open.from + textWidth(open.text, piece.content.style);
        continue;
      }
      close();
      at += j === 0 ? gap : 0;
      open = { piece, from: at, text: piece.content.text };
      at += piece.width;
    }
  }
  close();
  return marks;
}

/** A plain text as a sentence, spaces tidied. */
export function plainText(text: string): Sentence {
  return [tidySpaces(text)];
}
