/**
 * The typical lesson as it is shown: the run nearest the median, and round it what holds for all runs. The sentence, the chart and
 * the map of a minute all come from `momentOf` on this one run.
 */
import type { Clock } from '../../src/engine/simulation/clock.ts';
import type { Simulated } from '../../src/engine/simulation/model.ts';
import { momentOf, type NodeState } from '../../src/engine/simulation/moment.ts';
import { INSTANT } from '../../src/engine/simulation/play.ts';
import type { Game, NodeId } from '../../src/game/model.ts';
import {
  momentText,
  type PlayedMinute,
  type Queue,
  type Worked,
  waitsForName,
} from '../../src/words/play.ts';
import type { Moment } from '../flow/card.ts';

/** From one minute to another nothing changes in how many pupils are busy. */
export interface Stretch {
  readonly from: number;
  readonly to: number;
  readonly busy: number;
  readonly waiting: number;
}

/** When a box is opened, or all ends. */
export interface Opening {
  /** Undefined for the end. */
  readonly node: NodeId | undefined;
  /** In this run; undefined where it does not come to it. */
  readonly minute: number | undefined;
  /** The tenth and the ninetieth percentile over the runs; the second undefined where fewer come so far. */
  readonly low: number;
  readonly high: number | undefined;
}

export interface Lesson {
  readonly game: Game;
  readonly clock: Clock;
  readonly simulated: Simulated;
  readonly end: number;
  /** The last minute that is shown: the first tenth from the end on. */
  readonly last: number;
  readonly stretches: readonly Stretch[];
  /** Minutes, in tenths and ascending, at each of which something is new; the last is `last`. */
  readonly events: readonly number[];
  /** In the order in which they are opened; the end comes last. */
  readonly openings: readonly Opening[];
}

/** Minutes are shown, and asked for, in tenths: what is said of a minute is then true of exactly that minute. */
export function toTenth(minute: number): number {
  return Math.round(minute * 10) / 10;
}

/** The first tenth at which what happens then has happened. */
export function tenthFrom(minute: number): number {
  return Math.max(0, Math.ceil((minute - INSTANT) * 10) / 10);
}

export function lessonFrom(game: Game, clock: Clock, simulated: Simulated): Lesson {
  const { end } = simulated.typical;
  const last = tenthFrom(end);
  return {
    game,
    clock,
    simulated,
    end,
    last,
    stretches: stretchesOf(clock, simulated),
    events: eventsOf(clock, simulated, last),
    openings: openingsOf(game, clock, simulated),
  };
}

const byNumber = (a: number, b: number) => a - b;

function stretchesOf(clock: Clock, { typical }: Simulated): Stretch[] {
  const { begin, free, end } = typical;
  const times = new Set([0]);
  for (const list of [begin, free]) for (const time of list) if (time < end - INSTANT) times.add(time);
  const sorted = [...times].sort(byNumber);
  return sorted.map((from, i) => {
    const { busy, waiting } = momentOf(clock, typical, from);
    return { from, to: sorted[i + 1] ?? end, busy, waiting };
  });
}

function eventsOf(clock: Clock, { typical }: Simulated, last: number): number[] {
  const { possible, begin, free, reached, away, end } = typical;
  const times = new Set([0, last]);
  for (const list of [possible, begin, free, reached]) {
    for (const time of list) if (time <= end) times.add(tenthFrom(time));
  }
  // What is given out at a minute, and cannot be tried then, may come into view all the same; what other teams take may be missed.
  const others = away.flatMap(({ from, to }) => [from, to]);
  for (const minute of new Set([...clock.network.atMinute, ...others])) {
    const tenth = tenthFrom(minute);
    if (minute > end || times.has(tenth)) continue;
    const before = momentOf(clock, typical, toTenth(tenth - 0.1));
    const now = momentOf(clock, typical, tenth);
    const isNew = now.states.some(
      (state, node) => state !== before.states[node] || now.queuesFor[node] !== before.queuesFor[node],
    );
    if (isNew) times.add(tenth);
  }
  return [...times].sort(byNumber);
}

