/** What lies where on the mat, from the layout: for finding what is under the pointer. */
import type { NodeId } from '../../src/game/model.ts';
import type { MapLayout, Rect } from '../../src/map/layout.ts';

export interface Spot {
  readonly x: number;
  readonly y: number;
}

const known = new WeakMap<MapLayout, ReadonlyMap<NodeId, Rect>>();

/** Every slot on the mat. Computed once for each layout. */
export function matRects(layout: MapLayout): ReadonlyMap<NodeId, Rect> {
  const before = known.get(layout);
  if (before) return before;
  const rects = new Map<NodeId, Rect>();
  for (const [id, slot] of layout.slots) {
    const tray = slot.parent === undefined ? undefined : rects.get(slot.parent);
    rects.set(id, {
      x: slot.x + (tray?.x ?? 0),
      y: slot.y + (tray?.y ?? 0),
      width: slot.width,
      height: slot.height,
    });
  }
  known.set(layout, rects);
  return rects;
}

export function contains(rect: Rect, spot: Spot, margin = 0): boolean {
  return (
    spot.x >= rect.x - margin &&
    spot.x <= rect.x + rect.width + margin &&
    spot.y >= rect.y - margin &&
    spot.y <= rect.y + rect.height + margin
  );
}

/** The topmost thing under a spot: a lock before what it is on, a thing before the tray that it lies in. */
export function thingAt(layout: MapLayout, spot: Spot, margin = 0): NodeId | undefined {
  const rects = matRects(layout);
  let found: NodeId | undefined;
  let height = -1;
  for (const [id, slot] of layout.slots) {
    const rect = rects.get(id);
    const rank = slot.depth + (slot.kind === 'fastener' ? 0.5 : 0);
    if (rect && rank >= height && contains(rect, spot, margin)) {
      found = id;
      height = rank;
    }
  }
  return found;
}

/** The smallest rectangle round those given; undefined when there are none. */
export function bounds(rects: Iterable<Rect>): Rect | undefined {
  let left = Number.POSITIVE_INFINITY;
  let top = Number.POSITIVE_INFINITY;
  let right = Number.NEGATIVE_INFINITY;
  let bottom = Number.NEGATIVE_INFINITY;
  for (const { x, y, width, height } of rects) {
    left = Math.min(left, x);
    top = Math.min(top, y);
    right = Math.max(right, x + width);
    bottom = Math.max(bottom, y + height);
  }
  return right < left ? undefined : { x: left, y: top, width: right - left, height: bottom - top };
}
