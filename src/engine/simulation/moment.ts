/** The picture at one minute of a run, from its log alone. */
import { KINDS } from '../../game/model.ts';
import { rowOf } from '../rows.ts';
import type { Clock } from './clock.ts';
import type { RunLog } from './model.ts';
import { type Plan, planOf } from './plan.ts';
import { INSTANT } from './play.ts';

/**
 * unseen: not there yet for the pupils: in something shut, or not yet given out. shut: there, and cannot be tried yet. open: can be tried.
 * passedOver: could be tried, but all that it leads to has been reached. working: pupils are at it. checking: worked, and waiting to be checked.
 * done: reached.
 */
export type NodeState = 'unseen' | 'shut' | 'open' | 'passedOver' | 'working' | 'checking' | 'done';

const FASTENER = KINDS.indexOf('fastener');
const PLACE = KINDS.indexOf('place');
const PUZZLE = KINDS.indexOf('puzzle');

export interface Moment {
  /** By node. */
  readonly states: readonly NodeState[];
  /** Pupils; both 0 from the end of the run on. */
  readonly busy: number;
  readonly waiting: number;
}

/**
 * What holds from this minute on, until something happens. From the end of the run on nobody works any more, and what was being worked is open.
 */
export function momentOf(clock: Clock, log: RunLog, minute: number): Moment {
  const { network } = clock;
  const now = Math.min(minute, log.end) + INSTANT;
  const isOver = minute + INSTANT >= log.end;
  const followers = followersAt(clock, log, now);
  const states: NodeState[] = [];
  let busy = 0;
  for (let node = 0; node < network.size; node++) {
    const isStep = network.isStep[node] === 1;
    const has = (moments: Float64Array) => (moments[node] ?? 0) <= now;
    if (has(log.reached)) states.push('done');
    else if (isStep && has(log.free)) states.push('checking');
    else if (isStep && has(log.begin) && !isOver) {
      states.push('working');
      busy += log.pupils[node] ?? 0;
    } else if (isStep && has(log.possible)) {
      states.push(followers[node] === 0 && !has(log.begin) ? 'passedOver' : 'open');
    } else states.push(isThere(clock, log, node, now) ? 'shut' : 'unseen');
  }
  return { states, busy, waiting: isOver ? 0 : clock.lesson.team - busy };
}

/** Of one game many minutes are asked for. */
const plans = new WeakMap<Clock, Plan>();

function planFor(clock: Clock): Plan {
  const plan = plans.get(clock) ?? planOf(clock);
  plans.set(clock, plan);
  return plan;
}

/** By step: followers not yet reached; -1 for a step that has none at all. */
function followersAt(clock: Clock, log: RunLog, now: number): Int32Array {
  const { followers: all, follows } = planFor(clock);
  const followers = all.slice();
  for (let node = 0; node < clock.network.size; node++) {
    if ((log.reached[node] ?? 0) > now) continue;
    for (let i = follows.starts[node] ?? 0; i < (follows.starts[node + 1] ?? 0); i++) {
      const step = follows.items[i] ?? 0;
      followers[step] = (followers[step] ?? 0) - 1;
    }
  }
  return followers;
}

/**
 * Pupils can see it, although it cannot be tried yet. A place is seen from the start, a lock with its container, a puzzle as soon as one thing for
 * it is had; anything else with its holder, or from the start where nobody hands it over. Nothing is seen before its minute of play.
 */
function isThere(clock: Clock, log: RunLog, node: number, now: number): boolean {
  const { kinds, parent, needs, atMinute } = clock.network;
  if ((log.possible[node] ?? 0) <= now) return true;
  if ((atMinute[node] ?? 0) > now) return false;
  const kind = kinds[node];
  const holder = parent[node] ?? -1;
  if (kind === PLACE) return true;
  if (kind === FASTENER) return isThere(clock, log, holder, now);
  if (holder >= 0) return (log.reached[holder] ?? 0) <= now;
  const sources = rowOf(needs, node);
  if (kind === PUZZLE) return sources.some((source) => (log.reached[source] ?? 0) <= now);
  return !sources.some((source) => kinds[source] === PUZZLE);
}
