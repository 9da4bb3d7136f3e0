/** Columns to begin a search with: quick, and not bad. */
import { clip } from './isotonic.ts';
import type { Columns, Joined } from './spine.ts';

/** Where a block would be beside the bars and held blocks that it is tied to, or what those it is tied to would be beside. */
function heightsByBars(joined: Joined): Float64Array {
  const { spine, heights, first, other, offset } = joined;
  const { blocks, bars, held, gap } = spine;
  const y = new Float64Array(blocks.length).fill(Number.NaN);
  let end = 0;
  for (let bar = 0; bar < bars; bar++) {
    const start = bar === 0 ? 0 : end + gap(bar - 1, bar);
    y[bar] = start;
    end = start + (heights[bar] ?? 0);
  }
  for (const [id, { y: at }] of held ?? []) y[id] = at;
  for (let pass = 0; pass < 2; pass++) {
    const known = Float64Array.from(y);
    for (let block = bars; block < blocks.length; block++) {
      if (held?.has(block) || !Number.isNaN(known[block] ?? 0)) continue;
      let sum = 0;
      let count = 0;
      for (let tie = first[block] ?? 0; tie < (first[block + 1] ?? 0); tie++) {
        const at = known[other[tie] ?? 0] ?? Number.NaN;
        if (Number.isNaN(at)) continue;
        sum += at + (offset[tie] ?? 0);
        count++;
      }
      if (count > 0) y[block] = sum / count;
    }
  }
  return y.map((value) => (Number.isNaN(value) ? Number.POSITIVE_INFINITY : value));
}

/**
 * Each block in turn, from the top down, on the side where it comes closer to its height, ties to the other side being worth what
 * they cost. `columns` holds what is held; where blocks are held in a column, others are put between them by their height.
 */
export function firstColumns(joined: Joined, columns: Columns): Columns {
  const { spine, heights, first, other, costs } = joined;
  const { blocks, bars, held, unit } = spine;
  const wanted = heightsByBars(joined);
  const side = new Map<number, 'left' | 'right'>();
  for (const [id, { side: at }] of held ?? []) if (at) side.set(id, at);
  const ends = { left: 0, right: 0 };
  const free = blocks
    .map((_, i) => i)
    .filter((i) => i >= bars && !held?.has(i))
    .sort((a, b) => (wanted[a] === wanted[b] ? a - b : (wanted[a] ?? 0) - (wanted[b] ?? 0)));
  for (const block of free) {
    const late = (at: 'left' | 'right') => {
      let strangers = 0;
      for (let tie = first[block] ?? 0; tie < (first[block + 1] ?? 0); tie++) {
        const its = side.get(other[tie] ?? 0);
        if (its !== undefined && its !== at) strangers++;
      }
      return ends[at] + strangers * costs.across * unit;
    };
    const at = late('left') <= late('right') ? 'left' : 'right';
    side.set(block, at);
    const height = (heights[block] ?? 0) + 2 * unit;
    ends[at] =
      height +
      (Number.isFinite(wanted[block])
        ? clip(wanted[block] ?? 0, { low: ends[at], high: Number.POSITIVE_INFINITY })
        : ends[at]);
  }
  const column = (at: 'left' | 'right') =>
    mergeHeld(
      columns[at],
      free.filter((block) => side.get(block) === at),
      wanted,
    );
  return { ...columns, left: column('left'), right: column('right') };
}

/** Blocks sorted by height, put between held ones by it. */
export function mergeHeld(
  held: readonly number[],
  blocks: readonly number[],
  y: Float64Array,
): readonly number[] {
  if (held.length === 0) return blocks;
  const merged: number[] = [];
  let next = 0;
  for (const fixed of held) {
    for (; next < blocks.length && (y[blocks[next] ?? 0] ?? 0) <= (y[fixed] ?? 0); next++) {
      merged.push(blocks[next] ?? 0);
    }
    merged.push(fixed);
  }
  return [...merged, ...blocks.slice(next)];
}
