/** Which arrow is under the pointer. */
import type { LinkId } from '../../../src/game/model.ts';
import type { Route } from '../../../src/map/layout.ts';
import type { Spot } from '../geometry.ts';

/** How far a spot is from a line at right angles. */
export function distanceTo(route: Route, { x, y }: Spot): number {
  let nearest = Number.POSITIVE_INFINITY;
  for (let i = 1; i < route.length; i++) {
    const a = route[i - 1];
    const b = route[i];
    if (!a || !b) continue;
    const dx = x - Math.min(Math.max(x, Math.min(a.x, b.x)), Math.max(a.x, b.x));
    const dy = y - Math.min(Math.max(y, Math.min(a.y, b.y)), Math.max(a.y, b.y));
    nearest = Math.min(nearest, Math.hypot(dx, dy));
  }
  return nearest;
}

/** The nearest arrow within `reach` of the spot. */
export function linkNear(routes: ReadonlyMap<LinkId, Route>, spot: Spot, reach: number): LinkId | undefined {
  let found: LinkId | undefined;
  let nearest = reach;
  for (const [id, route] of routes) {
    const distance = distanceTo(route, spot);
    if (distance <= nearest) {
      nearest = distance;
      found = id;
    }
  }
  return found;
}
