/**
 * The pace of a lesson: by when each lock is open where the lesson ends in time, and until when a step can be given away where it would not.
 * All of it is counted in runs, a run of each team by itself where several are played. In time: ended by the bell.
 * Cost: runs times nodes, then steps times the logarithm of the lesson's minutes times some runs.
 */
import { KINDS } from '../../game/model.ts';
import type { Index } from '../measures.ts';
import { reach } from '../reach.ts';
import { RUNS, STREAM } from './batch.ts';
import type { Clock } from './clock.ts';
import { INSTANT, Player } from './play.ts';
import { PLAIN, type Rules } from './rules.ts';
import { nearestRank, select } from './statistics.ts';

export interface LockPace {
  readonly lock: Index;
  /** Minutes by which half, and four fifths, of the runs in time have it open, by nearest rank; Infinity where fewer open it at all. */
  readonly half: number;
  readonly fourFifths: number;
}

/**
 * A step that can be given away when it runs late: at the minute it counts as done, with all that it gives, for every team that has not done it.
 * Judged are the late runs that have not done it at that minute. `minute` is a whole minute from 1, before the bell, at which a quarter of the late runs have
 * it still before them and at least four fifths of these end in time once it is given away; a minute later either no longer holds. It is sought
 * from the end: the last minute with a quarter, and where that is too late, between it and minute 1 by halving.
 */
export interface StepCut {
  readonly step: Index;
  readonly minute: number;
}

/** Whoever gives a step away sooner has not seen yet that the lesson runs late. Minutes; own rule. */
const SEEN_LATE = 5;

/** Those of the cuts that a teacher can plan with. */
export function plannedCuts(cuts: readonly StepCut[]): readonly StepCut[] {
  return cuts.filter(({ minute }) => minute >= SEEN_LATE);
}

export interface Pace {
  /** Runs of one team in time, and late. */
  readonly inTime: number;
  readonly late: number;
  /** By `half`, then by index; without those that fewer than half of the runs in time open. */
  readonly locks: readonly LockPace[];
  /** By minute, then by index; empty where hardly a run is late. */
  readonly cuts: readonly StepCut[];
}

const FASTENER = KINDS.indexOf('fastener');
const PRIZE = KINDS.indexOf('prize');

const ENOUGH = 0.8;
const A_QUARTER = 0.25;
/** Cuts are tried in so many late runs at most; with fewer than the least nothing is said. */
const MOST_LATE = 100;
export const LEAST_LATE = 20;
/** Nodes that are played before the generator lets its caller breathe. */
const NODES_AT_A_TIME = 5_000;

/** Undefined in between, when the caller may look for something else to do. Only of a game that can be won. */
export function* paceOf(
  clock: Clock,
  rules: Rules = PLAIN,
  runs = RUNS,
  stream = STREAM,
): Generator<undefined, Pace> {
  const { network, lesson } = clock;
  const { size, kinds } = network;
  const bell = lesson.minutes + INSTANT;
  const player = new Player(clock, rules, stream);
  const { teams } = player;
  const atATime = Math.max(1, Math.floor(NODES_AT_A_TIME / (size * teams + 1)));
  const reached = reach(network);
  const locks = [...network.ids.keys()].filter((node) => kinds[node] === FASTENER && reached[node] === 1);
  /** By lock, and then by run in time. */
  const opened = locks.map(() => new Float64Array(runs * teams));
  const late: LateRun[] = [];
  let inTime = 0;
  let lateCount = 0;
  for (let run = 0; run < runs; run++) {
    player.play(run);
    const tooLate: number[] = [];
    for (let team = 0; team < teams; team++) {
      if ((player.ends[team] ?? 0) > bell) {
        tooLate.push(team);
        continue;
      }
      for (const [i, lock] of locks.entries()) {
        const minutes = opened[i];
        if (minutes) minutes[inTime] = player.reached[team * size + lock] ?? 0;
      }
      inTime += 1;
    }
    lateCount += tooLate.length;
    if (tooLate.length > 0 && late.length < MOST_LATE) {
      late.push({ run, teams: tooLate, reached: player.reached.slice() });
    }
    if ((run + 1) % atATime === 0) yield undefined;
  }

  const paces = locks.map((lock, i): LockPace => {
    const minutes = opened[i] ?? new Float64Array(0);
    const at = (percent: number) =>
      inTime === 0 ? Number.POSITIVE_INFINITY : select(minutes, inTime, nearestRank(percent, inTime));
    return { lock, half: at(50), fourFifths: at(80) };
  });
  const cuts: StepCut[] = [];
  if (lateCount >= LEAST_LATE) {
    for (let step = 0; step < size; step++) {
      if (network.isStep[step] !== 1 || reached[step] !== 1 || kinds[step] === PRIZE) continue;
      const minute = yield* latestCut(clock, player, late, step, atATime);
      if (minute !== undefined) cuts.push({ step, minute });
    }
  }
  return {
    inTime,
    late: lateCount,
    locks: paces
      .filter(({ half }) => half < Number.POSITIVE_INFINITY)
      .sort((a, b) => a.half - b.half || a.lock - b.lock),
    cuts: cuts.sort((a, b) => a.minute - b.minute || a.step - b.step),
  };
}

interface LateRun {
  readonly run: number;
  readonly teams: readonly number[];
  /** By team and node. */
  readonly reached: Float64Array;
}

function* latestCut(
  { network, lesson }: Clock,
  player: Player,
  late: readonly LateRun[],
  step: Index,
  atATime: number,
): Generator<undefined, number | undefined> {
  const { size } = network;
  const bell = lesson.minutes + INSTANT;
  const doneAt = (one: LateRun, team: number) => one.reached[team * size + step] ?? 0;
  const minutes = Float64Array.from(late.flatMap((one) => one.teams.map((team) => doneAt(one, team))));
  /** The quarter that does it last has it still before it until then. */
  const few = Math.ceil(A_QUARTER * minutes.length);
  const doneByMost = select(minutes, minutes.length, minutes.length - few);
  const last = Math.min(Math.ceil(lesson.minutes), Math.ceil(doneByMost - INSTANT)) - 1;
  let played = 0;

  function* isEnough(minute: number): Generator<undefined, boolean> {
    let judged = 0;
    let saved = 0;
    for (const one of late) {
      const before = one.teams.filter((team) => doneAt(one, team) > minute + INSTANT);
      if (before.length === 0) continue;
      player.play(one.run, -1, { step, minute });
      judged += before.length;
      saved += before.filter((team) => (player.ends[team] ?? 0) <= bell).length;
      if (++played % atATime === 0) yield undefined;
    }
    return judged > 0 && saved >= ENOUGH * judged;
  }

  if (last < 1) return undefined;
  if (yield* isEnough(last)) return last;
  if (!(yield* isEnough(1))) return undefined;
  let enough = 1;
  let tooLate = last;
  while (tooLate - enough > 1) {
    const middle = (enough + tooLate) >> 1;
    if (yield* isEnough(middle)) enough = middle;
    else tooLate = middle;
  }
  return enough;
}
