/** An answer that is typed in on a school device. */
import { normaliseCode, symbolsOf } from '../game/codes.ts';
import { AS_WRITTEN } from './as-written.ts';
import { plainSigns } from './signs.ts';
import { type FastenerType, USUAL_MINUTES } from './type.ts';
import { isRun, isYear, weakPattern } from './weak.ts';
import { drawn } from './wheels.ts';

const DIGITS = [...'0123456789'];
const LETTERS = [...'ABCDEFGHIJKLMNOPQRSTUVWXYZ'];
/** Without vowels, so that no word comes out, and without signs that look alike. */
const DRAWN = [...'346789BCDFGHJKMNPQRTVWXY'];

/** How many signs whoever tries would try at each position: those of the kind that the code has. */
function signsFor(code: readonly string[]): number {
  const has = (signs: readonly string[]) => code.some((symbol) => signs.includes(symbol));
  if (code.length > 0 && !has(LETTERS) && has(DIGITS)) return DIGITS.length;
  return has(LETTERS) && !has(DIGITS) ? LETTERS.length : DIGITS.length + LETTERS.length;
}

const weak: FastenerType['weak'] = (symbols, { year } = {}) => {
  if (isRun(symbols, DIGITS, true) || isRun(symbols, LETTERS, false)) return 'run';
  return weakPattern(symbols) ?? (isYear(symbols, year) ? 'year' : undefined);
};

export const typed = {
  type: 'typed',
  opensWith: 'code',
  directions: false,
  apart: false,
  hasWheels: false,
  usualLength: 5,
  minutes: USUAL_MINUTES,
  trySeconds: 6,
  asks: ['reading', 'seeing', 'fineHands'],
  ...AS_WRITTEN,
  symbols: (typed) => symbolsOf(normaliseCode(plainSigns(typed))),
  read: (typed) => ({
    ok: true,
    code: plainSigns(typed).toUpperCase().normalize('NFC').trim().replace(/\s+/gu, ' '),
  }),
  codes: (length, _, code) => signsFor(code ?? []) ** length,
  left(length, _, known, code) {
    const free = Array.from({ length }, (_, position) => position).filter((position) => !known.has(position));
    return signsFor(code ?? []) ** free.length;
  },
  weak,
  draw: (pick, length) =>
    drawn(
      pick,
      Array.from({ length }, () => DRAWN),
      weak,
    ),
} as const satisfies FastenerType;
