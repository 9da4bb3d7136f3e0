/** A kit from a file beside what is there. */
import { sameJson } from '../game/json.ts';
import { addItem, addPlace } from './edits.ts';
import { sameWords } from './fit/suits.ts';
import type { Kit, KitItem, RoomPlace } from './model.ts';

const isSameItem = (a: KitItem, b: KitItem) => sameJson({ ...a, id: '' }, { ...b, id: '' });
/** Its place on the walk may have changed since. */
const isSamePlace = (a: RoomPlace, b: RoomPlace) => sameWords(a.name, b.name);

/**
 * All of both. What is there already, the same in every field, is not there twice; what has the id of something else gets a
 * new one. Further fields of the kit that was there stay.
 * @param unnamed ids of what came without one, such as the lines of a table: things are held against what is there by all else, places by their names
 */
export function addKit(
  kit: Kit,
  other: Kit,
  newId: () => string,
  unnamed: ReadonlySet<string> = new Set(),
): Kit {
  let next = kit;
  // Two like lines are two things, so that each thing that is there stands for one of them.
  const free = new Set<{ readonly id: string }>([...kit.items, ...kit.places]);
  const isHere = <T extends { readonly id: string }>(
    thing: T,
    here: readonly T[],
    isSame: (a: T, b: T) => boolean,
  ): boolean => {
    if (!unnamed.has(thing.id)) return false;
    const same = here.find((one) => free.has(one) && isSame(one, thing));
    return same !== undefined && free.delete(same);
  };
  for (const item of other.items) {
    if (isHere(item, kit.items, isSameItem)) continue;
    const known = next.items.find(({ id }) => id === item.id);
    if (known && sameJson(known, item)) continue;
    next = addItem(next, known ? { ...item, id: newId() } : item);
  }
  for (const place of other.places) {
    if (isHere(place, kit.places, isSamePlace)) continue;
    const known = next.places.find(({ id }) => id === place.id);
    if (known && sameJson(known, place)) continue;
    next = addPlace(next, known ? { ...place, id: newId() } : place);
  }
  return next;
}
