/** A code of which nothing is known but how it is written: it may be any, and none can count how many there are. */
import { normaliseCode, symbolsOf } from '../game/codes.ts';
import type { CodeRules } from './type.ts';
import { weakPattern } from './weak.ts';

export const AS_WRITTEN: CodeRules = {
  symbols: (typed) => symbolsOf(normaliseCode(typed)),
  read: (typed) => ({ ok: true, code: typed.normalize('NFC').trim().replace(/\s+/gu, ' ') }),
  write: (symbols) => symbols.join(''),
  wheel: () => undefined,
  length: () => undefined,
  misfits: () => [],
  codes: () => Number.POSITIVE_INFINITY,
  left: (length, _, known) =>
    Array.from({ length }, (_, position) => position).every((position) => known.has(position))
      ? 1
      : Number.POSITIVE_INFINITY,
  weak: weakPattern,
  draw: () => [],
};

/** What takes no code: there is one way, and nothing to be weak. */
export const NO_CODE: CodeRules = { ...AS_WRITTEN, codes: () => 1, left: () => 1, weak: () => undefined };
