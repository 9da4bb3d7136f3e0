/** One cell of a table: read forgivingly, written so that a spreadsheet takes it for what it is. */

import { NO, YES } from '../../words/kit-table.ts';
import { plainWords } from '../fit/suits.ts';
import type { CellFault } from '../problem.ts';

/**
 * Spreadsheets run what begins with one of these as a formula. A text that does gets an apostrophe in front, and so does one that already has
 * such an apostrophe, so that taking one away gives the text back (the way that OWASP's page on CSV injection describes).
 */
const RISKY = /^'*[=+\-@\t\r]/u;
const GUARDED = /^'+[=+\-@\t\r]/u;

export function guarded(text: string): string {
  return RISKY.test(text) ? `'${text}` : text;
}

export function unguarded(cell: string): string {
  // ="007" is how spreadsheets keep a text from being taken for a number.
  const quoted = /^="([^"]*)"$/u.exec(cell);
  if (quoted) return quoted[1] ?? '';
  return GUARDED.test(cell) ? cell.slice(1) : cell;
}

export type Cell<T> =
  | { readonly ok: true; readonly value: T | undefined }
  | { readonly ok: false; readonly wrong: CellFault };

const absent: Cell<never> = { ok: true, value: undefined };

export interface Limits {
  readonly whole: boolean;
  /** Below it, or at it where `isAbove`, nothing is taken. */
  readonly least: number;
  readonly isAbove?: boolean;
  readonly most: number;
}

/** "6,5", "6.5 mm", "３": a point or a comma, full-width digits, a unit after it. Empty: absent. */
export function numberIn(cell: string, { whole, least, isAbove = false, most }: Limits): Cell<number> {
  const text = unguarded(cell)
    .normalize('NFKC')
    .trim()
    .replace(/^'/u, '')
    .replace(/(?<=\d)\s*(?:mm|pcs?|pieces?|×|x)\.?$/iu, '')
    .replace('−', '-');
  if (text === '') return absent;
  if (!/^[+-]?(?:\d+(?:[.,]\d*)?|[.,]\d+)$/u.test(text)) return { ok: false, wrong: { fault: 'notANumber' } };
  const value = Number(text.replace(',', '.')) + 0;
  if (whole && !Number.isInteger(value)) return { ok: false, wrong: { fault: 'notWhole' } };
  if (isAbove && value <= least) return { ok: false, wrong: { fault: 'notAbove', limit: least } };
  if (value < least) return { ok: false, wrong: { fault: 'below', limit: least } };
  return value > most ? { ok: false, wrong: { fault: 'above', limit: most } } : { ok: true, value };
}

export function yesIn(cell: string): Cell<boolean> {
  const text = plainWords(unguarded(cell));
  if (text === '') return absent;
  const isIn = (words: readonly string[]) => words.includes(text);
  if (isIn(YES)) return { ok: true, value: true };
  return isIn(NO)
    ? { ok: true, value: false }
    : { ok: false, wrong: { fault: 'notAmong', options: [YES[0], NO[0]] } };
}

/** Empty: absent. Breaks within a cell stay. */
export function textIn(cell: string): string | undefined {
  const text = unguarded(cell).trim();
  return text === '' ? undefined : text;
}
