/**
 * The view stays where the eye was: when the map is rearranged, what stood nearest the middle of the view stays there. With a pin in
 * view it does not move at all: what is pinned stays on the screen as on the map.
 */
import type { Game, NodeId } from '../../src/game/model.ts';
import type { MapLayout, Rect } from '../../src/map/layout.ts';
import { matRects, type Spot } from './geometry.ts';

/** How far each thing on the mat has come from where it stood, of those that were there and moved. */
export function shiftsOf(before: MapLayout, after: MapLayout): ReadonlyMap<NodeId, Spot> {
  const shifts = new Map<NodeId, Spot>();
  for (const [id, { parent, x, y }] of after.slots) {
    const old = parent === undefined ? before.slots.get(id) : undefined;
    if (!old || old.parent !== undefined || (old.x === x && old.y === y)) continue;
    shifts.set(id, { x: x - old.x, y: y - old.y });
  }
  return shifts;
}

/** How many things are drawn elsewhere: what has moved on the mat, and all that lies in it. */
export function carried({ slots }: MapLayout, shifts: ReadonlyMap<NodeId, Spot>): number {
  const moved = new Set<NodeId>();
  for (const [id, { parent }] of slots) {
    if (shifts.has(id) || (parent !== undefined && moved.has(parent))) moved.add(id);
  }
  return moved.size;
}

/** Whether things have come to stand elsewhere to each other, and not all been pushed the same way. */
export function isRearranged(shifts: ReadonlyMap<NodeId, Spot>): boolean {
  const [first] = shifts.values();
  return [...shifts.values()].some(({ x, y }) => x !== first?.x || y !== first.y);
}

function distance({ x, y, width, height }: Rect, spot: Spot): number {
  const dx = Math.max(x - spot.x, 0, spot.x - x - width);
  const dy = Math.max(y - spot.y, 0, spot.y - y - height);
  return Math.hypot(dx, dy);
}

const overlaps = (a: Rect, b: Rect) =>
  a.x < b.x + b.width && b.x < a.x + a.width && a.y < b.y + b.height && b.y < a.y + a.height;

/** What the eye is at: of what is selected and in view, else of all that stands on the mat, the nearest to the middle of the view. */
export function eyeAt(layout: MapLayout, selected: ReadonlySet<NodeId>, view: Rect): NodeId | undefined {
  const rects = matRects(layout);
  const middle = { x: view.x + view.width / 2, y: view.y + view.height / 2 };
  let best: NodeId | undefined;
  let least = Number.POSITIVE_INFINITY;
  for (const [id, slot] of layout.slots) {
    const rect = rects.get(id);
    if (slot.parent !== undefined || !rect) continue;
    const chosen = selected.has(id) && overlaps(rect, view);
    const centre = { x: rect.x + rect.width / 2, y: rect.y + rect.height / 2 };
    const off = Math.hypot(centre.x - middle.x, centre.y - middle.y);
    // What is under the middle comes before all else, the nearer centre among several.
    const rank = (chosen ? 0 : 1e9) + 1e4 * distance(rect, middle) + off;
    if (rank >= least) continue;
    best = id;
    least = rank;
  }
  return best;
}

/** Whether any of the map is in view. */
export function isAnyInView(layout: MapLayout, view: Rect): boolean {
  return [...matRects(layout).values()].some((rect) => overlaps(rect, view));
}

/** Whether something in view is pinned to the mat. */
export function isPinInView(layout: MapLayout, positions: Game['positions'], view: Rect): boolean {
  return [...matRects(layout)].some(
    ([id, rect]) =>
      positions.get(id)?.pinned === true &&
      layout.slots.get(id)?.parent === undefined &&
      overlaps(rect, view),
  );
}
