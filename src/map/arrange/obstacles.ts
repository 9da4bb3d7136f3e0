/** What stands fast, as obstacles in the columns that others are put in; and how these go round it. */
import { type Game, type NodeId, withContents } from '../../game/model.ts';
import type { Column, Columns, Held } from '../../spine/spine.ts';
import { layOut } from '../lay-out.ts';
import { absolute, type MapLayout, type MapView, type Rect } from '../layout.ts';
import { outline } from '../outline.ts';
import { CAPTION_HEIGHT, FIELD_PAD, OVERHANG } from '../sizes.ts';
import { CHANNEL_MAX, CHANNEL_MIN, spineWidth } from './across.ts';
import type { MapBlock, MapSpine } from './blocks.ts';

/** Between what stands beside each other. */
const CLEAR = 8;
/** Obstacles that leave less between them are one: nothing would stand there. */
const SLIT = 80;

/**
 * What the fixed take up, with their captions, and with plates on either wall: which wall a lock is on depends on where the others
 * will be.
 */
export function fixedRects(game: Game, view: MapView, now: MapLayout, fixed: ReadonlySet<NodeId>): Rect[] {
  const positions = new Map(game.positions);
  for (const id of fixed) {
    const slot = now.slots.get(id);
    if (slot) positions.set(id, { x: slot.x, y: slot.y });
  }
  const kept = withContents(game, fixed);
  const nodes = new Map([...game.nodes].filter(([id]) => kept.has(id)));
  const layout = layOut({ ...game, nodes, positions }, view);
  const isWalled = (id: NodeId) => outline(layout, id).width > absolute(layout, id).width;
  const widened = (rect: Rect, by: number) => ({ ...rect, x: rect.x - by, width: rect.width + 2 * by });
  const rects = layout.fields.map((field) => widened(field, field.ids.some(isWalled) ? OVERHANG : 0));
  for (const id of fixed) {
    const caption = layout.slots.get(id)?.caption ? CAPTION_HEIGHT : 0;
    const { x, y, width, height } = absolute(layout, id);
    const rect = { x, y: y - caption, width, height: height + caption };
    rects.push(widened(rect, isWalled(id) ? OVERHANG : 0));
  }
  return rects;
}

/** How far a column can reach to either side of the left edge of the spine. */
function reachOf(spine: MapSpine, first: MapLayout, column: Column): { left: number; right: number } {
  const width = spineWidth(spine);
  if (column === 'spine') return { left: -CLEAR, right: width + CLEAR };
  let widest = 0;
  for (const { parts } of spine.blocks.slice(spine.bars)) {
    for (const { id } of parts) widest = Math.max(widest, first.slots.get(id)?.width ?? 0);
  }
  const all = CHANNEL_MAX + widest + 2 * OVERHANG + FIELD_PAD + CLEAR;
  const inner = CHANNEL_MIN - OVERHANG - CLEAR;
  return column === 'left' ? { left: -all, right: -inner } : { left: width + inner, right: width + all };
}

/** What of the rects is in the way of the column, from top to bottom, none touching another. */
function inTheWay(rects: readonly Rect[], { left, right }: { left: number; right: number }) {
  const crossing = rects
    .filter((rect) => rect.x < right && rect.x + rect.width > left)
    .map(({ y, height }) => ({ top: y, bottom: y + height }))
    .sort((a, b) => a.top - b.top || a.bottom - b.bottom);
  const merged: { top: number; bottom: number }[] = [];
  for (const { top, bottom } of crossing) {
    const last = merged.at(-1);
    if (last && top < last.bottom + SLIT) last.bottom = Math.max(last.bottom, bottom);
    else merged.push({ top, bottom });
  }
  return merged;
}

/** The spine with an obstacle in each column for what is in its way, and the obstacles of each column from top to bottom. */
export function withObstacles(
  spine: MapSpine,
  first: MapLayout,
  rects: readonly Rect[],
): {
  readonly blocks: readonly MapBlock[];
  readonly held: ReadonlyMap<number, Held>;
  readonly columns: Columns;
} {
  const blocks = [...spine.blocks];
  const held = new Map(spine.held);
  const columns: Record<Column, number[]> = { left: [], spine: [], right: [] };
  for (const column of ['left', 'spine', 'right'] as const) {
    for (const { top, bottom } of inTheWay(rects, reachOf(spine, first, column))) {
      columns[column].push(blocks.length);
      held.set(blocks.length, { y: top });
      blocks.push({
        parts: [],
        height: bottom - top,
        caption: undefined,
        firstUse: Number.POSITIVE_INFINITY,
      });
    }
  }
  return { blocks, held, columns };
}

/** Floating-point sums may be off by so much. */
const SLACK = 1e-6;

/** Moves down what does not fit above an obstacle, until nothing in the columns covers anything else; y is changed in place. */
export function goRound({ blocks, gap, held }: MapSpine, columns: Columns, y: Float64Array): void {
  for (const column of [columns.left, columns.spine, columns.right]) {
    const obstacles = column.filter((id) => held?.has(id)).sort((a, b) => (y[a] ?? 0) - (y[b] ?? 0));
    let above = -1;
    for (const id of column) {
      if (held?.has(id)) continue;
      const endOf = (block: number) => (y[block] ?? 0) + (blocks[block]?.height ?? 0);
      let at = y[id] ?? 0;
      if (above >= 0) at = Math.max(at, endOf(above) + gap(above, id));
      const height = blocks[id]?.height ?? 0;
      for (const obstacle of obstacles) {
        const below = endOf(obstacle) + gap(obstacle, id);
        const overlapping =
          at < below - SLACK && at + height + gap(id, obstacle) > (y[obstacle] ?? 0) + SLACK;
        if (overlapping) at = below;
      }
      y[id] = at;
      above = id;
    }
  }
}
