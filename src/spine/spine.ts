/**
 * A spine with a column on either side: what is to be arranged, before anything has a height. Bars stand on the spine in a given
 * order; every other block stands left or right of it, beside the bars that it is tied to. Knows nothing of screen or page.
 * Lengths are in one measure, pixels or points; `unit` says how long the size of the type is in it.
 */

export interface Block {
  readonly height: number;
}

/** What joins two blocks, by their index, at heights below the upper edge of each. */
export interface Tie {
  readonly from: number;
  readonly fromY: number;
  readonly to: number;
  readonly toY: number;
  /** 1 when it is left out. 0: told in words, so it neither pulls nor costs. */
  readonly weight?: number;
}

export type Column = 'left' | 'spine' | 'right';

/** Blocks of each column from top to bottom, by their index. */
export type Columns = Readonly<Record<Column, readonly number[]>>;

/** What a column has to lie between: its first upper edge, its last lower edge. */
export interface Band {
  readonly top: number;
  readonly bottom: number;
}

/** What each is worth, in units of vertical distance. */
export interface Costs {
  /** A line from one side to the other, or, on the page, words in place of it. */
  readonly across: number;
  readonly crossing: number;
  /** Each unit of the height of the whole. */
  readonly height: number;
  /** A line that is longer costs no more than one as long as this: it will be told. */
  readonly reach: number;
  /** Each unit by which a column is too long for its band, or a part of it for the room between what is held. */
  readonly excess: number;
  /** A block that is not on its home side. */
  readonly away: number;
}

export const COSTS: Costs = {
  across: 32,
  crossing: 1.5,
  height: 3,
  reach: Number.POSITIVE_INFINITY,
  excess: 1000,
  away: 60,
};

/** Where a block stands that is not to be moved. */
export interface Held {
  /** Its upper edge. */
  readonly y: number;
  /** Which side of the spine its ties come from, when it is in no column. */
  readonly side?: 'left' | 'right';
}

export interface Spine {
  /** Bars first, from top to bottom. */
  readonly blocks: readonly Block[];
  /** How many of the blocks are bars. */
  readonly bars: number;
  readonly ties: readonly Tie[];
  /** The least distance from the end of one block to the start of the next below it in a column. */
  readonly gap: (above: number, below: number) => number;
  readonly unit: number;
  /** Held blocks, by index. One that is in a column parts it: what comes before it there stands above it, what comes after it below. */
  readonly held?: ReadonlyMap<number, Held>;
  readonly bands?: Readonly<Partial<Record<Column, Band>>>;
  /** On which side a block is looked for, by its index: it stands there unless much is gained by the other. */
  readonly homes?: ReadonlyMap<number, 'left' | 'right'>;
  readonly costs?: Partial<Costs>;
}

/** A spine in flat arrays, made for many looks at it. */
export interface Joined {
  readonly spine: Spine;
  readonly costs: Costs;
  readonly heights: Float64Array;
  /** Ties that weigh something and join two blocks, one entry each. */
  readonly ties: Ties;
  /** Ties at each block: those of block b are first[b] … first[b + 1] − 1. */
  readonly first: Int32Array;
  readonly other: Int32Array;
  /** From the upper edge of the other block to where this one's would be, were the tie level. */
  readonly offset: Float64Array;
  readonly weight: Float64Array;
  /** Sum of the weights at each block. */
  readonly pull: Float64Array;
}

export interface Ties {
  readonly count: number;
  readonly from: Int32Array;
  readonly fromY: Float64Array;
  readonly to: Int32Array;
  readonly toY: Float64Array;
  readonly weight: Float64Array;
}

export function join(spine: Spine): Joined {
  const { blocks } = spine;
  const kept = spine.ties.filter((tie) => (tie.weight ?? 1) > 0 && tie.from !== tie.to);
  const first = new Int32Array(blocks.length + 1);
  for (const { from, to } of kept) {
    for (const end of [from, to]) first[end + 1] = (first[end + 1] ?? 0) + 1;
  }
  for (let i = 0; i < blocks.length; i++) first[i + 1] = (first[i + 1] ?? 0) + (first[i] ?? 0);
  const next = Int32Array.from(first);
  const other = new Int32Array(2 * kept.length);
  const offset = new Float64Array(2 * kept.length);
  const weight = new Float64Array(2 * kept.length);
  const pull = new Float64Array(blocks.length);
  const note = (block: number, to: number, by: number, w: number) => {
    const at = next[block] ?? 0;
    next[block] = at + 1;
    other[at] = to;
    offset[at] = by;
    weight[at] = w;
    pull[block] = (pull[block] ?? 0) + w;
  };
  for (const { from, fromY, to, toY, weight: w = 1 } of kept) {
    note(from, to, toY - fromY, w);
    note(to, from, fromY - toY, w);
  }
  const ties: Ties = {
    count: kept.length,
    from: Int32Array.from(kept, (tie) => tie.from),
    fromY: Float64Array.from(kept, (tie) => tie.fromY),
    to: Int32Array.from(kept, (tie) => tie.to),
    toY: Float64Array.from(kept, (tie) => tie.toY),
    weight: Float64Array.from(kept, (tie) => tie.weight ?? 1),
  };
  const heights = Float64Array.from(blocks, (block) => block.height);
  const costs = { ...COSTS, ...spine.costs };
  return { spine, costs, heights, ties, first, other, offset, weight, pull };
}
