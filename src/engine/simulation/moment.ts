/** The picture at one minute of a run, from its log alone. */
import { KINDS } from '../../game/model.ts';
import { type Rows, rowOf } from '../rows.ts';
import type { Clock } from './clock.ts';
import type { RunLog } from './model.ts';
import { type Plan, planOf, usesOf } from './plan.ts';
import { INSTANT } from './play.ts';

/**
 * unseen: not there yet for the pupils: in something shut, or not yet given out. shut: there, and cannot be tried yet. open: can be tried.
 * queueing: could be tried, but other teams
 * have every copy of a shared thing that it uses. passedOver: could be tried, but all that it leads to has been reached. working: pupils are at it. checking: worked, and waiting to be checked.
 * done: reached.
 */
export type NodeState =
  | 'unseen'
  | 'shut'
  | 'open'
  | 'queueing'
  | 'passedOver'
  | 'working'
  | 'checking'
  | 'done';

const FASTENER = KINDS.indexOf('fastener');
const PLACE = KINDS.indexOf('place');
const PUZZLE = KINDS.indexOf('puzzle');
const TOOL = KINDS.indexOf('tool');

export interface Moment {
  /** By node. */
  readonly states: readonly NodeState[];
  /** Of each node that queues, the shared thing, as a node index; -1 of any other. */
  readonly queuesFor: Int32Array;
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
  const queuesFor = new Int32Array(network.size).fill(-1);
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
      const isOpen = followers[node] !== 0 || has(log.begin);
      queuesFor[node] = isOpen && !isOver ? missingFor(clock, log, node, now) : -1;
      states.push(!isOpen ? 'passedOver' : queuesFor[node] === -1 ? 'open' : 'queueing');
    } else states.push(isThere(clock, log, node, now) ? 'shut' : 'unseen');
  }
  return { states, queuesFor, busy, waiting: isOver ? 0 : clock.lesson.team - busy };
}

/** Of one game many minutes are asked for. */
const plans = new WeakMap<Clock, { readonly plan: Plan; readonly uses: Rows }>();

function planFor(clock: Clock) {
  const plan = plans.get(clock) ?? { plan: planOf(clock), uses: usesOf(clock) };
  plans.set(clock, plan);
  return plan;
}

/** By step: followers not yet reached; -1 for a step that has none at all. */
function followersAt(clock: Clock, log: RunLog, now: number): Int32Array {
  const { followers: all, follows } = planFor(clock).plan;
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

/** A shared thing that the step uses and other teams have; -1 for none. A tool that a team has not found yet it does without (copies.ts). */
function missingFor(clock: Clock, log: RunLog, step: number, now: number): number {
  if (log.away.length === 0) return -1;
  const uses = rowOf(planFor(clock).uses, step);
  const missing = log.away.find(
    ({ thing, from, to }) =>
      from <= now &&
      now < to &&
      uses.includes(thing) &&
      (clock.network.kinds[thing] !== TOOL || (log.reached[thing] ?? 0) <= now),
  );
  return missing?.thing ?? -1;
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
