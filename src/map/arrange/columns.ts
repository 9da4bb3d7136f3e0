/** Heights of blocks in three columns: each column in turn is the chain nearest to where its links lead, the others held. */
import { chain } from '../isotonic.ts';
import { type Block, type Blocks, gapBetween, type Tie } from './blocks.ts';

export type Column = 'left' | 'spine' | 'right';

/** Blocks of each column from top to bottom, by their index. */
export type Columns = Readonly<Record<Column, readonly number[]>>;

/** Links at each block: what is known before any height is. */
export interface Joined extends Blocks {
  readonly tiesOf: readonly (readonly Tie[])[];
}

export function join(blocks: Blocks): Joined {
  const tiesOf: Tie[][] = blocks.blocks.map(() => []);
  for (const tie of blocks.ties) {
    tiesOf[tie.from]?.push(tie);
    tiesOf[tie.to]?.push(tie);
  }
  return { ...blocks, tiesOf };
}

/** A block that nothing leads to or from stays close to where it is, and gives way to all others. */
const IDLE_WEIGHT = 0.01;

/** From start to start of each block and the next. */
function gapsOf(blocks: readonly Block[], column: readonly number[]): number[] {
  return column.map((i, place) => {
    const above = blocks[i];
    const below = blocks[column[place + 1] ?? -1];
    return (above?.height ?? 0) + (above && below ? gapBetween(above, below) : 0);
  });
}

/** Heights with every column packed to the top. */
export function packed(joined: Joined, columns: Columns): Float64Array {
  const y = new Float64Array(joined.blocks.length);
  for (const column of [columns.spine, columns.left, columns.right]) {
    const gaps = gapsOf(joined.blocks, column);
    let top = 0;
    for (const [place, i] of column.entries()) {
      y[i] = top;
      top += gaps[place] ?? 0;
    }
  }
  return y;
}

/** Where the links of a block would have it, less the height of their ends in it: the mean; and how many there are. */
export function wanted(joined: Joined, y: Float64Array, block: number): { y: number; weight: number } {
  let sum = 0;
  let weight = 0;
  for (const tie of joined.tiesOf[block] ?? []) {
    sum +=
      tie.from === block ? (y[tie.to] ?? 0) + tie.toY - tie.fromY : (y[tie.from] ?? 0) + tie.fromY - tie.toY;
    weight++;
  }
  return weight > 0 ? { y: sum / weight, weight } : { y: y[block] ?? 0, weight: IDLE_WEIGHT };
}

/** Settles the columns in turn, `rounds` times, from the heights given; y is changed in place. */
export function settle(joined: Joined, columns: Columns, y: Float64Array, rounds: number): void {
  const chains = [columns.left, columns.right, columns.spine].map((column) => ({
    column,
    gaps: gapsOf(joined.blocks, column),
  }));
  for (let round = 0; round < rounds; round++) {
    for (const { column, gaps } of chains) {
      const wants = column.map((i) => wanted(joined, y, i));
      const settled = chain(
        wants.map((want) => want.y),
        gaps,
        wants.map((want) => want.weight),
      );
      for (const [place, i] of column.entries()) y[i] = settled[place] ?? 0;
    }
  }
}
