/** Heights of blocks in three columns: each column in turn is the chain nearest to where its ties lead, the others held. */
import { type Bounds, clip, nearestInOrder, type Pools, poolsFor } from './isotonic.ts';
import type { Band, Column, Columns, Joined } from './spine.ts';

/** In the order in which they settle: the sides first, so that they go to the bars and not the bars to them. */
const SETTLING: readonly Column[] = ['left', 'right', 'spine'];

/** A block that nothing leads to or from stays close to where it is, and gives way to all others. */
const IDLE_WEIGHT = 0.01;

/** A column with no space between its blocks: how far each is below the first, and how high the whole is. */
interface Packed {
  readonly ids: readonly number[];
  readonly offsets: Float64Array;
  readonly height: number;
}

function pack({ spine, heights }: Joined, ids: readonly number[]): Packed {
  const offsets = new Float64Array(ids.length);
  let end = 0;
  for (const [place, id] of ids.entries()) {
    const above = ids[place - 1];
    const offset = above === undefined ? 0 : end + spine.gap(above, id);
    offsets[place] = offset;
    end = offset + (heights[id] ?? 0);
  }
  return { ids, offsets, height: end };
}

/** How high a column is at least. */
export const leastHeight = (joined: Joined, ids: readonly number[]): number => pack(joined, ids).height;

const boundsOf = ({ top, bottom }: Band, { height }: Packed): Bounds => ({ low: top, high: bottom - height });

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

interface Settling {
  readonly targets: Float64Array;
  readonly weights: Float64Array;
  readonly pools: Pools;
}

const rooms = new WeakMap<Joined, Settling>();

function roomFor(joined: Joined): Settling {
  let room = rooms.get(joined);
  if (!room) {
    const size = joined.heights.length;
    room = { targets: new Float64Array(size), weights: new Float64Array(size), pools: poolsFor(size) };
    rooms.set(joined, room);
  }
  return room;
}

/** Upper edges with every column packed to the top. */
export function packed(joined: Joined, columns: Columns): Float64Array {
  const y = new Float64Array(joined.heights.length);
  for (const column of SETTLING) {
    const top = joined.spine.bands?.[column]?.top ?? 0;
    const { ids, offsets } = pack(joined, columns[column]);
    for (const [place, id] of ids.entries()) y[id] = top + (offsets[place] ?? 0);
  }
  return y;
}

/**
 * Settles the columns in turn, `rounds` times, from the upper edges given; y is changed in place. Each column is then exactly
 * the nearest to where its ties lead, in its order, with its gaps, within its band (isotonic.ts, chain).
 */
export function settle(joined: Joined, columns: Columns, y: Float64Array, rounds: number): void {
  const { targets, weights, pools } = roomFor(joined);
  const chains = SETTLING.map((column) => ({
    ...pack(joined, columns[column]),
    band: joined.spine.bands?.[column],
  }));
  for (let round = 0; round < rounds; round++) {
    for (const chained of chains) {
      const { ids, offsets, band } = chained;
      for (let place = 0; place < ids.length; place++) {
        const id = ids[place] ?? 0;
        targets[place] = wanted(joined, y, id) - (offsets[place] ?? 0);
        weights[place] = joined.pull[id] || IDLE_WEIGHT;
      }
      nearestInOrder(targets, weights, ids.length, pools);
      const bounds = band && boundsOf(band, chained);
      for (let place = 0; place < ids.length; place++) {
        const value = targets[place] ?? 0;
        y[ids[place] ?? 0] = (bounds ? clip(value, bounds) : value) + (offsets[place] ?? 0);
      }
    }
  }
}
