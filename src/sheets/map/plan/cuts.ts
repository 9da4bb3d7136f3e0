/** Where the order of play is cut into parts: where the fewest links are cut and the parts are filled alike, by dynamic programming. */
import type { Loads } from './loads.ts';

/** What a part filled to the brim costs, in links cut; half full, a quarter of it. */
const FULL = 24;
/** So much of the area is filled at the most by the estimate: what is told later takes room too. */
const FILL = 0.92;
/** Trays stand less closely than bars: they want to be beside what uses them. */
const LOOSE = 0.88;

/** The estimate may be wrong by so much, so that it is worth a try. */
const OVERFULL = 1.3;

export interface Cutting {
  readonly loads: Loads;
  /** Links across each place between bars. */
  readonly across: readonly number[];
  /** Height of a part. */
  readonly room: number;
}

/** How full the bars from `start` to before `end` would make a part; 1 is as full as may be. */
export function fills({ loads, room }: Cutting, start: number, end: number): number {
  let spine = 0;
  let beside = 0;
  for (let i = start; i < end; i++) {
    spine += loads.bars[i] ?? 0;
    beside += loads.beside[i] ?? 0;
  }
  return Math.max(spine / (FILL * room), beside / (2 * LOOSE * FILL * room));
}

const costs = (cutting: Cutting, start: number, fill: number) =>
  (start > 0 ? (cutting.across[start] ?? 0) : 0) + FULL * fill * fill;

/** First bars of as few parts as may be. A bar that is too much for a part has one to itself. */
export function fewestParts(cutting: Cutting): number[] {
  const bars = cutting.loads.bars.length;
  const best: { parts: number; cost: number; start: number }[] = [{ parts: 0, cost: 0, start: 0 }];
  for (let end = 1; end <= bars; end++) {
    let least = { parts: Number.POSITIVE_INFINITY, cost: 0, start: end - 1 };
    for (let start = end - 1; start >= 0; start--) {
      const fill = fills(cutting, start, end);
      if (fill > 1 && start < end - 1) break;
      const before = best[start];
      if (!before) continue;
      const parts = before.parts + 1;
      const cost = before.cost + costs(cutting, start, fill);
      if (parts < least.parts || (parts === least.parts && cost < least.cost)) least = { parts, cost, start };
    }
    best.push(least);
  }
  const starts: number[] = [];
  for (let end = bars; end > 0; end = starts[0] ?? 0) starts.unshift(best[end]?.start ?? 0);
  return starts.length > 0 ? starts : [0];
}

/** No fewer parts than this can hold everything. */
export function leastParts({ loads, room }: Cutting): number {
  const sum = (list: readonly number[]) => list.reduce((total, value) => total + value, 0);
  return Math.max(1, Math.ceil(Math.max(sum(loads.bars) / room, sum(loads.beside) / (2 * room))));
}

/** First bars of exactly so many parts, as alike as may be; undefined when there are not so many bars. */
export function partsInto(cutting: Cutting, parts: number): number[] | undefined {
  const bars = cutting.loads.bars.length;
  if (bars < parts) return undefined;
  let before: { cost: number; starts: number[] }[] = Array.from({ length: bars + 1 }, (_, end) => ({
    cost: end === 0 ? 0 : Number.POSITIVE_INFINITY,
    starts: [],
  }));
  for (let part = 1; part <= parts; part++) {
    before = before.map((_, end) => {
      let best = { cost: Number.POSITIVE_INFINITY, starts: [] as number[] };
      for (let start = end - 1; start >= part - 1; start--) {
        const fill = fills(cutting, start, end);
        if (fill > OVERFULL && start < end - 1) break;
        const rest = before[start];
        if (!rest || !Number.isFinite(rest.cost)) continue;
        const cost = rest.cost + costs(cutting, start, fill);
        if (cost < best.cost) best = { cost, starts: [...rest.starts, start] };
      }
      return best;
    });
  }
  const last = before[bars];
  return last && Number.isFinite(last.cost) ? last.starts : undefined;
}

/** First bars of the second half of a book, the best first. */
export function halves(cutting: Cutting, from: number, to: number): number[] {
  const costOf = (middle: number) => {
    const [first, second] = [fills(cutting, from, middle), fills(cutting, middle, to)];
    return costs(cutting, from, first) + costs(cutting, middle, second) + FULL * Math.max(first, second);
  };
  const middles = Array.from({ length: Math.max(0, to - from - 1) }, (_, i) => from + 1 + i);
  const cost = new Map(middles.map((middle) => [middle, costOf(middle)]));
  return middles.sort((a, b) => (cost.get(a) ?? 0) - (cost.get(b) ?? 0) || a - b);
}
