/** A kit from a file beside what is there. */
import { sameJson } from '../game/json.ts';
import { addItem, addPlace } from './edits.ts';
import type { Kit } from './model.ts';

/**
 * All of both. What is there already, the same in every field, is not there twice; what has the id of something else gets a
 * new one. Further fields of the kit that was there stay.
 */
export function addKit(kit: Kit, other: Kit, newId: () => string): Kit {
  let next = kit;
  for (const item of other.items) {
    const known = next.items.find(({ id }) => id === item.id);
    if (known && sameJson(known, item)) continue;
    next = addItem(next, known ? { ...item, id: newId() } : item);
  }
  for (const place of other.places) {
    const known = next.places.find(({ id }) => id === place.id);
    if (known && sameJson(known, place)) continue;
    next = addPlace(next, known ? { ...place, id: newId() } : place);
  }
  return next;
}
