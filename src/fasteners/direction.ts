/**
 * A shackle that opens after a sequence of moves up, down, left and right, as many as are set. A slip starts the sequence again, so
 * it takes longer than wheels.
 */
import { normaliseCode, symbolsOf } from '../game/codes.ts';
import { plainSigns } from './signs.ts';
import type { CodeTrouble, FastenerType } from './type.ts';
import { isRun, weakPattern } from './weak.ts';
import { onWheels } from './wheels.ts';

const MOVES = ['U', 'D', 'L', 'R'];
/** Once round, clockwise. */
const ROUND = ['U', 'R', 'D', 'L'];

/** Triangles, double arrows and pointing hands that stand for moves, beside the arrows that every code may have. */
const SIGNS: readonly (readonly [RegExp, string])[] = [
  [/[▲△▴⇑⏫🔼👆☝]/gu, 'U'],
  [/[▼▽▾⇓⏬🔽👇]/gu, 'D'],
  [/[◀◁◂◄⇐⏪👈]/gu, 'L'],
  [/[▶▷▸►⇒⏩👉]/gu, 'R'],
];
const BETWEEN = /[\s,;.:/>|+·•&–—−-]+/u;

/** A whole move first, so that "UPLEFT" is two. */
const MOVE = /UP|DOWN|DN|D|LEFT|LFT|LT|L|RIGHT|RGT|RT|R|U/y;
/** The last word may still be on its way. */
const BEGUN = /^(?:DOW?|LEF?|LF|RIG?H?|RG)$/u;

function movesOf(typed: string): string[] | CodeTrouble {
  let text = plainSigns(typed);
  for (const [signs, move] of SIGNS) text = text.replace(signs, move);
  const moves: string[] = [];
  const parts = text
    .split(BETWEEN)
    .map(normaliseCode)
    .filter((part) => part !== '');
  for (const [i, part] of parts.entries()) {
    let at = 0;
    while (at < part.length) {
      const rest = part.slice(at);
      MOVE.lastIndex = at;
      const move = i === parts.length - 1 && BEGUN.test(rest) ? rest : MOVE.exec(part)?.[0];
      if (move === undefined) {
        const symbol = at === 0 ? part : (symbolsOf(rest)[0] ?? rest);
        return { trouble: 'moveWanted', position: moves.length + 1, symbol };
      }
      moves.push(move.charAt(0));
      at += move.length;
    }
  }
  return moves;
}

const WORDS = /^\s*(?:up|down|left|right)(?:[\s,;]+(?:up|down|left|right))+\s*$/iu;

/** Two words or more that all name directions: whoever writes 'up left down' means the moves, whatever lock they are for. */
export function namesDirections(raw: string): boolean {
  return WORDS.test(raw);
}

export const direction = {
  type: 'direction',
  opensWith: 'code',
  directions: true,
  apart: false,
  hasWheels: false,
  usualLength: 4,
  minutes: { low: 0.5, likely: 1.5, high: 4 },
  trySeconds: 8,
  asks: ['fineHands'],
  symbols(typed) {
    const moves = movesOf(typed);
    return 'trouble' in moves ? symbolsOf(normaliseCode(typed)) : moves;
  },
  read(typed) {
    const moves = movesOf(typed);
    return 'trouble' in moves ? { ok: false, trouble: moves } : { ok: true, code: moves.join('') };
  },
  write: (symbols) => symbols.join(''),
  ...onWheels({
    own: () => undefined,
    usual: () => MOVES,
    reckoned: MOVES.length,
    weak: (symbols) => (symbols.length > 3 && isRun(symbols, ROUND, true) ? 'run' : weakPattern(symbols)),
  }),
} as const satisfies FastenerType;
