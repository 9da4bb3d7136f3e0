/** Wheels of letters. */
import { normaliseCode, symbolsOf } from '../game/codes.ts';
import { BETWEEN, plainSigns, withoutMarks } from './signs.ts';
import { type FastenerType, USUAL_MINUTES } from './type.ts';
import { isFactorySetting, isRun, weakPattern } from './weak.ts';
import { onWheels, ownWheels, signsOnWheel } from './wheels.ts';

const LETTERS = [...'ABCDEFGHIJKLMNOPQRSTUVWXYZ'];
const VOWELS = [...'AEIOUY'];

const own = ownWheels(signsOnWheel);
const symbols = (typed: string) => symbolsOf(normaliseCode(plainSigns(typed)));

export const word = {
  type: 'word',
  opensWith: 'code',
  directions: false,
  apart: false,
  hasWheels: true,
  usualLength: 4,
  minutes: USUAL_MINUTES,
  trySeconds: 6,
  asks: ['reading', 'seeing', 'fineHands'],
  symbols,
  read(typed, hardware) {
    const shown = new Set(own(hardware)?.flat() ?? LETTERS);
    // A mark that the wheels have is meant; others are not there to be set.
    const given = symbols(typed.split(BETWEEN).join('').replace(/['’]/gu, '')).flatMap((symbol) =>
      shown.has(symbol) ? [symbol] : symbolsOf(withoutMarks(symbol)),
    );
    const wrong = given.findIndex((symbol) => !shown.has(symbol) && !/^\p{L}\p{M}*$/u.test(symbol));
    if (wrong < 0) return { ok: true, code: given.join('') };
    return {
      ok: false,
      trouble: { trouble: 'letterWanted', position: wrong + 1, symbol: given[wrong] ?? '' },
    };
  },
  write: (symbols) => symbols.join(''),
  ...onWheels({
    usual: () => LETTERS,
    reckoned: LETTERS.length,
    own,
    weak(symbols, { hardware } = {}) {
      if (isFactorySetting(symbols, own(hardware))) return 'factorySetting';
      return isRun(symbols, LETTERS, false) ? 'run' : weakPattern(symbols);
    },
    // Without vowels no word comes out, and none that nobody wants to read.
    drawable(wheel) {
      const consonants = wheel.filter((letter) => !VOWELS.includes(letter));
      return consonants.length > 1 ? consonants : wheel;
    },
  }),
} as const satisfies FastenerType;
