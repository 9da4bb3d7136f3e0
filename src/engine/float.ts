/**
 * Float (total float, slack) of a step: how many minutes longer it may take without delaying the finish, all else as it is. Where every
 * need counts it is the textbook's latest start less earliest start (Kelley and Walker 1959); with a choice of k of n or a ring there is no
 * one latest start, and the meaning is taken at its word: it is tried.
 * Method: the shortest time, as a function of this step's minutes, never falls and never grows faster than they do, for a step stands at most
 * once on any way to the end. So from minutes too long by e, as much as e fewer are still not too few: taken off again and again, this
 * comes down to the float and never below it. Minutes above the shortest time that delay nothing never will.
 * Cost: a question to what-if.ts for each stretch of minutes on which another way takes over; in class games one to three.
 */
import { isLonger } from './compare.ts';
import { flowOf } from './flow.ts';
import type { Index, Measures } from './measures.ts';
import type { Network } from './network.ts';
import { timesOf } from './times.ts';
import { WhatIf } from './what-if.ts';

/** In minutes: exactly 0 for what has drag or is tied, Infinity for what never delays the finish. Undefined for what is no reached step, and when the game is not solvable. */
export function floatOf(
  network: Network,
  measures: Pick<Measures, 'shortest' | 'solvable'>,
  step: Index,
): number | undefined {
  const flow = flowOf(network);
  const at = flow.position[step] ?? -1;
  if (!measures.solvable || network.isStep[step] !== 1 || at < 0) return undefined;
  const whatIf = new WhatIf(flow, timesOf(flow));
  const own = network.minutes[step] ?? 0;
  let longest = Math.max(own, measures.shortest) + 1;
  let end = whatIf.shortest([at], longest);
  if (!isLonger(end, measures.shortest)) return Number.POSITIVE_INFINITY;
  while (isLonger(end, measures.shortest)) {
    longest -= end - measures.shortest;
    end = whatIf.shortest([at], longest);
  }
  return isLonger(longest, own) ? longest - own : 0;
}
