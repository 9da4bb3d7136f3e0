/** What this teacher has, apart from every game, and which real lock was chosen for which lock of a game. */

import type { NodeId } from '../../src/game/model.ts';
import { emptyKit, type ItemId, type Kit } from '../../src/kit/model.ts';

/** For locks of one game, copy by copy; undefined: any that fits. */
export type Pins = ReadonlyMap<NodeId, readonly (ItemId | undefined)[]>;

export interface Owned {
  readonly kit: Kit;
  /** By the id of the game. */
  readonly pins: ReadonlyMap<string, Pins>;
}

export const NOTHING_OWNED: Owned = { kit: emptyKit, pins: new Map() };
