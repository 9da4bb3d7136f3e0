/** What this teacher has, apart from every game, and which real thing was chosen for which part of a game. */
import type { Given } from '../../src/kit/fit/index.ts';
import { emptyKit, type Kit } from '../../src/kit/model.ts';

/** What is chosen for one game: an item for each copy, null for a copy that any thing will do for. */
export interface Pins {
  /** By fastener, container or tool. */
  readonly nodes: Given;
  /** By container. */
  readonly hasps: Given;
}

export interface Owned {
  readonly kit: Kit;
  /** By the id of the game. */
  readonly pins: ReadonlyMap<string, Pins>;
}

export const NO_PINS: Pins = { nodes: new Map(), hasps: new Map() };
export const NOTHING_OWNED: Owned = { kit: emptyKit, pins: new Map() };
