/** Where what is dragged would land: the deepest tray under the pointer, and the row in it. */
import type { Edit, EditRefusal, Placement } from '../../../src/game/edits/edit.ts';
import { applyEdits } from '../../../src/game/edits/index.ts';
import type { Game, NodeId } from '../../../src/game/model.ts';
import { type RowGroup, rowGroup } from '../../../src/game/rows.ts';
import type { MapLayout, Rect } from '../../../src/map/layout.ts';
import { OVERHANG } from '../../../src/map/sizes.ts';
import { contains, matRects, type Spot } from '../geometry.ts';

export interface Landing {
  /** The tray, for locks the container; null on the mat. */
  readonly holder: NodeId | null;
  /** What they would lie above, or null for the end of the row. */
  readonly before: NodeId | null;
}

/** A lock may be let go beside the wall, where its plate will stand. */
const BESIDE_WALL = OVERHANG;

/** The deepest tray under the spot that is not itself dragged. */
function trayAt(
  layout: MapLayout,
  spot: Spot,
  moving: ReadonlySet<NodeId>,
  forLocks: boolean,
): NodeId | null {
  const rects = matRects(layout);
  let found: NodeId | null = null;
  let depth = -1;
  for (const [id, slot] of layout.slots) {
    if (moving.has(id) || slot.depth < depth) continue;
    if (slot.kind !== 'container' && (forLocks || slot.kind !== 'place')) continue;
    const rect = rects.get(id);
    if (rect && contains(forLocks ? widened(rect) : rect, spot)) {
      found = id;
      depth = slot.depth;
    }
  }
  return found;
}

function widened({ x, y, width, height }: Rect): Rect {
  return { x: x - BESIDE_WALL, y, width: width + 2 * BESIDE_WALL, height };
}

/** Which of the rows in the tray the spot is above. Rows stand in three groups: locks, things, boxes. */
function rowBelow(
  game: Game,
  layout: MapLayout,
  holder: NodeId,
  spot: Spot,
  moving: ReadonlySet<NodeId>,
  groups: ReadonlySet<RowGroup>,
): NodeId | null {
  const rects = matRects(layout);
  for (const id of layout.rows.get(holder) ?? []) {
    const rect = rects.get(id);
    const group = groupOf(game, id);
    if (!rect || moving.has(id) || group === undefined || !groups.has(group)) continue;
    if (rect.y + rect.height / 2 > spot.y) return id;
  }
  return null;
}

function groupOf(game: Game, id: NodeId): RowGroup | undefined {
  const node = game.nodes.get(id);
  return node && rowGroup(node.kind);
}

export function landingAt(
  game: Game,
  layout: MapLayout,
  spot: Spot,
  roots: readonly NodeId[],
  moving: ReadonlySet<NodeId>,
): Landing {
  const groups = new Set<RowGroup>();
  for (const id of roots) {
    const group = groupOf(game, id);
    if (group) groups.add(group);
  }
  const onlyLocks = groups.size === 1 && groups.has('locks');
  const holder = trayAt(layout, spot, moving, onlyLocks);
  if (holder === null) return { holder, before: null };
  return { holder, before: rowBelow(game, layout, holder, spot, moving, groups) };
}

/**
 * What letting go there does. Locks are fastened, things and boxes put in or taken out, places and puzzles moved;
 * one edit that is refused refuses them all, so that a selection lands whole or not at all.
 */
export function landingEdits(
  game: Game,
  roots: readonly NodeId[],
  { holder, before }: Landing,
  positions: readonly Placement[],
): readonly Edit[] {
  if (holder !== null) {
    const locks = roots.filter((id) => game.nodes.get(id)?.kind === 'fastener');
    const others = roots.filter((id) => game.nodes.get(id)?.kind !== 'fastener');
    const edits: Edit[] = [];
    if (locks.length > 0) edits.push({ type: 'fasten', ids: locks, on: holder, before });
    if (others.length > 0) edits.push({ type: 'place', ids: others, holder, before });
    return edits;
  }
  return [{ type: 'place', ids: roots, holder: null, positions }];
}

/** Why letting go there is refused; undefined when it is not. The edits themselves are asked, so that the answer is theirs. */
export function landingRefusal(game: Game, edits: readonly Edit[]): EditRefusal | undefined {
  const result = applyEdits(game, edits);
  return result.ok ? undefined : result.refusal;
}

/** Where in the tray a line shows the row that is meant. */
export function landingMark(
  layout: MapLayout,
  { holder, before }: Landing,
  moving: ReadonlySet<NodeId>,
): Rect | undefined {
  if (holder === null) return undefined;
  const rects = matRects(layout);
  const tray = rects.get(holder);
  const below = before === null ? undefined : rects.get(before);
  if (!tray || layout.slots.get(holder)?.folded === true) return undefined;
  if (below) return { x: below.x, y: below.y - 5, width: below.width, height: 2 };
  let last: Rect | undefined;
  for (const id of layout.rows.get(holder) ?? []) {
    const rect = rects.get(id);
    if (rect && !moving.has(id) && (!last || rect.y > last.y)) last = rect;
  }
  return last && { x: last.x, y: last.y + last.height + 3, width: last.width, height: 2 };
}
