/**
 * Drag: the minutes that the shortest time loses when a step takes none and nothing else changes. The term is Devaux's
 * (critical-path drag); here it is found from the meaning and not by his rule, because a choice of k of n breaks the rule: a step
 * off the quickest way can have drag too.
 * Method: one question to what-if.ts for each reached step. Cost: steps times what comes after one.
 */
import { isLonger } from './compare.ts';
import type { Flow } from './flow.ts';
import type { Network } from './network.ts';
import type { WhatIf } from './what-if.ts';

/** By node; exactly 0 where it is within rounding of 0, for what is no reached step, and when the game is not solvable. */
export function dragOf(network: Network, flow: Flow, whatIf: WhatIf, shortest: number): Float64Array {
  const drag = new Float64Array(network.size);
  if (!flow.solvable) return drag;
  for (let step = 0; step < network.size; step++) {
    const at = flow.position[step] ?? -1;
    if (network.isStep[step] !== 1 || at < 0) continue;
    const without = whatIf.shortest([at], 0);
    if (isLonger(shortest, without)) drag[step] = shortest - without;
  }
  return drag;
}
