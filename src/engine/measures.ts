/**
 * What the engine has to say of a game: plain data, flat, able to travel to a worker and back as it is.
 * Nodes are spoken of by their index in the network (Network.ids), times are minutes, and what is not reached is at Infinity.
 * The meaning of every measure is stated beside the function that computes it.
 */

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

/** Why something is reached: what it waited for last and all else that its earliest proof uses directly. */
export interface Reason {
  readonly node: Index;
  /** Holder, containers' fasteners and the needs that count towards its earliest start. */
  readonly because: readonly Index[];
}

/**
 * Why something is not reached, walked to the root of the blockage.
 * ring: the nodes wait for each other, in order, each for the next and the last for the first.
 * closed: a fastener that nothing opens.
 * missing: a node whose need is larger than the links that could ever meet it.
 */
export type Blockage =
  | { readonly cause: 'ring'; readonly nodes: readonly Index[] }
  | { readonly cause: 'closed'; readonly node: Index }
  | { readonly cause: 'missing'; readonly node: Index; readonly need: number; readonly possible: number };
