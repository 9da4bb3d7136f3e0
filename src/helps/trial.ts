/**
 * What a change does to the lesson: the same runs of the game as it stands and of the changed one, run by run on like draws, so that most of what
 * chance brings stands on both sides and the difference is known far better than either figure (common random numbers; Law and Kelton).
 */
import { Batch } from '../engine/simulation/batch.ts';
import { type Clock, clockOf } from '../engine/simulation/clock.ts';
import type { Simulated } from '../engine/simulation/model.ts';
import { INSTANT } from '../engine/simulation/play.ts';
import { statedRules } from '../engine/simulation/rules.ts';
import type { Assessment } from '../findings/assess.ts';

/** Of lessons with a game. */
export interface LessonFigures {
  /** Share of the runs in time, 0 to 1. */
  readonly inTime: number;
  /** Minutes that a pupil waits in all, mean over the runs. */
  readonly waiting: number;
  readonly median: number;
}

export class Trial {
  readonly clock: Clock;
  readonly #batch: Batch;

  constructor({ game, network }: Pick<Assessment, 'game' | 'network'>) {
    this.clock = clockOf(game, network);
    this.#batch = new Batch(this.clock, statedRules(this.clock));
  }

  run(runs: number): Generator<undefined, void> {
    return this.#batch.runInSlices(runs);
  }

  /** Nodes that a run plays. */
  get nodes(): number {
    return this.clock.network.size * this.#batch.outcomes.teams;
  }

  figures(): LessonFigures {
    return lessonFigures(this.#batch.result());
  }

  /** Of each run: the share of its teams that are in time, and the minutes that a pupil waits. */
  outcomes(): { readonly inTime: Float64Array; readonly waiting: Float64Array } {
    const { teams, ends, idles } = this.#batch.outcomes;
    const bell = this.clock.lesson.minutes + INSTANT;
    const pupils = teams * this.clock.lesson.team;
    const inTime = Float64Array.from(idles, (_, run) => {
      const own = ends.subarray(run * teams, (run + 1) * teams);
      return own.reduce((sum, end) => (end <= bell ? sum + 1 : sum), 0) / teams;
    });
    return { inTime, waiting: idles.map((minutes) => minutes / pupils) };
  }
}

export function lessonFigures({ inTime, idle, team, median }: Simulated): LessonFigures {
  return { inTime, waiting: idle / team, median };
}

/** A mean over runs, and the standard error of that mean. */
export interface Difference {
  readonly mean: number;
  readonly error: number;
}

/** Of the second less the first, run by run; over the runs that both have. */
export function difference(before: Float64Array, after: Float64Array): Difference {
  const runs = Math.min(before.length, after.length);
  let mean = 0;
  let squares = 0;
  for (let run = 0; run < runs; run++) {
    const value = (after[run] ?? 0) - (before[run] ?? 0);
    const off = value - mean;
    mean += off / (run + 1);
    squares += off * (value - mean);
  }
  return { mean, error: runs < 2 ? 0 : Math.sqrt(squares / (runs - 1) / runs) };
}

/**
 * Standard errors beyond which a difference is no chance. Some two hundred changes are tried, of which hardly one in a hundred games would see
 * a single one pass this by chance alone.
 */
const NOISE = 4;

export function isBeyondNoise({ mean, error }: Difference): boolean {
  return Math.abs(mean) > NOISE * error && Math.abs(mean) > INSTANT;
}

/** Lessons in ten and minutes of waiting count alike. Own rule. */
const TEN = 10;

export interface Effect {
  readonly inTime: Difference;
  readonly waiting: Difference;
}

export function effectOf(before: Trial, after: Trial): Effect {
  const [a, b] = [before.outcomes(), after.outcomes()];
  return { inTime: difference(a.inTime, b.inTime), waiting: difference(a.waiting, b.waiting) };
}

/** By how much a change helps: lessons in ten that end in time beside minutes that a pupil waits less; with `sure`, only what is beyond noise. */
export function gain({ inTime, waiting }: Effect, sure: boolean): number {
  const counted = (one: Difference) => (!sure || isBeyondNoise(one) ? one.mean : 0);
  return TEN * counted(inTime) - counted(waiting);
}
