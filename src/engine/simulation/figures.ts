/**
 * What the simulation says of one game: the answers to one question, those that take longer later. Plain data, structured-cloneable.
 * Arrays have one entry for each node of `clock.network`.
 */
import type { Clock } from './clock.ts';
import type { StepCosts } from './costs.ts';
import type { Simulated } from './model.ts';
import type { Choosing } from './rules.ts';

/** The ways in which a team may choose its next step; the first is the one of `simulated`. */
export const WAYS = ['any', 'locksFirst', 'newestFirst'] as const satisfies readonly Choosing[];

export interface Figures {
  readonly clock: Clock;
  /** By what the teacher states (`statedRules`). */
  readonly simulated: Simulated;
  /** From the first few runs; more follow. */
  readonly coarse: boolean;
  /** Nodes in the order in which they let the game end at the shortest time; see critical-chain.ts. */
  readonly chain: Int32Array;
  /** The following are undefined until they have been worked out. */
  readonly costs: StepCosts | undefined;
  /** Of the game with everything used that is left out today: the share of runs in time. Also undefined where nothing is left out. */
  readonly whole: { readonly inTime: number } | undefined;
  /** Shares of runs in time with 0, 1, 2 … hints. */
  readonly byHints: readonly number[] | undefined;
  /** Shares of runs in time by each of WAYS. */
  readonly byChoosing: readonly number[] | undefined;
}
