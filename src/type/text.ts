/**
 * Text measured without a browser: widths in pixels from the advances of the bundled typefaces, and lines broken to fit.
 * Exact for the signs in the table when drawn with `font-kerning: none`; signs of other scripts come from a typeface that
 * nobody knows beforehand and get a width that hardly any of them exceeds.
 */
import { graphemesOf } from '../game/graphemes.ts';
import { ITALIC, MONO, REGULAR, SIGNS, STRONG } from './advances.ts';

export interface TextStyle {
  /** Pixels. */
  readonly size: number;
  /** `strong` is any weight from 500 to 680. */
  readonly weight: 'regular' | 'strong';
  /** Words are set in Atkinson Hyperlegible Next, codes and answers in Atkinson Hyperlegible Mono. */
  readonly family: 'words' | 'codes';
  /** Of words at regular weight; other texts are measured as if they stood upright. */
  readonly italic?: boolean;
  /** Pixels added after each user-perceived character. */
  readonly spacing?: number;
}

const advances = new Map(
  Array.from(SIGNS, (sign, i) => {
    const widths = { regular: REGULAR[i] ?? 1000, strong: STRONG[i] ?? 1000, italic: ITALIC[i] ?? 1000 };
    return [sign, widths] as const;
  }),
);

/** Thousandths of the size; generous, because the typeface that will draw it is not known. */
const UNKNOWN = 1000;
const WIDE = 1400;
const CODES_WEIGHT = { regular: MONO, strong: MONO };

/** Adds nothing to the width: combining marks, joiners, and what chooses how the sign before it is drawn. */
const ADDS_NOTHING = /^(?:\p{M}|\p{Cf}|\p{Emoji_Modifier})$/u;
const TAKES_A_SQUARE = /^[\p{Extended_Pictographic}\p{RI}]$/u;

function advance(sign: string, { family, weight, italic }: TextStyle): number {
  const known = advances.get(sign);
  if (known && family === 'codes') return CODES_WEIGHT[weight];
  if (known) return known[italic && weight === 'regular' ? 'italic' : weight];
  if (ADDS_NOTHING.test(sign)) return 0;
  return TAKES_A_SQUARE.test(sign) ? WIDE : UNKNOWN;
}

/** Signs of which none joins another: Latin letters, punctuation, arrows, signs of arithmetic; no mark or joiner among them. */
const PLAIN = /^[ -~\u00A0-\u024F\u2010-\u2027\u2030-\u205E\u2190-\u22FF]*$/;

/** The segmenter's time grows with the square of what it is given, so it is given this many code units at once. */
const AT_ONCE = 32;

/** A piece of the text that takes no surrogate pair apart. */
function pieceOf(text: string, start: number, length: number): string {
  const last = text.charCodeAt(start + length - 1);
  const isHighSurrogate = last >= 0xd800 && last <= 0xdbff;
  return text.slice(start, start + length + (isHighSurrogate ? 1 : 0));
}

/** User-perceived characters. */
function characters(text: string): string[] {
  if (PLAIN.test(text)) return text.split('');
  const found: string[] = [];
  let length = AT_ONCE;
  for (let start = 0; start < text.length; ) {
    const piece = pieceOf(text, start, length);
    const parts = graphemesOf(piece);
    const isEnd = start + piece.length >= text.length;
    // The last one may go on in the next piece; one that fills the whole piece does, and asks for a longer one.
    if (!isEnd && parts.length === 1) {
      length *= 2;
      continue;
    }
    const whole = isEnd ? parts : parts.slice(0, -1);
    for (const part of whole) {
      found.push(part);
      start += part.length;
    }
    length = AT_ONCE;
  }
  return found;
}

/** Width of one user-perceived character in pixels: its signs side by side, or one square when they are joined to one picture. */
function characterWidth(character: string, style: TextStyle): number {
  let thousandths = 0;
  for (const sign of character) thousandths += advance(sign, style);
  const joined = character.includes('\u200D') ? Math.min(thousandths, WIDE) : thousandths;
  return (joined * style.size) / 1000 + (style.spacing ?? 0);
}

/** Whether the bundled typefaces draw all of it, so that its width is known and not only bounded. */
export function isMeasured(text: string): boolean {
  for (const sign of text) if (!advances.has(sign)) return false;
  return true;
}

/** Width in pixels of the text on one line. */
export function textWidth(text: string, style: TextStyle): number {
  let width = 0;
  for (const character of characters(text)) width += characterWidth(character, style);
  return width;
}

/** Width in pixels of the widest word: in less room it is broken. */
export function widestWord(text: string, style: TextStyle): number {
  return Math.max(
    ...tidySpaces(text)
      .split(' ')
      .map((word) => textWidth(word, style)),
  );
}

/** White space as it is drawn: runs are one space, none at the ends. */
export function tidySpaces(text: string): string {
  return text.replace(/[^\S\u00A0]+/gu, ' ').replace(/^ | $/g, '');
}

/**
 * Breaks text into lines no wider than `width` pixels: at spaces, where the space is dropped, and inside a word that is wider
 * than a line. Nothing else is lost: the lines joined are the text without the spaces that were broken at.
 * A line holds at least one character, however narrow the width. Text of no characters gives one empty line.
 */
export function wrap(text: string, width: number, style: TextStyle): readonly string[] {
  const lines: string[] = [];
  const space = textWidth(' ', style);
  let line = '';
  let used = 0;
  for (const word of tidySpaces(text).split(' ')) {
    const wordWidth = textWidth(word, style);
    if (line !== '' && used + space + wordWidth <= width) {
      line += ` ${word}`;
      used += space + wordWidth;
      continue;
    }
    if (line !== '') lines.push(line);
    if (wordWidth <= width) {
      line = word;
      used = wordWidth;
      continue;
    }
    line = '';
    used = 0;
    for (const character of characters(word)) {
      const step = characterWidth(character, style);
      if (line !== '' && used + step > width) {
        lines.push(line);
        line = '';
        used = 0;
      }
      line += character;
      used += step;
    }
  }
  lines.push(line);
  return lines;
}
