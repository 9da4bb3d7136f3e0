/** Where a new thing can stand without covering anything. */
import type { Point } from '../game/model.ts';
import type { MapLayout, Rect } from './layout.ts';
import { occupied, overlaps } from './outline.ts';
import { CAPTION_HEIGHT, OVERHANG } from './sizes.ts';

const CLEAR = 16;
const STEP = 24;

/**
 * The top left corner of the free spot in view that is nearest to its middle, for a thing of that size, its caption and its plates;
 * when nothing in view is free, the nearest beyond. `view` is the part of the mat that is seen.
 */
export function freeSpot(
  layout: MapLayout,
  view: Rect,
  size: { readonly width: number; readonly height: number },
): Point {
  const taken = occupied(layout);
  const middle = { x: view.x + (view.width - size.width) / 2, y: view.y + (view.height - size.height) / 2 };
  const isFree = ({ x, y }: Point) => {
    const wanted = {
      x: x - OVERHANG - CLEAR,
      y: y - CAPTION_HEIGHT - CLEAR,
      width: size.width + 2 * (OVERHANG + CLEAR),
      height: size.height + CAPTION_HEIGHT + 2 * CLEAR,
    };
    return !taken.some((rect) => overlaps(rect, wanted));
  };
  const inView = ({ x, y }: Point) =>
    x >= view.x &&
    y >= view.y &&
    x + size.width <= view.x + view.width &&
    y + size.height <= view.y + view.height;
  let best: { spot: Point; distance: number } | undefined;
  // Rings of a grid round the middle, until one beyond the view has a free spot. A ring wider than all that stands on the mat has one.
  for (let ring = 0; ; ring++) {
    for (let i = -ring; i <= ring; i++) {
      const around: readonly (readonly [number, number])[] = [
        [i, -ring],
        [i, ring],
        [-ring, i],
        [ring, i],
      ];
      for (const [column, row] of around) {
        const spot = { x: Math.round(middle.x + column * STEP), y: Math.round(middle.y + row * STEP) };
        const away = Math.hypot(spot.x - middle.x, spot.y - middle.y);
        const distance = inView(spot) ? away : away + 1e6;
        if ((best === undefined || distance < best.distance) && isFree(spot)) best = { spot, distance };
      }
    }
    const beyond = ring * STEP > Math.max(view.width, view.height) / 2;
    if (best && (beyond || best.distance <= ring * STEP)) return best.spot;
  }
}
