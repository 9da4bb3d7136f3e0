/** What of the cupboard no copy of the game has got. */
import type { Fitting } from '../fit/index.ts';
import { type ItemOf, itemsOf, type Kit } from '../model.ts';

export interface FreeLock {
  readonly item: ItemOf<'lock'>;
  readonly free: number;
}

/** Locks of which any are free, those with most free first. */
export function freeLocks(kit: Kit, fitting: Fitting): FreeLock[] {
  const used = new Map<string, number>();
  // On one device several answers are typed.
  const devices = new Map<string, number>();
  for (const items of fitting.assigned.values()) {
    const own = new Map<string, number>();
    for (const id of items) if (id !== null) own.set(id, (own.get(id) ?? 0) + 1);
    for (const [id, count] of own) {
      used.set(id, (used.get(id) ?? 0) + count);
      devices.set(id, Math.max(devices.get(id) ?? 0, count));
    }
  }
  return itemsOf(kit, 'lock')
    .map((item) => ({
      item,
      free: item.count - ((item.type === 'typed' ? devices : used).get(item.id) ?? 0),
    }))
    .filter(({ free }) => free > 0)
    .sort((a, b) => b.free - a.free);
}
