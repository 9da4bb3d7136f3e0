/** Heights of blocks in three columns: each column in turn is the chain nearest to where its ties lead, the others held. */
import { clip, nearestInOrder, type Pools, poolsFor } from './isotonic.ts';
import type { Column, Columns, Joined } from './spine.ts';

/** In the order in which they settle: the sides first, so that they go to the bars and not the bars to them. */
const SETTLING: readonly Column[] = ['left', 'right', 'spine'];

/** A block that nothing leads to or from gives way to all others. */
const IDLE_WEIGHT = 1e-6;

/** A run of blocks that have no held one between them, packed as closely as may be. */
interface Run {
  /** From top to bottom. */
  readonly ids: number[];
  /** How far each is below the first. */
  readonly offsets: number[];
  /** What the upper edge of the first has to lie between. */
  low: number;
  high: number;
}

/** The runs of all columns, in the order in which they settle. */
export type Runs = readonly Run[];

export function runsOf({ spine, heights }: Joined, columns: Columns): Runs {
  const { held, bands, gap } = spine;
  const runs: Run[] = [];
  for (const column of SETTLING) {
    const band = bands?.[column];
    let run: Run = { ids: [], offsets: [], low: band?.top ?? Number.NEGATIVE_INFINITY, high: 0 };
    let above = -1;
    let end = 0;
    const close = (bottom: number) => {
      run.high = bottom - end;
      if (run.ids.length > 0) runs.push(run);
    };
    for (const id of columns[column]) {
      const fixed = held?.get(id);
      if (fixed) {
        close(above < 0 ? fixed.y : fixed.y - gap(above, id));
        run = { ids: [], offsets: [], low: fixed.y + (heights[id] ?? 0), high: 0 };
        end = 0;
      } else {
        const space = above < 0 ? 0 : gap(above, id);
        if (run.ids.length === 0) run.low += space;
        const offset = run.ids.length === 0 ? 0 : end + space;
        run.ids.push(id);
        run.offsets.push(offset);
        end = offset + (heights[id] ?? 0);
      }
      above = id;
    }
    close(band?.bottom ?? Number.POSITIVE_INFINITY);
  }
  return runs;
}

/** By how much runs are too long for the room that they have. */
export function excessOf(runs: Runs): number {
  let excess = 0;
  for (const { low, high } of runs) if (low > high) excess += low - high;
  return excess;
}

/** Where the ties of a block would have its upper edge: their mean; where it is, without ties. */
export function wanted(
  { first, other, offset, weight, pull }: Joined,
  y: Float64Array,
  block: number,
): number {
  const all = pull[block] ?? 0;
  if (all === 0) return y[block] ?? 0;
  let sum = 0;
  const end = first[block + 1] ?? 0;
  for (let tie = first[block] ?? 0; tie < end; tie++) {
    sum += (weight[tie] ?? 0) * ((y[other[tie] ?? 0] ?? 0) + (offset[tie] ?? 0));
  }
  return sum / all;
}

/** Upper edges with every run packed to its top, and every held block where it is held. */
export function packed({ spine, heights }: Joined, runs: Runs): Float64Array {
  const y = new Float64Array(heights.length);
  let top = 0;
  if (spine.held && spine.held.size > 0) {
    top = Number.POSITIVE_INFINITY;
    for (const [id, held] of spine.held) {
      y[id] = held.y;
      top = Math.min(top, held.y);
    }
  }
  for (const { ids, offsets, low, high } of runs) {
    const start = Number.isFinite(low) ? low : Math.min(top, high);
    for (let place = 0; place < ids.length; place++) y[ids[place] ?? 0] = start + (offsets[place] ?? 0);
  }
  return y;
}

/** Moves all that is free up or down together, to where its ties to what is held would have it on the whole. */
function drift({ spine, ties }: Joined, runs: Runs, y: Float64Array): void {
  const { held } = spine;
  if (!held || held.size === 0) return;
  let sum = 0;
  let weight = 0;
  for (let tie = 0; tie < ties.count; tie++) {
    const from = ties.from[tie] ?? 0;
    const to = ties.to[tie] ?? 0;
    if (held.has(from) === held.has(to)) continue;
    const w = ties.weight[tie] ?? 1;
    const down = (y[to] ?? 0) + (ties.toY[tie] ?? 0) - (y[from] ?? 0) - (ties.fromY[tie] ?? 0);
    sum += w * (held.has(to) ? down : -down);
    weight += w;
  }
  if (weight === 0) return;
  for (const { ids } of runs) for (const id of ids) y[id] = (y[id] ?? 0) + sum / weight;
}

interface Room {
  readonly targets: Float64Array;
  readonly weights: Float64Array;
  readonly pools: Pools;
}

const rooms = new WeakMap<Joined, Room>();

/** Room to settle in, kept between calls. */
function roomFor(joined: Joined): Room {
  let room = rooms.get(joined);
  if (!room) {
    const size = joined.heights.length;
    room = { targets: new Float64Array(size), weights: new Float64Array(size), pools: poolsFor(size) };
    rooms.set(joined, room);
  }
  return room;
}

/** What nothing leads to or from stands right below what comes before it, or right above what comes after, so that it makes no blank. */
function closeUp({ pull }: Joined, ids: readonly number[], values: Float64Array): void {
  const first = ids.findIndex((id) => pull[id] !== 0);
  for (let place = 0; place < first; place++) values[place] = values[first] ?? 0;
  for (let place = Math.max(first, 0) + 1; place < ids.length; place++) {
    if (pull[ids[place] ?? 0] === 0) values[place] = values[place - 1] ?? 0;
  }
}

/**
 * Settles the runs in turn, `rounds` times, from the upper edges given; y is changed in place. Each run is then exactly the nearest
 * to where its ties lead, in its order, with its gaps, within its bounds (isotonic.ts, chain); what has no ties closes up.
 */
export function settle(joined: Joined, runs: Runs, y: Float64Array, rounds: number): void {
  const { targets, weights, pools } = roomFor(joined);
  for (let round = 0; round < rounds; round++) {
    drift(joined, runs, y);
    for (const run of runs) {
      const { ids, offsets } = run;
      const size = ids.length;
      for (let place = 0; place < size; place++) {
        const id = ids[place] ?? 0;
        targets[place] = wanted(joined, y, id) - (offsets[place] ?? 0);
        weights[place] = joined.pull[id] || IDLE_WEIGHT;
      }
      nearestInOrder(targets, weights, size, pools);
      closeUp(joined, ids, targets);
      for (let place = 0; place < size; place++) {
        y[ids[place] ?? 0] = clip(targets[place] ?? 0, run) + (offsets[place] ?? 0);
      }
    }
  }
}