/** Undefined for what is never. */
function ever(minute: number | undefined): number | undefined {
  return minute !== undefined && Number.isFinite(minute) ? minute : undefined;
}

function openingsOf(game: Game, { network }: Clock, { typical, reached, ...all }: Simulated): Opening[] {
  const openings: Opening[] = [];
  network.ids.forEach((node, i) => {
    const isLocked = (network.fasteners.starts[i + 1] ?? 0) > (network.fasteners.starts[i] ?? 0);
    const low = ever(reached.p10[i]);
    if (game.nodes.get(node)?.kind !== 'container' || !isLocked || low === undefined) return;
    const minute = ever(typical.reached[i]);
    openings.push({
      node,
      minute: minute !== undefined && minute <= typical.end ? minute : undefined,
      low,
      high: ever(reached.p90[i]),
    });
  });
  openings.sort((a, b) => (a.minute ?? a.low) - (b.minute ?? b.low));
  return [...openings, { node: undefined, minute: typical.end, low: all.p10, high: all.p90 }];
}

export interface ShownMinute {
  /** The same map as before for as long as nothing on it is new. */
  readonly moments: ReadonlyMap<NodeId, Moment>;
  readonly told: PlayedMinute;
}

/** How things stand at a minute, from one look at the run. */
export function minuteOf(
  { game, clock, simulated }: Lesson,
  minute: number,
  before: ReadonlyMap<NodeId, Moment> = NOTHING,
): ShownMinute {
  const { network, lesson } = clock;
  const { pupils } = simulated.typical;
  const { states, queuesFor, waiting } = momentOf(clock, simulated.typical, minute);
  const moments = new Map<NodeId, Moment>();
  const working: Worked[] = [];
  const checking: NodeId[] = [];
  const open: NodeId[] = [];
  const queueing: Queue[] = [];
  states.forEach((state, i) => {
    const node = network.ids[i] ?? '';
    const kind = game.nodes.get(node)?.kind;
    if (!kind) return;
    const busy = pupils[i] ?? 0;
    const queue = { node, thing: network.ids[queuesFor[i] ?? -1] ?? '' };
    const waitsFor = state === 'queueing' ? waitsForName(game, queue) : '';
    moments.set(node, momentFor(state, momentText(kind, state, busy, waitsFor)));
    if (state === 'working') working.push({ node, pupils: busy });
    else if (state === 'checking') checking.push(node);
    else if (state === 'open') open.push(node);
    else if (state === 'queueing') queueing.push(queue);
  });
  // What the most are at is told first.
  working.sort((a, b) => b.pupils - a.pupils);
  const isOver = network.prizes.every((prize) => states[prize] === 'done');
  const prizes = isOver ? Array.from(network.prizes, (i) => network.ids[i] ?? '') : undefined;
  return {
    moments: sameMoments(moments, before) ? before : moments,
    told: {
      minute,
      bell: lesson.minutes,
      team: lesson.team,
      waiting,
      working,
      checking,
      open,
      queueing,
      prizes,
    },
  };
}

const NOTHING: ReadonlyMap<NodeId, Moment> = new Map();

const known = new Map<string, Moment>();

/** One object for all that stand alike, so that a thing is drawn anew only when its word is another. */
function momentFor(state: NodeState, text: string): Moment {
  const key = `${state} ${text}`;
  const moment = known.get(key) ?? { state, text };
  known.set(key, moment);
  return moment;
}

function sameMoments(a: ReadonlyMap<NodeId, Moment>, b: ReadonlyMap<NodeId, Moment>): boolean {
  if (a.size !== b.size) return false;
  for (const [node, moment] of a) if (b.get(node) !== moment) return false;
  return true;
}
