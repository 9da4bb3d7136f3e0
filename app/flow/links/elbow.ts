/** A line at right angles between two things, as it is drawn while one end is being dragged: by the sides that face each other. */
import type { Rect, Route } from '../../../src/map/layout.ts';

/** Straight ahead out of a thing, before the first corner. */
const STUB = 14;

export function elbow(from: Rect, to: Rect): Route {
  const fromMiddle = from.x + from.width / 2;
  const toMiddle = to.x + to.width / 2;
  const y1 = from.y + from.height / 2;
  const y2 = to.y + to.height / 2;
  const rightwards = toMiddle >= fromMiddle;
  const x1 = rightwards ? from.x + from.width : from.x;
  const facing = rightwards ? to.x - x1 : x1 - (to.x + to.width);
  if (facing >= 2 * STUB) {
    const x2 = rightwards ? to.x : to.x + to.width;
    const middle = Math.round((x1 + x2) / 2);
    return [
      { x: x1, y: y1 },
      { x: middle, y: y1 },
      { x: middle, y: y2 },
      { x: x2, y: y2 },
    ];
  }
  // One above the other: out on one side, and back in on the same.
  const x2 = rightwards ? to.x + to.width : to.x;
  const outside = rightwards ? Math.max(x1, x2) + STUB : Math.min(x1, x2) - STUB;
  return [
    { x: x1, y: y1 },
    { x: outside, y: y1 },
    { x: outside, y: y2 },
    { x: x2, y: y2 },
  ];
}
