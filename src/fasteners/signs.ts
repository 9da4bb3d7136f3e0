/** Signs as people type and paste them, as the plain signs that are meant. */
import { graphemesOf } from '../game/graphemes.ts';

/** Full-width and circled signs, ligatures and the like in their plain form (NFKC), digits of any script as 0 to 9, without what makes an emoji of a digit. */
export function plainSigns(text: string): string {
  // Nearly every code is plain already, and asked for after each edit.
  if (/^[ -~]*$/u.test(text)) return text;
  return text
    .replace(/[\uFE0F\u20E3]/gu, '')
    .normalize('NFKC')
    .replace(/\p{Nd}/gu, digitOf);
}

/** The digits of a script stand in unbroken runs of ten. */
function digitOf(sign: string): string {
  const code = sign.codePointAt(0) ?? 0;
  let before = 0;
  while (/^\p{Nd}$/u.test(String.fromCodePoint(Math.max(0, code - before - 1)))) before++;
  return String(before % 10);
}

/** What stands between symbols and is none: spaces, dashes, commas, points, slashes. */
export const BETWEEN = /[\s,;.:/|·•_‐‑‒–—−-]+/u;

/** Letters that are no letter with a mark and yet stand for plain ones. */
const PLAIN_LETTERS: ReadonlyMap<string, string> = new Map([
  ['Æ', 'AE'],
  ['Œ', 'OE'],
  ['Ø', 'O'],
  ['Ł', 'L'],
  ['Đ', 'D'],
  ['Ð', 'D'],
  ['Þ', 'TH'],
  ['ẞ', 'SS'],
]);

/** An upper-case letter without its marks: É as E. */
export function withoutMarks(letter: string): string {
  return PLAIN_LETTERS.get(letter) ?? letter.normalize('NFD').replace(/\p{M}/gu, '');
}

/** Pictures that stand for themselves, as the phone's keyboard has them. */
export function arePictures(text: string): boolean {
  return /^(?:\p{Extended_Pictographic}|\p{Emoji_Modifier}|\p{Regional_Indicator}|\u200D|\uFE0F)+$/u.test(
    text,
  );
}

/** "🦊☀️🔔" as three, "FOX" as one. */
export function namesIn(text: string): string[] {
  return arePictures(text) ? graphemesOf(text) : [text];
}
