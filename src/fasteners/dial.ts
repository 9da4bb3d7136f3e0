/** A dial that is turned to one number after another, mostly right, left, right: a symbol is a number. */
import { normaliseCode } from '../game/codes.ts';
import { BETWEEN, plainSigns } from './signs.ts';
import { type CodeTrouble, type FastenerType, type Hardware, type Misfit, USUAL_MINUTES } from './type.ts';
import { isEvenlySpaced, weakPattern } from './weak.ts';
import { misfitsOn, onWheels } from './wheels.ts';

/** Common practice, no source: three numbers from 0 to 39. */
const NUMBERS = 3;
const MARKS = 40;
/** No dial has numbers of more digits; what has more is several run together. */
const MOST_DIGITS = 3;

const TURNS: ReadonlyMap<string, 'right' | 'left'> = new Map([
  ['R', 'right'],
  ['RIGHT', 'right'],
  ['L', 'left'],
  ['LEFT', 'left'],
]);

const faces = new Map<number, readonly string[]>();

function face(hardware: Hardware | undefined): readonly string[] {
  const marks = hardware?.marks ?? MARKS;
  let numbers = faces.get(marks);
  if (!numbers) {
    numbers = Array.from({ length: marks }, (_, number) => String(number));
    faces.set(marks, numbers);
  }
  return numbers;
}

/** A dash before the first number, or between a space and a number, says that it is below 0; elsewhere it parts numbers. */
const BELOW_ZERO = /(?<=^|[\s,;])[-−–]\d+/u;

/** Numbers without leading zeros, ways to turn, and what is neither. */
function tokensOf(typed: string): string[] {
  return plainSigns(typed)
    .split(BETWEEN)
    .flatMap((part) => normaliseCode(part).match(/\d+|\D+/gu) ?? [])
    .map((token) => token.replace(/^0+(?=\d+$)/u, ''));
}

/** "R32 L14 R25", "32 right, 14 left, 25 right": the numbers, if they are turned to as usual. */
function numbersOf(tokens: readonly string[]): readonly string[] | CodeTrouble {
  const numbers: string[] = [];
  const turns: string[] = [];
  for (const token of tokens) {
    const position = numbers.length + 1;
    if (TURNS.has(token)) turns.push(token);
    else if (!/^\d+$/u.test(token)) return { trouble: 'numberWanted', position, symbol: token };
    else if (token.length > MOST_DIGITS) return { trouble: 'numbersRunTogether', position, symbol: token };
    else numbers.push(token);
  }
  const wrong = turns.findIndex((turn, i) => TURNS.get(turn) !== (i % 2 === 0 ? 'right' : 'left'));
  const surplus =
    turns.length > 0 && turns.length !== numbers.length ? Math.min(turns.length, numbers.length) : -1;
  const at = wrong < 0 ? surplus : wrong;
  if (at >= 0) return { trouble: 'turning', position: at + 1, symbol: turns[at] ?? '' };
  return numbers;
}

function symbols(typed: string): readonly string[] {
  const tokens = tokensOf(typed);
  const numbers = numbersOf(tokens);
  return 'trouble' in numbers ? tokens : numbers;
}

const wheels = onWheels({
  own: () => undefined,
  usual: face,
  reckoned: MARKS,
  weak: (symbols) => weakPattern(symbols) ?? (isEvenlySpaced(symbols) ? 'run' : undefined),
});

export const dial = {
  type: 'dial',
  opensWith: 'code',
  directions: false,
  apart: true,
  hasWheels: false,
  usualLength: 3,
  minutes: USUAL_MINUTES,
  trySeconds: 15,
  asks: ['seeing', 'fineHands'],
  symbols,
  read(typed) {
    const below = BELOW_ZERO.exec(plainSigns(typed).trim());
    if (below) {
      const before = tokensOf(below.input.slice(0, below.index)).filter((token) => /^\d/u.test(token));
      return {
        ok: false,
        trouble: { trouble: 'numberWanted', position: before.length + 1, symbol: below[0] },
      };
    }
    const numbers = numbersOf(tokensOf(typed));
    if ('trouble' in numbers) return { ok: false, trouble: numbers };
    return { ok: true, code: numbers.join(' ') };
  },
  write: (symbols) => symbols.join(' '),
  ...wheels,
  misfits(symbols, hardware) {
    const got = symbols.length;
    const fits = got === 0 || got === NUMBERS;
    const length: readonly Misfit[] = fits ? [] : [{ misfit: 'length', wanted: NUMBERS, got, assumed: true }];
    return [...length, ...misfitsOn(symbols, undefined, () => face(hardware), hardware?.marks === undefined)];
  },
} as const satisfies FastenerType;
