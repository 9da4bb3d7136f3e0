/**
 * What an assignment costs, in whole numbers, so that it can be checked from outside. Of all assignments in which every copy has
 * a thing that suits it (suits.ts) or none, and no thing serves twice, the one with the least sum is taken. For a copy of a node n:
 *
 *   with none:         SHORT + LATER × (number of nodes − place of n), nodes by id from 0: shortages gather at the last
 *   with a unit of i:  KEYS_ALIKE  if i belongs to a group of padlocks with like keys that is at home at another node, and one of the two
 *                                  keys comes to hand when it opens the other's lock too soon (keys-alike.ts)
 *                    + MIXED       if i is not the item at home at n: the copies of one node should look alike
 *                    + CHANGE      if this copy had another item before
 *                    + waste(i, n) what i could do beyond what n asks; at most MOST_WASTE
 *
 * What is at home at n is settled before, by the rule in homes.ts, so that every cost belongs to one copy and one unit alone. A pinned copy has its
 * item and takes no part; a unit that a pin has is gone.
 * Locks are assigned type by type, since none goes on a fastener of another type: together that is the least sum too.
 * Boxes come first, then hasps, then locks, each through the hole of the box or hasp that its copy has got.
 */
import { fastenerType } from '../../fasteners/index.ts';
import type { ItemOf } from '../model.ts';

export const SHORT = 1_000_000_000;
export const LATER = 100_000;
export const KEYS_ALIKE = 10_000_000;
export const MIXED = 20_000;
export const CHANGE = 10_000;
export const MOST_WASTE = 999;
/** For what does not suit: more than all others of a large game together, so that none is better. */
export const NEVER = 1_000_000_000_000_000;

/** What a position of a code is reckoned as where nothing is known of the lock: more symbols than any wheel has. */
const ANY = 40;
/** What is reckoned for a thing of which nothing is said that would have to be known. */
const UNKNOWN = 1;

function bounded(waste: number): number {
  return Math.max(0, Math.min(MOST_WASTE, waste));
}

/** The symbols that all its wheels have together, so that a lock with fewer is taken where it will do. */
export function lockWaste(item: ItemOf<'lock'>, symbols: readonly string[] | undefined): number {
  if (symbols === undefined) return 0;
  const { wheel } = fastenerType(item.type);
  return bounded(symbols.reduce((sum, _, position) => sum + (wheel(position, item)?.length ?? ANY), 0));
}

/** Whose name a box bears: that of the box of the game itself, of another one, or of none. */
export type BoxNaming = 'own' | 'none' | 'other';
const NAMING: Readonly<Record<BoxNaming, number>> = { own: 0, none: 300, other: 600 };

/**
 * 300 for a box that bears no name of the game, 600 for one that bears the name of another box; 100 for each lock that it takes and that does not hang
 * there, a box that takes a hasp counting as one that takes two; and one for each lock unit in `blocked`.
 */
export function boxWaste(
  { takes }: ItemOf<'box'>,
  naming: BoxNaming,
  locks: number,
  blocked: number,
): number {
  const room = takes === 'nothing' ? 0 : takes === 'lock' ? 1 : 2;
  const beyond = takes === undefined ? UNKNOWN : 100 * Math.max(0, room - Math.min(2, locks));
  return bounded(NAMING[naming] + beyond + blocked);
}

export function haspWaste({ holes }: ItemOf<'hasp'>, locks: number): number {
  return bounded(holes - locks);
}
