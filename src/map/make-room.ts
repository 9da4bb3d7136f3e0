/** When a tray grows, what stood clear below it gives way, so that no edit ever lays one thing over another. */
import type { Placement } from '../game/edits/edit.ts';
import type { NodeId } from '../game/model.ts';
import type { MapLayout, Rect } from './layout.ts';
import { outline, overlaps } from './outline.ts';
import { CAPTION_HEIGHT, ROOM_GAP } from './sizes.ts';

const LEAST_GAP = 8;

/** What stands on the mat, each with its plates and its caption. */
function standing(layout: MapLayout): Map<NodeId, Rect> {
  const rects = new Map<NodeId, Rect>();
  for (const [id, slot] of layout.slots) {
    if (slot.parent !== undefined) continue;
    const { x, y, width, height } = outline(layout, id);
    const above = slot.caption ? CAPTION_HEIGHT : 0;
    rects.set(id, { x, y: y - above, width, height: height + above });
  }
  return rects;
}

const grew = (was: Rect, is: Rect) => is.width > was.width || is.height > was.height;

/**
 * New positions for what is covered now, and was not, by a tray that grew or by something that gave way to one: straight down, as
 * near as it was before. What already overlapped, by the teacher's hand, stays as it is.
 */
export function makeRoom(before: MapLayout, after: MapLayout): Placement[] {
  const was = standing(before);
  const is = standing(after);
  const queue = [...is].filter(([id, rect]) => {
    const old = was.get(id);
    return old !== undefined && grew(old, rect);
  });
  const moved = new Map<NodeId, Rect>();
  for (const [id] of queue) {
    const rect = is.get(id);
    const old = was.get(id);
    if (!rect || !old) continue;
    for (const [other, its] of is) {
      const its0 = was.get(other);
      if (other === id || !its0 || its.y < rect.y || !overlaps(rect, its) || overlaps(old, its0)) continue;
      const gap = Math.min(ROOM_GAP, Math.max(LEAST_GAP, its0.y - (old.y + old.height)));
      const lower = { ...its, y: rect.y + rect.height + gap };
      is.set(other, lower);
      moved.set(other, lower);
      queue.push([other, lower]);
    }
  }
  return Array.from(moved, ([id, { y }]): Placement => {
    const slot = after.slots.get(id);
    return [id, { x: slot?.x ?? 0, y: y + (slot?.caption ? CAPTION_HEIGHT : 0) }];
  });
}
