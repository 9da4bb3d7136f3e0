/**
 * The critical chain: what the shortest time is made of, back from the last prize along what each start waited for, on expected minutes.
 * The critical path of Kelley and Walker (1959), with choices of k of n. Cost: as times.ts.
 */
import { walkBack } from './chain.ts';
import { type Flow, flowOf } from './flow.ts';
import type { Network } from './network.ts';
import { timesOf } from './times.ts';

/** Node indices, first to last, each node once: steps and what lies between them. Nothing when the game is not solvable. */
export function criticalChain(network: Network, flow: Flow = flowOf(network)): Int32Array {
  if (!flow.solvable) return new Int32Array(0);
  const nodes = new Set<number>();
  for (const at of walkBack(flow, timesOf(flow))) nodes.add(network.events.node[flow.event[at] ?? 0] ?? 0);
  return Int32Array.from(nodes).reverse();
}
