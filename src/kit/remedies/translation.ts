/**
 * One code turned into another, sign by sign: what a legend says, and what comes out.
 * Every sign that the first lock can show stands for so many signs of the second that a whole code of it comes out; of a longer one only the first are
 * used. Signs stand for different ones as far as there are enough. Drawn from what the second lock can show, by a stream
 * that depends on the key alone, until the code is neither weak nor one of those to keep away from. Own rule.
 */
import { picksFor } from '../../engine/simulation/picks.ts';
import { fastenerType, type Hardware, type PickOne } from '../../fasteners/index.ts';

export interface Translation {
  /** Each sign of the first lock and what it stands for, in the order of its wheels. */
  readonly signs: readonly (readonly [sign: string, stands: readonly string[]])[];
  /** Of the second lock. */
  readonly code: readonly string[];
  /** Signs of the first code that count; fewer than it has where the second is shorter. */
  readonly counted: number;
}

export interface Side {
  readonly type: string;
  readonly hardware: Hardware | undefined;
}

const DRAWS = 60;
/** A legend of more lines is read by nobody. */
const MOST_SIGNS = 60;

const DIGITS = [...'0123456789'];
const LETTERS = [...'ABCDEFGHIJKLMNOPQRSTUVWXYZ'];

/** All that the first lock might have asked for, so that the legend does not give the code away. */
function alphabet({ type, hardware }: Side, code: readonly string[]): string[] {
  const { wheel } = fastenerType(type);
  const shown = code.flatMap((_, position) => wheel(position, hardware) ?? []);
  const usual = code.every((sign) => DIGITS.includes(sign))
    ? DIGITS
    : [...(code.some((sign) => DIGITS.includes(sign)) ? DIGITS : []), ...LETTERS];
  // Names of pictures have no usual set: in the order of the alphabet they tell nothing.
  const isSpelled = code.every((sign) => DIGITS.includes(sign) || LETTERS.includes(sign));
  const known = shown.length > 0 ? shown : isSpelled ? usual : [];
  const rest = code.filter((sign) => !known.includes(sign)).sort();
  return [...new Set([...known, ...rest])];
}

/** How long a code of the second lock is. */
function lengthOn({ type, hardware }: Side, length: number): number {
  const rules = fastenerType(type);
  const fixed = rules.length(hardware);
  if (fixed !== undefined) return fixed;
  const sample = Array.from({ length }, (_, position) => rules.wheel(position, hardware)?.[0] ?? '');
  const misfit = rules.misfits(sample, hardware).find((one) => one.misfit === 'length');
  return misfit?.misfit === 'length' ? misfit.wanted : length;
}

/** Undefined where nothing is known of what the second lock shows, or no sign of the first can stand for one at each place. */
export function translate(
  code: readonly string[],
  from: Side,
  to: Side,
  avoid: ReadonlySet<string>,
  key: string,
): Translation | undefined {
  const rules = fastenerType(to.type);
  const length = lengthOn(to, code.length);
  const signs = alphabet(from, code);
  if (code.length === 0 || length === 0 || signs.length > MOST_SIGNS) return undefined;
  const each = Math.ceil(length / code.length);
  const wheels = Array.from({ length }, (_, position) => rules.wheel(position, to.hardware) ?? []);
  if (wheels.some((wheel) => wheel.length === 0)) return undefined;
  const pick = picksFor(key);
  for (let draw = 0; draw < DRAWS; draw++) {
    const stands = drawn(code, signs, wheels, each, pick);
    if (!stands) return undefined;
    const out = code.flatMap((sign) => stands.get(sign) ?? []).slice(0, length);
    const isGood = rules.weak(out, { hardware: to.hardware }) === undefined && !avoid.has(rules.write(out));
    if (!isGood || rules.misfits(out, to.hardware).length > 0) continue;
    const counted = Math.ceil(length / each);
    return { signs: signs.map((sign) => [sign, stands.get(sign) ?? []]), code: out, counted };
  }
  return undefined;
}

function drawn(
  code: readonly string[],
  signs: readonly string[],
  wheels: readonly (readonly string[])[],
  each: number,
  pick: PickOne,
): Map<string, string[]> | undefined {
  const stands = new Map<string, string[]>();
  const used = Array.from({ length: each }, () => new Set<string>());
  const isIn = new Set(code);
  // Signs of the code come first: they are bound to what their places can show.
  for (const sign of [...isIn, ...signs.filter((one) => !isIn.has(one))]) {
    const own: string[] = [];
    for (let part = 0; part < each; part++) {
      const places = code.flatMap((one, i) => (one === sign ? [i * each + part] : []));
      const bound = places.map((place) => wheels[place]).filter((wheel) => wheel !== undefined);
      const [first = wheels[part] ?? wheels[0] ?? [], ...others] = bound;
      const allowed = first.filter((symbol) => others.every((wheel) => wheel.includes(symbol)));
      if (allowed.length === 0) return undefined;
      const fresh = allowed.filter((symbol) => !used[part]?.has(symbol));
      const from = fresh.length > 0 ? fresh : allowed;
      const symbol = from[pick(from.length)] ?? '';
      used[part]?.add(symbol);
      own.push(symbol);
    }
    stands.set(sign, own);
  }
  return stands;
}
