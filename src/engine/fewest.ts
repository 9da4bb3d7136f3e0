/**
 * The fewest steps that win: the smallest set of steps such that all prizes are reached although every other step never is.
 * NP-hard (an all-puzzle over any-1 puzzles is set cover; Karp 1972), so the search is counted and never timed.
 * Method: what is forced (no prize without it) is found for everything at once by falls.ts and contracted, together with all
 * that it alone reaches. What remains falls into parts that share nothing, each searched by branch and bound over the choices
 * (needs of which fewer than all are wanted): one need is taken, then given up. Lower bound: the steps forced so far, and one more
 * where they do not win yet. Budget: 200,000 search nodes over all parts.
 * Cost: linear without choices; each search node is linear in its part.
 */
import { falling } from './falls.ts';
import { partsOf } from './fewest-parts.ts';
import { PartSearch } from './fewest-search.ts';
import { type Flow, flowOf } from './flow.ts';
import type { Fewest, Measures } from './measures.ts';
import type { Network } from './network.ts';

const SEARCH_BUDGET = 200_000;

/** `bound` is `steps` where the search was complete. All 0 when the game is not solvable. */
export function fewestSteps(
  network: Network,
  measures: Pick<Measures, 'longestChain' | 'mustDo'>,
  budget = SEARCH_BUDGET,
): Fewest {
  const flow = flowOf(network);
  if (!flow.solvable) return { steps: 0, exact: true, bound: 0 };
  const isStep = Uint8Array.from(flow.event, (event) =>
    event < network.size ? (network.isStep[event] ?? 0) : 0,
  );
  const forced = forcedEvents(flow);
  let steps = 0;
  for (let at = 0; at < flow.count; at++) if (forced[at] === 1 && isStep[at] === 1) steps++;
  let left = budget;
  let exact = true;
  for (const part of partsOf(flow, isStep, forced)) {
    const search = new PartSearch(part, left);
    steps += search.best;
    left -= search.searched;
    exact &&= search.complete;
  }
  const mustDo = measures.mustDo.reduce((sum, mark) => sum + mark, 0);
  return { steps, exact, bound: exact ? steps : Math.max(measures.longestChain, mustDo) };
}

/** 1 at each position without which a prize falls. */
function forcedEvents(flow: Flow): Uint8Array {
  const everything = Int32Array.from({ length: flow.count }, (_, at) => at);
  const fall = falling(flow, everything);
  return Uint8Array.from(everything, (at) => (flow.prizes.some((prize) => fall.falls(at, prize)) ? 1 : 0));
}
