/**
 * What locks have in common whose code is one symbol after another, each from a wheel of its own or from the same set: what fits,
 * how many codes there are, and drawing one.
 * Counting is the multiplication principle: the product of how many symbols each free position can show.
 */
import { normaliseCode, symbolsOf } from '../game/codes.ts';
import { plainSigns } from './signs.ts';
import type { CodeRules, Hardware, Misfit, PickOne, WeakReason } from './type.ts';

export interface Wheels {
  /** The lock's own wheels, from its hardware; undefined: any number of positions, all alike. */
  readonly own: ReturnType<typeof ownWheels>;
  /** What each position shows where there are no wheels of its own; undefined: it is not known. */
  readonly usual: (hardware: Hardware | undefined) => readonly string[] | undefined;
  /** How many symbols to reckon with where they are not known. */
  readonly reckoned: number;
  readonly weak: CodeRules['weak'];
  /** Of the symbols at a position those that a drawn code may have; never none of them. */
  readonly drawable?: (wheel: readonly string[]) => readonly string[];
}

type Shared = Omit<CodeRules, 'symbols' | 'read' | 'write'>;

/** A draw that is weak is thrown away; after so many the lock has hardly any other code. */
const DRAWS = 200;

export function onWheels({ usual, reckoned, own, weak, drawable }: Wheels): Shared {
  const wheel = (position: number, hardware?: Hardware) => {
    const wheels = own(hardware);
    return wheels ? wheels[position] : usual(hardware);
  };
  const length = (hardware?: Hardware) => own(hardware)?.length;
  const left: Shared['left'] = (count, hardware, known) => {
    const fixed = length(hardware);
    if (fixed !== undefined && fixed !== count) return 0;
    let product = 1;
    for (let position = 0; position < count; position++) {
      if (!known.has(position)) product *= wheel(position, hardware)?.length ?? reckoned;
    }
    return product;
  };
  return {
    wheel,
    length,
    misfits(symbols, hardware) {
      return symbols.length === 0
        ? []
        : misfitsOn(symbols, length(hardware), (position) => wheel(position, hardware), !own(hardware));
    },
    codes: (count, hardware) => left(count, hardware, new Set()),
    left,
    weak,
    draw(pick, count, hardware) {
      const fixed = length(hardware);
      if (fixed !== undefined && fixed !== count) return [];
      const wheels = Array.from({ length: count }, (_, position) => wheel(position, hardware) ?? []);
      return drawn(pick, wheels.map(drawable ?? ((symbols) => symbols)), (symbols) =>
        weak(symbols, { hardware }),
      );
    },
  };
}

/** First the length, then symbol by symbol as far as there are wheels. */
export function misfitsOn(
  symbols: readonly string[],
  length: number | undefined,
  wheel: (position: number) => readonly string[] | undefined,
  assumed: boolean,
): Misfit[] {
  const misfits: Misfit[] = [];
  if (length !== undefined && length !== symbols.length) {
    misfits.push({ misfit: 'length', wanted: length, got: symbols.length, assumed });
  }
  for (const [position, symbol] of symbols.entries()) {
    const shown = wheel(position);
    if (shown && !shown.includes(symbol)) {
      misfits.push({ misfit: 'symbol', position: position + 1, symbol, wheel: shown, assumed });
    }
  }
  return misfits;
}

/** One symbol from each wheel, not weak where that can be had; empty where a wheel shows nothing. */
export function drawn(
  pick: PickOne,
  wheels: readonly (readonly string[])[],
  weak: (symbols: readonly string[]) => WeakReason | undefined,
): readonly string[] {
  if (wheels.some((symbols) => symbols.length === 0)) return [];
  let code: string[] = [];
  for (let draw = 0; draw < DRAWS; draw++) {
    code = wheels.map((symbols) => symbols[pick(symbols.length)] ?? '');
    if (weak(code) === undefined) break;
  }
  return code;
}

type WheelSymbols = readonly (readonly string[])[];

/** The lock's own wheels as `read` takes each apart, once for each hardware. */
export function ownWheels(
  read: (written: string) => readonly string[],
): (hardware: Hardware | undefined) => WheelSymbols | undefined {
  const known = new WeakMap<Hardware, WheelSymbols>();
  return (hardware) => {
    if (!hardware?.wheels) return undefined;
    let wheels = known.get(hardware);
    if (!wheels) {
      wheels = hardware.wheels.map(read);
      known.set(hardware, wheels);
    }
    return wheels;
  };
}

/** Digits or letters on one wheel, once each: "ABCDE", "A B C", "0-9". */
export function signsOnWheel(written: string): string[] {
  const symbols = symbolsOf(normaliseCode(plainSigns(written)).replace(/[,;/|]/gu, ''));
  return onceEach(symbols);
}

/** What a wheel shows: all between the two of "0-9", else the symbols, each once. */
export function onceEach(symbols: readonly string[]): string[] {
  return [...new Set(rangeOf(symbols) ?? symbols)];
}

function rangeOf(symbols: readonly string[]): string[] | undefined {
  const [first = '', dash = '', last = ''] = symbols;
  if (symbols.length !== 3 || !/^[-–]$/u.test(dash)) return undefined;
  if (!/^(?:[0-9]{2}|[A-Z]{2})$/u.test(first + last) || first >= last) return undefined;
  const from = first.charCodeAt(0);
  return Array.from({ length: last.charCodeAt(0) - from + 1 }, (_, i) => String.fromCharCode(from + i));
}
