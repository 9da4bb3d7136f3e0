/** How many pupils of a team wait with a step, on average, and for what: beside the work on it, in a queue for what it uses, or for its check. */

import { rowOf } from '../../engine/rows.ts';
import type { Clock } from '../../engine/simulation/clock.ts';
import { usesOf } from '../../engine/simulation/plan.ts';
import type { Timing } from './timed-finding.ts';

/** How a team waits the longest with one step. */
export interface Waiting {
  readonly waitsFor: 'work' | 'thing' | 'check';
  /** The shared thing, as a node index; -1 where it is not for one. */
  readonly thing: number;
  /** Pupils of a team, meanwhile. */
  readonly waiters: number;
}

/** While the step is being worked; 0 for what is no step. */
export function waitersWhile(timing: Timing, step: number): number {
  // In runs that do without the step nobody waits for it either, so that the figure is rather too small than too large.
  return ratio(timing, idleAtWork(timing, step), timing.clock.network.minutes[step] ?? 0);
}

/** Pupil-minutes of a team while the step is being worked, and not in queues for it. */
export function idleAtWork({ simulated }: Timing, step: number): number {
  const { idleWhile, queueing, checking } = simulated;
  const queued = (queueing.idle[step] ?? 0) + (checking.idle[step] ?? 0);
  return queued === 0 ? (idleWhile[step] ?? 0) : Math.max(0, (idleWhile[step] ?? 0) - queued);
}

export function waitingWith(timing: Timing, step: number): Waiting {
  const { clock, simulated } = timing;
  const { queueing, checking } = simulated;
  const inQueue = queueing.idle[step] ?? 0;
  const forCheck = checking.idle[step] ?? 0;
  const atWork = idleAtWork(timing, step);
  if (inQueue > Math.max(forCheck, atWork)) {
    const waiters = ratio(timing, inQueue, queueing.minutes[step] ?? 0);
    return { waitsFor: 'thing', thing: scarcest(clock, simulated.queued, step), waiters };
  }
  if (forCheck > atWork) {
    return { waitsFor: 'check', thing: -1, waiters: ratio(timing, forCheck, checking.minutes[step] ?? 0) };
  }
  return { waitsFor: 'work', thing: -1, waiters: waitersWhile(timing, step) };
}

function ratio({ simulated }: Timing, idle: number, minutes: number): number {
  return minutes <= 0 ? 0 : Math.min(simulated.team, idle / minutes);
}

/** Of the shared things that the step uses, the one that teams queue for the longest. */
function scarcest(clock: Clock, queued: Float64Array, step: number): number {
  return [...rowOf(usesOf(clock), step)].reduce(
    (most, thing) => (most < 0 || (queued[thing] ?? 0) > (queued[most] ?? 0) ? thing : most),
    -1,
  );
}
