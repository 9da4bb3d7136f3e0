/** Every change to a kit, as functions from kit to kit. What is not touched stays the same object; a change that changes nothing gives back the very kit. */
import { sameJson } from '../game/json.ts';
import type { ItemId, Kit, KitItem, PlaceId, RoomPlace } from './model.ts';
import { kitItem, MAX_COUNT, roomPlace } from './schema.ts';

/** Thrown where a program asks for what no form can ask for: a person never sees it. */
export class KitEditError extends Error {
  constructor(operation: string, id: string, remedy: string) {
    super(`${operation} ${JSON.stringify(id)}: ${remedy}`);
    this.name = 'KitEditError';
  }
}

function checkedItem(operation: string, item: KitItem): KitItem {
  if (!kitItem.safeParse(item).success) {
    throw new KitEditError(operation, item.id, 'give an item that src/kit/schema.ts allows');
  }
  return item;
}

function checkedPlace(operation: string, place: RoomPlace): RoomPlace {
  if (!roomPlace.safeParse(place).success) {
    throw new KitEditError(operation, place.id, 'give a place that src/kit/schema.ts allows');
  }
  return place;
}

/** @throws KitEditError where the id is taken or the item is not allowed */
export function addItem(kit: Kit, item: KitItem): Kit {
  if (kit.items.some(({ id }) => id === item.id)) {
    throw new KitEditError('addItem', item.id, 'give it an id of its own');
  }
  return { ...kit, items: [...kit.items, checkedItem('addItem', item)] };
}

/** In place of the item of the same id; a kit without it stays as it is. @throws KitEditError where the item is not allowed */
export function changeItem(kit: Kit, item: KitItem): Kit {
  const old = kit.items.find(({ id }) => id === item.id);
  if (!old || sameJson(old, item)) return kit;
  checkedItem('changeItem', item);
  return { ...kit, items: kit.items.map((one) => (one === old ? item : one)) };
}

/** To a whole number from 0 to MAX_COUNT: what is beyond is brought within. */
export function setCount(kit: Kit, id: ItemId, count: number): Kit {
  const item = kit.items.find((one) => one.id === id);
  if (!item || Number.isNaN(count)) return kit;
  return changeItem(kit, { ...item, count: Math.max(0, Math.min(MAX_COUNT, Math.round(count))) });
}

export function removeItem(kit: Kit, id: ItemId): Kit {
  const items = kit.items.filter((item) => item.id !== id);
  return items.length === kit.items.length ? kit : { ...kit, items };
}

/** @throws KitEditError where the id is taken or the place is not allowed */
export function addPlace(kit: Kit, place: RoomPlace): Kit {
  if (kit.places.some(({ id }) => id === place.id)) {
    throw new KitEditError('addPlace', place.id, 'give it an id of its own');
  }
  return { ...kit, places: [...kit.places, checkedPlace('addPlace', place)] };
}

/** In place of the one of the same id; a kit without it stays as it is. @throws KitEditError where the place is not allowed */
export function changePlace(kit: Kit, place: RoomPlace): Kit {
  const old = kit.places.find(({ id }) => id === place.id);
  if (!old || sameJson(old, place)) return kit;
  checkedPlace('changePlace', place);
  return { ...kit, places: kit.places.map((one) => (one === old ? place : one)) };
}

export function removePlace(kit: Kit, id: PlaceId): Kit {
  const places = kit.places.filter((place) => place.id !== id);
  return places.length === kit.places.length ? kit : { ...kit, places };
}

/** What was on the list to buy is there now. */
export function bought(kit: Kit, id: ItemId): Kit {
  const item = kit.items.find((one) => one.id === id);
  if (item?.toBuy === undefined) return kit;
  const { toBuy, ...rest } = item;
  return changeItem(kit, { ...rest, count: Math.min(MAX_COUNT, rest.count + toBuy) });
}
