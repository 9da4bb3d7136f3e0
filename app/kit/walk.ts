/** The places of the room in the order of the walk that sets it up. */
import type { Kit, PlaceId, RoomPlace } from '../../src/kit/model.ts';

/** Those without a number come last, as they stand. */
export function inOrder(places: readonly RoomPlace[]): readonly RoomPlace[] {
  return places.toSorted((a, b) => (a.order ?? Infinity) - (b.order ?? Infinity) || 0);
}

/** Numbered from 1 as they are walked; what keeps its number stays the same object. */
function numbered(kit: Kit, walk: readonly RoomPlace[]): Kit {
  const order = new Map(walk.map(({ id }, i) => [id, i + 1]));
  const places = kit.places.map((place) => {
    const next = order.get(place.id);
    return next === undefined || next === place.order ? place : { ...place, order: next };
  });
  return { ...kit, places };
}

export function addToWalk(kit: Kit, place: RoomPlace): Kit {
  return numbered({ ...kit, places: [...kit.places, place] }, [...inOrder(kit.places), place]);
}

/** One earlier (-1) or one later (1); the kit as it is where there is none. */
export function moveOnWalk(kit: Kit, id: PlaceId, by: -1 | 1): Kit {
  const walk = [...inOrder(kit.places)];
  const at = walk.findIndex((place) => place.id === id);
  const [own, other] = [walk[at], walk[at + by]];
  if (!own || !other) return kit;
  walk[at] = other;
  walk[at + by] = own;
  return numbered(kit, walk);
}
