/**
 * Which block on which side of the spine, and in which order: simulated annealing (Kirkpatrick, Gelatt and Vecchi 1983) from a
 * fixed seed. Its length is a count of work and not a time, so that the same game always gets the same arrangement.
 */
import { wanted } from './columns.ts';
import { type Judged, judge } from './judge.ts';
import type { Columns, Joined } from './spine.ts';

export interface SearchOptions {
  /** Where the search begins; without it, each block where it adds least, one after the other. */
  readonly start?: Columns;
  /** How much is searched: 1 when it is left out. */
  readonly effort?: number;
}

/** Rounds of settling while searching. */
const ROUNDS = 3;
/** Blocks and ties looked at, with effort 1. */
const WORK = 80_000;
const TRIALS_EACH = 60;
/** Temperature, in units. */
const HOT = 19;
const COLD = 0.25;
/** A better arrangement is given after so many trials, when there is one. */
const REPORT_EVERY = 64;

/** Numbers in [0, 1): a linear congruential generator modulo 2^32, its constants from Press et al., Numerical Recipes. Good enough to wander with. */
function randomFrom(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 2 ** 32;
  };
}

/** Two sides that are about as high, in the order of the blocks, each where it adds least. */
function firstColumns(joined: Joined): Columns {
  const { blocks, bars } = joined.spine;
  let columns: Columns = { left: [], spine: blocks.slice(0, bars).map((_, i) => i), right: [] };
  for (let i = bars; i < blocks.length; i++) {
    const left = judge(joined, { ...columns, left: [...columns.left, i] }, ROUNDS);
    const right = judge(joined, { ...columns, right: [...columns.right, i] }, ROUNDS);
    columns = left.cost <= right.cost ? left.columns : right.columns;
  }
  return columns;
}

const without = (column: readonly number[], block: number) => column.filter((i) => i !== block);

function inserted(column: readonly number[], block: number, place: number): readonly number[] {
  return [...column.slice(0, place), block, ...column.slice(place)];
}

/** One block moved to another place: on either side, where its ties lead or a place beside that. */
function neighbour(joined: Joined, { columns, y }: Judged, random: () => number): Columns {
  const { blocks, bars } = joined.spine;
  const block = bars + Math.floor(random() * (blocks.length - bars));
  const wasLeft = columns.left.includes(block);
  const toLeft = random() < 0.5 ? !wasLeft : wasLeft;
  const left = without(columns.left, block);
  const right = without(columns.right, block);
  const column = toLeft ? left : right;
  const want = wanted(joined, y, block);
  const natural = column.filter((i) => (y[i] ?? 0) < want).length;
  const shift = Math.floor(random() * 5) - 2;
  const place = Math.min(column.length, Math.max(0, natural + shift));
  const moved = inserted(column, block, place);
  return toLeft ? { ...columns, left: moved, right } : { ...columns, left, right: moved };
}

/** Powers may differ in their last bits from one machine to another; rounded, no choice depends on them. */
const rounded = (value: number) => Math.round(value * 1e9) / 1e9;
const likelihood = (rise: number, heat: number) => rounded(Math.exp(-rise / heat));

/** Better and better columns; the last is the best that was found. Whoever stops iterating has cancelled it. */
export function* search(joined: Joined, options: SearchOptions = {}): Generator<Judged, Judged> {
  let current = judge(joined, options.start ?? firstColumns(joined), ROUNDS);
  let best = current;
  yield best;
  let reported = best;
  const { blocks, bars } = joined.spine;
  const movable = blocks.length - bars;
  const work = blocks.length + joined.ties.length;
  const trials = Math.ceil((options.effort ?? 1) * Math.min(TRIALS_EACH * movable, WORK / Math.max(1, work)));
  const random = randomFrom(20_011);
  for (let trial = 0; movable > 0 && trial < trials; trial++) {
    const heat = rounded(HOT * (COLD / HOT) ** (trial / trials));
    const next = judge(joined, neighbour(joined, current, random), ROUNDS);
    if (next.cost <= current.cost || random() < likelihood(next.cost - current.cost, heat)) current = next;
    if (current.cost < best.cost) best = current;
    if (best !== reported && trial % REPORT_EVERY === REPORT_EVERY - 1) {
      yield best;
      reported = best;
    }
  }
  return best;
}
