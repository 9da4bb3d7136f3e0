/**
 * What falls in many scenarios at once. In scenario i one event never comes, everything else as it was.
 * Method: forward chaining as in reach.ts, 32 scenarios in the bits of a word: all is AND, any is OR, k of n a bank of
 * one-bit counters. From left to right once; in a ring again and again from nothing until nothing changes (least fixed point).
 * Cost: events times words times needs; for everything at once about n²/32.
 */
import type { Flow } from './flow.ts';

export class Falls {
  readonly words: number;
  /** For each position its words: bit set where the event still comes. */
  readonly stands: Uint32Array;

  constructor(words: number, stands: Uint32Array) {
    this.words = words;
    this.stands = stands;
  }

  /** In this scenario the event at this position no longer comes. */
  falls(scenario: number, position: number): boolean {
    const word = this.stands[position * this.words + (scenario >>> 5)] ?? 0;
    return ((word >>> (scenario & 31)) & 1) === 0;
  }
}

/** One scenario for each position given. */
export function falling(flow: Flow, never: Int32Array): Falls {
  const { count, ringEnd } = flow;
  const words = (never.length + 31) >>> 5;
  const stands = new Uint32Array(count * words);
  const scenario = new Int32Array(count).fill(-1);
  for (let i = 0; i < never.length; i++) scenario[never[i] ?? 0] = i;
  const now = new Uint32Array(words);
  const counters = countersFor(flow, words);
  const look = (at: number): boolean => {
    wordsAt(flow, at, stands, now, counters);
    const own = scenario[at] ?? -1;
    if (own >= 0) now[own >>> 5] = (now[own >>> 5] ?? 0) & ~(1 << (own & 31));
    const base = at * words;
    let changed = false;
    for (let w = 0; w < words; w++) {
      const word = now[w] ?? 0;
      if (stands[base + w] === word) continue;
      stands[base + w] = word;
      changed = true;
    }
    return changed;
  };
  for (let at = 0; at < count; at++) {
    const end = ringEnd[at] ?? at + 1;
    for (let again = true; again; ) {
      again = false;
      for (let member = at; member < end; member++) again = look(member) || again;
      if (end === at + 1) break;
    }
    at = end - 1;
  }
  return new Falls(words, stands);
}

/** Room for what `wordsAt` counts. */
export function countersFor(flow: Flow, words: number): Uint32Array {
  const most = flow.k.reduce((a, b) => Math.max(a, b), 0);
  return new Uint32Array((most + 1) * words);
}

/** Into `now`: the scenarios in which what the event at this position waits for comes, by the words of `stands`. */
export function wordsAt(
  flow: Flow,
  at: number,
  stands: Uint32Array,
  now: Uint32Array,
  counters: Uint32Array,
) {
  now.fill(0xffffffff);
  allOf(flow, at, stands, now);
  const { starts } = flow.some;
  if ((starts[at + 1] ?? 0) > (starts[at] ?? 0)) atLeast(flow, at, stands, now, counters);
}

function allOf(flow: Flow, at: number, stands: Uint32Array, now: Uint32Array) {
  const { starts, items } = flow.all;
  const words = now.length;
  for (let i = starts[at] ?? 0; i < (starts[at + 1] ?? 0); i++) {
    const base = (items[i] ?? 0) * words;
    for (let w = 0; w < words; w++) now[w] = (now[w] ?? 0) & (stands[base + w] ?? 0);
  }
}

/** Word j of `counters` has a bit where at least j of the needs seen so far stand. */
function atLeast(flow: Flow, at: number, stands: Uint32Array, now: Uint32Array, counters: Uint32Array) {
  const { starts, items } = flow.some;
  const words = now.length;
  const wanted = flow.k[at] ?? 0;
  counters.fill(0, 0, (wanted + 1) * words);
  counters.fill(0xffffffff, 0, words);
  for (let i = starts[at] ?? 0; i < (starts[at + 1] ?? 0); i++) {
    const base = (items[i] ?? 0) * words;
    for (let j = wanted; j >= 1; j--) {
      for (let w = 0; w < words; w++) {
        const carried = (counters[(j - 1) * words + w] ?? 0) & (stands[base + w] ?? 0);
        counters[j * words + w] = (counters[j * words + w] ?? 0) | carried;
      }
    }
  }
  for (let w = 0; w < words; w++) now[w] = (now[w] ?? 0) & (counters[wanted * words + w] ?? 0);
}
