/** Neighbours of one caption are drawn together into one block, so that they share a field. */
import type { Columns, Tie } from '../../spine/spine.ts';
import { FIELD_ROW_GAP, type MapBlock, type MapSpine, mapSpine } from './blocks.ts';

/** Neighbours that stand no farther apart than this are drawn together. */
const JOIN_WITHIN = 120;

/** The blocks keep their indices; one that has become part of another is in no column. */
export function joinNeighbours(
  spine: MapSpine,
  columns: Columns,
  y: Float64Array,
): { readonly spine: MapSpine; readonly columns: Columns } {
  const blocks: MapBlock[] = [...spine.blocks];
  /** The block that each has become part of, and how far below its upper edge. */
  const moved = new Map<number, { into: number; y: number }>();
  const merge = (column: readonly number[]) => {
    const kept: number[] = [];
    for (const i of column) {
      const block = blocks[i];
      const last = kept.at(-1);
      const above = last === undefined ? undefined : blocks[last];
      if (!block) continue;
      const near =
        last !== undefined &&
        above?.caption !== undefined &&
        above.parts.length > 0 &&
        block.parts.length > 0 &&
        above.caption === block.caption &&
        (y[i] ?? 0) - ((y[last] ?? 0) + above.height) <= JOIN_WITHIN;
      if (!near) {
        kept.push(i);
        continue;
      }
      const offset = above.height + FIELD_ROW_GAP;
      moved.set(i, { into: last, y: offset });
      blocks[last] = {
        ...above,
        parts: [...above.parts, ...block.parts.map((part) => ({ id: part.id, y: part.y + offset }))],
        height: offset + block.height,
      };
    }
    return kept;
  };
  const merged: Columns = { left: merge(columns.left), spine: columns.spine, right: merge(columns.right) };
  const ties = spine.ties.map((tie): Tie => {
    const from = moved.get(tie.from);
    const to = moved.get(tie.to);
    return {
      ...tie,
      from: from?.into ?? tie.from,
      fromY: tie.fromY + (from?.y ?? 0),
      to: to?.into ?? tie.to,
      toY: tie.toY + (to?.y ?? 0),
    };
  });
  return { spine: mapSpine(blocks, spine.bars, ties, spine.held), columns: merged };
}
