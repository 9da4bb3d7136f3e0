/** Codes that are tried before others. Which they are is common practice, no published source. */
import type { WeakReason } from './type.ts';

const isAllAlike = (symbols: readonly string[]) =>
  symbols.length > 1 && symbols.every((symbol) => symbol === symbols[0]);

/** 4747, UDUD: the same part of two symbols or more, twice or oftener. */
function isRepeated(symbols: readonly string[]): boolean {
  for (let part = 2; part <= symbols.length / 2; part++) {
    if (symbols.length % part === 0 && symbols.every((symbol, i) => symbol === symbols[i % part]))
      return true;
  }
  return false;
}

/** A run of fewer symbols says nothing. */
const SHORTEST_RUN = 3;

/** Every symbol the next of the order, or every symbol the one before; `isRing`: after the last comes the first. */
export function isRun(symbols: readonly string[], order: readonly string[], isRing: boolean): boolean {
  const places = symbols.map((symbol) => order.indexOf(symbol));
  if (symbols.length < SHORTEST_RUN || places.includes(-1)) return false;
  const size = order.length;
  const goes = (step: number) =>
    places.every((place, i) => {
      const next = place + step;
      const wanted = isRing ? (next + size) % size : next;
      return i === places.length - 1 || places[i + 1] === wanted;
    });
  return goes(1) || goes(-1);
}

/** 10 20 30, 40 30 20: the same step each time. */
export function isEvenlySpaced(symbols: readonly string[]): boolean {
  if (symbols.length < SHORTEST_RUN || !symbols.every((symbol) => /^\d+$/.test(symbol))) return false;
  const numbers = symbols.map(Number);
  const step = (numbers[1] ?? 0) - (numbers[0] ?? 0);
  return step !== 0 && numbers.every((number, i) => i === 0 || number - (numbers[i - 1] ?? 0) === step);
}

/** The year itself and those beside it; where it is not known any of this century. */
export function isYear(symbols: readonly string[], year: number | undefined): boolean {
  const text = symbols.join('');
  if (!/^\d{4}$/.test(text)) return false;
  return year === undefined ? text.startsWith('20') : Math.abs(Number(text) - year) <= 1;
}

/** What is weak whatever the symbols are. */
export function weakPattern(symbols: readonly string[]): WeakReason | undefined {
  if (isAllAlike(symbols)) return 'allAlike';
  return isRepeated(symbols) ? 'repeated' : undefined;
}

/** Every wheel at the symbol that it starts with: as most locks with wheels come from the shop. */
export function isFactorySetting(
  symbols: readonly string[],
  wheels: readonly (readonly string[])[] | undefined,
): boolean {
  return (
    wheels !== undefined &&
    symbols.length > 1 &&
    symbols.length === wheels.length &&
    symbols.every((symbol, i) => symbol === wheels[i]?.[0])
  );
}
