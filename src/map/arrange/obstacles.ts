/** What stands fast, as obstacles in the columns that others are put in; and how these go round it. */
import type { Game, NodeId } from '../../game/model.ts';
import type { Column, Columns, Held } from '../../spine/spine.ts';
import { layOut } from '../lay-out.ts';
import { absolute, type Caption, type MapLayout, type MapView, type Rect } from '../layout.ts';
import { outline } from '../outline.ts';
import { CAPTION_HEIGHT, FIELD_PAD, OVERHANG } from '../sizes.ts';
import { CHANNEL_MAX, CHANNEL_MIN, spineWidth, spreadOut } from './across.ts';
import type { MapBlock, MapSpine } from './blocks.ts';

/** Beyond whatever stands on a map. */
const ASIDE = 1e7;
/** Between what stands beside each other. */
const CLEAR = 8;

/** What stands fast by itself, or shares a field with others that do. */
export interface Fixed {
  /** All that it takes up, with its caption, and with plates on either wall: which wall a lock is on depends on where the others will be. */
  readonly rect: Rect;
  readonly caption: Caption | undefined;
  /** Upper edge of the first, lower edge of the last. */
  readonly top: number;
  readonly bottom: number;
}

export function fixedOf(game: Game, view: MapView, now: MapLayout, fixed: ReadonlySet<NodeId>): Fixed[] {
  /** The others are put aside, so that they neither join nor part a field. */
  const positions = new Map(spreadOut(game, () => ASIDE).positions);
  for (const id of fixed) {
    const slot = now.slots.get(id);
    if (slot) positions.set(id, { x: slot.x, y: slot.y });
  }
  const layout = layOut({ ...game, positions }, view);
  const isWalled = (id: NodeId) => outline(layout, id).width > absolute(layout, id).width;
  const widened = (rect: Rect, by: number) => ({ ...rect, x: rect.x - by, width: rect.width + 2 * by });
  const inField = new Set(layout.fields.flatMap((field) => field.ids));
  const fields = layout.fields
    .filter((field) => field.ids.some((id) => fixed.has(id)))
    .map((field): Fixed => {
      const rects = field.ids.map((id) => absolute(layout, id));
      return {
        rect: widened(field, field.ids.some(isWalled) ? OVERHANG : 0),
        caption: field.caption,
        top: Math.min(...rects.map(({ y }) => y)),
        bottom: Math.max(...rects.map(({ y, height }) => y + height)),
      };
    });
  const single = [...fixed]
    .filter((id) => !inField.has(id))
    .map((id): Fixed => {
      const caption = layout.slots.get(id)?.caption;
      const { x, y, width, height } = absolute(layout, id);
      const above = caption ? CAPTION_HEIGHT : 0;
      const rect = { x, y: y - above, width, height: height + above };
      return { rect: widened(rect, isWalled(id) ? OVERHANG : 0), caption, top: y, bottom: y + height };
    });
  return [...fields, ...single];
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

interface Obstacle {
  top: number;
  bottom: number;
  caption: Caption | undefined;
  across: boolean;
}

/** What is in the way of the column, from top to bottom, none touching another. `apart`: all of it as if it stood across. */
function inTheWay(
  fixed: readonly Fixed[],
  { left, right }: { left: number; right: number },
  apart: boolean,
): Obstacle[] {
  const crossing = fixed
    .filter(({ rect }) => rect.x < right && rect.x + rect.width > left)
    .sort((a, b) => a.rect.y - b.rect.y || a.rect.height - b.rect.height);
  const obstacles: Obstacle[] = [];
  /** Edges of all that the last is made of. */
  let start = 0;
  let end = Number.NEGATIVE_INFINITY;
  for (const { rect, caption, top, bottom } of crossing) {
    const last = obstacles.at(-1);
    const low = rect.y + rect.height;
    if (last && rect.y < end) {
      end = Math.max(end, low);
      last.top = start;
      last.bottom = end;
      last.caption = undefined;
      last.across = true;
      continue;
    }
    start = rect.y;
    end = low;
    const inColumn = !apart && rect.x - FIELD_PAD >= left && rect.x + rect.width + FIELD_PAD <= right;
    if (inColumn) obstacles.push({ top, bottom, caption, across: false });
    else obstacles.push({ top: rect.y, bottom: low, caption: undefined, across: true });
  }
  return obstacles;
}

/**
 * The spine with an obstacle in each column for what is in its way, and the obstacles of each column from top to bottom.
 * What stands in line with a column is taken for one of it, with the distances that hold there; with `apart`, for a stranger: then
 * nothing is ever covered, wherever the fixed stand.
 */
export function withObstacles(
  spine: MapSpine,
  first: MapLayout,
  fixed: readonly Fixed[],
  apart: boolean,
): {
  readonly blocks: readonly MapBlock[];
  readonly held: ReadonlyMap<number, Held>;
  readonly columns: Columns;
} {
  const blocks = [...spine.blocks];
  const held = new Map(spine.held);
  const columns: Record<Column, number[]> = { left: [], spine: [], right: [] };
  for (const column of ['left', 'spine', 'right'] as const) {
    for (const { top, bottom, ...kind } of inTheWay(fixed, reachOf(spine, first, column), apart)) {
      columns[column].push(blocks.length);
      held.set(blocks.length, { y: top });
      blocks.push({ ...kind, parts: [], height: bottom - top, firstUse: Number.POSITIVE_INFINITY });
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
