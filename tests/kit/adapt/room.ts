/** A cupboard and a room for tests. */
import { emptyKit, type Kit, type KitItem, type RoomPlace } from '../../../src/kit/model.ts';

export function roomOf(...names: readonly string[]): readonly RoomPlace[] {
  return names.map((name, i) => ({ id: `r${i}`, name, order: i }));
}

export function kitOf(places: readonly RoomPlace[], items: readonly KitItem[] = []): Kit {
  return { ...emptyKit, places, items };
}
