/**
 * Which block on which side of the spine, and in which order: simulated annealing (Kirkpatrick, Gelatt and Vecchi 1983) from a
 * fixed seed, then a climb to where no block is better off elsewhere. Their length is a count of work and not a time, so that the
 * same game always gets the same arrangement.
 */
import { wanted } from './columns.ts';
import { type Judged, judge } from './judge.ts';
import type { Columns, Joined } from './spine.ts';
import { firstColumns } from './start.ts';

export interface SearchOptions {
  /** Where the search begins, every block in it; without it, with a quick first guess. */
  readonly start?: Columns;
  /** How much work is done: 1 when it is left out. */
  readonly effort?: number;
}

/** Rounds of settling while searching. */
const ROUNDS = 3;
/** Blocks and ties looked at, with effort 1. */
const WORK = 1_500_000;
const TRIALS_EACH = 150;
/** So much work between two reports. */
const REPORT = 60_000;
/** Temperature, in units: at the start, and at the end. */
const HOT = 19;
const COLD = 0.25;
/** A block is put so many places above and below where its ties lead. */
const SHIFT = 2;

/** Numbers in [0, 1): a linear congruential generator modulo 2^32, its constants from Press et al., Numerical Recipes. Good enough to wander with. */
function randomFrom(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 2 ** 32;
  };
}

/** Those that can change places: on the sides all that is not held, on the spine only what is held, which is to say what parts it. */
function movable({ spine }: Joined, columns: Columns): readonly number[] {
  const { held } = spine;
  const free = (column: readonly number[]) => column.filter((id) => !held?.has(id));
  const parting = held ? columns.spine.filter((id) => held.has(id)) : [];
  return [...free(columns.left), ...free(columns.right), ...parting].sort((a, b) => a - b);
}

const without = (column: readonly number[], block: number) => column.filter((id) => id !== block);

function inserted(column: readonly number[], block: number, place: number): readonly number[] {
  return [...column.slice(0, place), block, ...column.slice(place)];
}

/** The columns with a block on the given side, `shift` places from where its ties lead. What parts the spine stays on it. */
function moved(
  joined: Joined,
  { columns, y }: Judged,
  block: number,
  toLeft: boolean,
  shift: number,
): Columns {
  const onSpine = columns.spine.includes(block);
  const to = onSpine ? 'spine' : toLeft ? 'left' : 'right';
  const rest = {
    left: onSpine ? columns.left : without(columns.left, block),
    spine: onSpine ? without(columns.spine, block) : columns.spine,
    right: onSpine ? columns.right : without(columns.right, block),
  };
  const want = wanted(joined, y, block);
  let natural = 0;
  for (const id of rest[to]) if ((y[id] ?? 0) < want) natural++;
  const place = Math.min(rest[to].length, Math.max(0, natural + shift));
  return { ...rest, [to]: inserted(rest[to], block, place) };
}

/** Powers may differ in their last bits from one machine to another; rounded, no choice depends on them. */
const rounded = (value: number) => Math.round(value * 1e9) / 1e9;
const likelihood = (rise: number, heat: number) => rounded(Math.exp(-rise / heat));

const workOf = ({ spine, ties }: Joined) => spine.blocks.length + ties.count + 20;

/** Yields what is best so far, now and then; the last is the best that was found. */
export function* anneal(joined: Joined, start: Judged, effort = 1): Generator<Judged, Judged> {
  let current = start;
  let best = start;
  /** What has no ties only fills up the sides, and that the climb does as well. */
  const blocks = movable(joined, start.columns).filter((id) => (joined.pull[id] ?? 0) > 0);
  const work = workOf(joined);
  const trials = Math.ceil(effort * Math.min(TRIALS_EACH * blocks.length, WORK / work));
  const pause = Math.ceil(REPORT / work);
  const random = randomFrom(20_011);
  for (let trial = 0; trial < trials; trial++) {
    const heat = rounded(HOT * (COLD / HOT) ** (trial / trials));
    const block = blocks[Math.floor(random() * blocks.length)] ?? 0;
    const wasLeft = current.columns.left.includes(block);
    const toLeft = random() < 0.5 ? !wasLeft : wasLeft;
    const shift = Math.floor(random() * (2 * SHIFT + 1)) - SHIFT;
    const next = judge(joined, moved(joined, current, block, toLeft, shift), ROUNDS);
    if (next.cost <= current.cost || random() < likelihood(next.cost - current.cost, heat)) current = next;
    if (current.cost < best.cost) best = current;
    if (trial % pause === pause - 1) yield best;
  }
  return best;
}

const sameOrder = (a: readonly number[], b: readonly number[]) =>
  a.length === b.length && a.every((id, i) => id === b[i]);
const sameColumns = (a: Columns, b: Columns) =>
  sameOrder(a.left, b.left) && sameOrder(a.spine, b.spine) && sameOrder(a.right, b.right);

/**
 * From the start to where no single block can be put elsewhere for a gain of more than `worth` units, unless the work runs out.
 * It asks nothing but the columns, so a climb from where one has ended stays there.
 */
export function* climb(
  joined: Joined,
  start: Columns,
  { worth = 0, effort = 1 } = {},
): Generator<Judged, Judged> {
  let best = judge(joined, start, ROUNDS);
  const blocks = movable(joined, start);
  const work = workOf(joined);
  const pause = Math.ceil(REPORT / work);
  let left = Math.ceil((2 * effort * WORK) / work);
  let calm = 0;
  for (let at = 0; calm < blocks.length && left > 0; at = (at + 1) % blocks.length) {
    const block = blocks[at] ?? 0;
    let better: Judged | undefined;
    for (const toLeft of [true, false]) {
      for (let shift = -SHIFT; shift <= SHIFT; shift++) {
        const columns = moved(joined, best, block, toLeft, shift);
        if (sameColumns(columns, best.columns)) continue;
        const next = judge(joined, columns, ROUNDS);
        if (next.cost < (better ?? best).cost) better = next;
        left--;
        if (left % pause === 0) yield best;
      }
    }
    const isWorth = better !== undefined && better.cost < best.cost - worth;
    if (better && isWorth) best = better;
    calm = isWorth ? 0 : calm + 1;
  }
  return best;
}

/** Better and better arrangements, the first at once; the last is the best that was found. Whoever stops iterating has cancelled it. */
export function* search(joined: Joined, options: SearchOptions = {}): Generator<Judged, Judged> {
  const { effort = 1 } = options;
  const bars = joined.spine.blocks.slice(0, joined.spine.bars).map((_, i) => i);
  const start = options.start ?? firstColumns(joined, { left: [], spine: bars, right: [] });
  const first = judge(joined, start, ROUNDS);
  yield first;
  const found = yield* anneal(joined, first, effort);
  return yield* climb(joined, found.columns, { effort });
}
