/**
 * What the engine has to say of a game: plain data, flat, able to travel to a worker and back as it is.
 * Nodes are spoken of by their index in the network (Network.ids), times are minutes, and what is not reached is at Infinity.
 * The meaning of every measure is stated beside the function that computes it.
 */

import { longestChain } from './chain.ts';
import { dragOf } from './drag.ts';
import { flowOf } from './flow.ts';
import { mustDoSteps } from './must-do.ts';
import type { Network } from './network.ts';
import { orderOfPlay } from './order-of-play.ts';
import { tiedSteps } from './ties.ts';
import { latest, timesOf } from './times.ts';
import { WhatIf } from './what-if.ts';

/** One node index of the network. */
export type Index = number;

/** Measures of what has been reached and when, cheap enough for every edit. Arrays have one entry for each node of the network. */
export interface Measures {
  /** 1 where the node is reached: a place found, a container or fastener open, a puzzle solved, a thing had. */
  readonly reached: Uint8Array;
  /** There is a prize, and every prize is reached. */
  readonly solvable: boolean;
  readonly start: Float64Array;
  readonly finish: Float64Array;
  /** The latest finish over the prizes; Infinity when not solvable. */
  readonly shortest: number;
  /** Steps in the reached set. */
  readonly steps: number;
  /** The most steps that must follow one another before the last prize; 0 when not solvable. */
  readonly longestChain: number;
  /** Those steps, first to last. */
  readonly chain: Int32Array;
  /** Minutes that the shortest time loses when this step takes none. 0 for what is no reached step, and when not solvable. */
  readonly drag: Float64Array;
  /** 1 for a reached step with drag 0 that would delay the finish if it took longer. */
  readonly tied: Uint8Array;
  /** 1 for a reached step without which the game is not solvable; all 0 when it is not solvable anyway. */
  readonly mustDo: Uint8Array;
  /** The reached steps in the order of play. */
  readonly order: Int32Array;
  /** Number in the order of play, from 1; 0 for what has none. */
  readonly number: Int32Array;
}

/** The fewest steps that win. NP-hard in general, so it is counted, not timed, and runs in a worker. */
export interface Fewest {
  readonly steps: number;
  /** False when the search budget ran out: then `steps` is the best found and `bound` is below or at the true value. */
  readonly exact: boolean;
  readonly bound: number;
}

/** Why something is reached: all that its earliest proof uses directly. */
export interface Reason {
  readonly node: Index;
  /** Holder, a container's fasteners and the needs that count towards its earliest start. */
  readonly because: readonly Index[];
  /** For a fastener its container, which has to be at hand and not open; else -1. */
  readonly atHand: Index;
  /** Which of `because` (and of `atHand`) it waited for last. */
  readonly last: readonly Index[];
}

/**
 * Why something is not reached, walked to the root of the blockage.
 * ring: the nodes wait for each other, in order, each for the next and the last for the first.
 * closed: a fastener that nothing opens.
 * missing: a node whose need is larger than the links that could ever meet it; `possible` of these there are.
 */
export type Blockage =
  | { readonly cause: 'ring'; readonly nodes: readonly Index[] }
  | { readonly cause: 'closed'; readonly node: Index }
  | { readonly cause: 'missing'; readonly node: Index; readonly possible: number };

/** The whole set for one edit. Cost: that of its parts; all but `drag` and `tied` near linear. */
export function measure(network: Network): Measures {
  const { size } = network;
  const flow = flowOf(network);
  const times = timesOf(flow);
  const reached = new Uint8Array(size);
  const start = new Float64Array(size).fill(Number.POSITIVE_INFINITY);
  const finish = new Float64Array(size).fill(Number.POSITIVE_INFINITY);
  let steps = 0;
  for (let node = 0; node < size; node++) {
    const at = flow.position[node] ?? -1;
    if (at < 0) continue;
    reached[node] = 1;
    steps += network.isStep[node] ?? 0;
    start[node] = times.start[at] ?? 0;
    finish[node] = times.finish[at] ?? 0;
  }
  const shortest = flow.solvable ? latest(times.finish, flow.prizes) : Number.POSITIVE_INFINITY;
  const whatIf = new WhatIf(flow, times);
  const drag = dragOf(network, flow, whatIf, shortest);
  const chain = longestChain(network, flow);
  const order = orderOfPlay(network, flow, times);
  const number = new Int32Array(size);
  for (let place = 0; place < order.length; place++) number[order[place] ?? 0] = place + 1;
  return {
    reached,
    solvable: flow.solvable,
    start,
    finish,
    shortest,
    steps,
    longestChain: chain.length,
    chain: chain.steps,
    drag,
    tied: tiedSteps(network, flow, whatIf, shortest, drag),
    mustDo: mustDoSteps(network, flow),
    order,
    number,
  };
}
