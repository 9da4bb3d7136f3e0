/** Wheels of digits. */
import { normaliseCode, symbolsOf } from '../game/codes.ts';
import { BETWEEN, plainSigns } from './signs.ts';
import { type FastenerType, USUAL_MINUTES } from './type.ts';
import { isFactorySetting, isRun, isYear, weakPattern } from './weak.ts';
import { onWheels, ownWheels, signsOnWheel } from './wheels.ts';

const DIGITS = [...'0123456789'];

const own = ownWheels(signsOnWheel);
const symbols = (typed: string) => symbolsOf(normaliseCode(plainSigns(typed)));

export const number = {
  type: 'number',
  opensWith: 'code',
  directions: false,
  apart: false,
  hasWheels: true,
  usualLength: 3,
  minutes: USUAL_MINUTES,
  trySeconds: 5,
  asks: ['seeing', 'fineHands'],
  symbols,
  read(typed, hardware) {
    const given = symbols(typed.split(BETWEEN).join(''));
    const shown = own(hardware)?.flat() ?? DIGITS;
    const wrong = given.findIndex((symbol) => !DIGITS.includes(symbol) && !shown.includes(symbol));
    if (wrong < 0) return { ok: true, code: given.join('') };
    return {
      ok: false,
      trouble: { trouble: 'digitWanted', position: wrong + 1, symbol: given[wrong] ?? '' },
    };
  },
  write: (symbols) => symbols.join(''),
  ...onWheels({
    usual: () => DIGITS,
    reckoned: DIGITS.length,
    own,
    weak(symbols, { year, hardware } = {}) {
      const isZero = symbols.length > 1 && symbols.every((symbol) => symbol === '0');
      if (isFactorySetting(symbols, own(hardware)) || isZero) return 'factorySetting';
      if (isRun(symbols, DIGITS, true)) return 'run';
      return weakPattern(symbols) ?? (isYear(symbols, year) ? 'year' : undefined);
    },
  }),
} as const satisfies FastenerType;
