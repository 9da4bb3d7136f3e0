/** Where the order of play is cut into parts: where the fewest links are cut and the parts are filled alike, by dynamic programming. */
import type { Loads } from './loads.ts';

/** What a part filled to the brim costs, in links cut; half full, a quarter of it. */
const FULL = 24;
/** So much of the area is filled at the most by the estimate: what is told later takes room too. */
const FILL = 0.92;
/** Trays stand less closely than bars: they want to be beside what uses them. */
const LOOSE = 0.88;

export interface Cutting {
  readonly loads: Loads;
  /** Links across each place between bars. */
  readonly across: readonly number[];
  /** Height of a part. */
  readonly room: number;
}

/** How full the bars from `start` to before `end` would make a part; 1 is as full as may be. */
function fills({ loads, room }: Cutting, start: number, end: number): number {
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
