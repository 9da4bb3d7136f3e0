/**
 * Ties: steps with drag 0 that would still delay the finish if they took longer, because others take exactly as long beside
 * them; only shortening all of them helps. Own definition, from the meaning.
 * Method: one question to what-if.ts for each step with drag 0; for 'only with …' one for each other tied step, when asked.
 */
import { isLonger } from './compare.ts';
import { type Flow, flowOf } from './flow.ts';
import type { Index, Measures } from './measures.ts';
import type { Network } from './network.ts';
import { timesOf } from './times.ts';
import { WhatIf } from './what-if.ts';

/** The design's 'if it took longer': this much, in minutes. */
const LONGER = 1;

/** By node: 1 where tied. All 0 when the game is not solvable. */
export function tiedSteps(
  network: Network,
  flow: Flow,
  whatIf: WhatIf,
  shortest: number,
  drag: Float64Array,
): Uint8Array {
  const tied = new Uint8Array(network.size);
  if (!flow.solvable) return tied;
  for (let step = 0; step < network.size; step++) {
    const at = flow.position[step] ?? -1;
    if (network.isStep[step] !== 1 || at < 0 || drag[step] !== 0) continue;
    const later = whatIf.shortest([at], (network.minutes[step] ?? 0) + LONGER);
    if (isLonger(later, shortest)) tied[step] = 1;
  }
  return tied;
}

/**
 * The tied steps that, with their minutes and this one's set to 0 together, shorten the finish, by index. Empty: where the node is
 * tied, 'only with others' (more than one more is needed); where it is not tied, nothing to say.
 */
export function onlyWith(
  network: Network,
  measures: Pick<Measures, 'tied' | 'shortest'>,
  node: Index,
): Index[] {
  if (measures.tied[node] !== 1) return [];
  const flow = flowOf(network);
  const whatIf = new WhatIf(flow, timesOf(flow));
  const own = flow.position[node] ?? -1;
  const partners: Index[] = [];
  for (let other = 0; other < network.size; other++) {
    if (other === node || measures.tied[other] !== 1) continue;
    const together = whatIf.shortest([own, flow.position[other] ?? -1], 0);
    if (isLonger(measures.shortest, together)) partners.push(other);
  }
  return partners;
}
