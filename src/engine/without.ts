/**
 * What falls when one node is never reached, everything else as it was: 'what if nobody finds this?'.
 * Method: the reached set with that node held back. Cost: linear.
 */
import type { Index } from './measures.ts';
import type { Network } from './network.ts';
import { only, reach } from './reach.ts';

/** What is reached in the game as it is and no longer then, ascending; the node itself is in it. Empty when it is not reached anyway. */
export function without(network: Network, node: Index): Index[] {
  const before = reach(network);
  if (before[node] !== 1) return [];
  const after = reach(network, { never: only(network, node) });
  const fallen: Index[] = [];
  for (let other = 0; other < network.size; other++) {
    if (before[other] === 1 && after[other] !== 1) fallen.push(other);
  }
  return fallen;
}
