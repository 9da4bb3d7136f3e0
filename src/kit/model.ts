/** The cupboard and the room in memory: as in the file, never changed in place. */
import type { Immutable } from 'immer';
import { KIT_FORMAT, KIT_VERSION, type KitFile } from './schema.ts';

export type ItemId = string;
export type PlaceId = string;

export type Kit = Immutable<KitFile>;
export type KitItem = Kit['items'][number];
export type RoomPlace = Kit['places'][number];
export type What = KitItem['what'];
export type ItemOf<W extends What> = Extract<KitItem, { readonly what: W }>;

/** In the order in which a cupboard is listed. */
export const WHATS: readonly What[] = ['lock', 'box', 'hasp', 'tool'];

export const emptyKit: Kit = { format: KIT_FORMAT, version: KIT_VERSION, items: [], places: [] };

/** Those of one sort, in the order of the kit. */
export function itemsOf<W extends What>(kit: Kit, what: W): ItemOf<W>[] {
  return kit.items.filter((item): item is ItemOf<W> => item.what === what);
}

/**
 * Whether the kit says anything of a sort, be it that there is none (count 0). What it is silent about has not been counted, and is
 * not called short; locks are always counted.
 */
export function isCounted(kit: Kit, what: What): boolean {
  return what === 'lock' || kit.items.some((item) => item.what === what);
}
