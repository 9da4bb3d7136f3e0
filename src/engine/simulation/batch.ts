/**
 * Many runs of one game, and what they say together. Runs are numbered from 0 and may be continued: the first 200 of 2,000 are the 200 of a
 * batch that stops there. Cost: near linear in runs, teams, nodes and links.
 */
import type { Network } from '../network.ts';
import { isSolvable, reach } from '../reach.ts';
import type { Clock } from './clock.ts';
import type { RunLog, Simulated, Spread, Waited } from './model.ts';
import { INSTANT, Player } from './play.ts';
import { PLAIN, type Rules } from './rules.ts';
import { nearestRank, select, upperMiddle } from './statistics.ts';
import { Tally } from './tally.ts';

/** What a game's figures rest on. */
export const RUNS = 2_000;
/** The stream of all figures that are shown. */
export const STREAM = 0;
/** No room holds more; of more the first hundred are played. */
const MAX_TEAMS = 100;
/** Moments kept for `reached`, one for each run, team and node: beyond, it rests on the first runs alone. */
const MAX_MOMENTS = 4_000_000;
/** Numbers in one line of a cache. */
const TOGETHER = 8;
/** Nodes that are played between two pauses. */
const NODES_AT_A_TIME = 2_000;
const NEVER = Number.POSITIVE_INFINITY;

/** A game can be simulated when it can be won. */
export function canPlay(network: Network): boolean {
  return isSolvable(network, reach(network));
}

/** A whole batch; undefined when the game cannot be won. */
export function simulate(clock: Clock, rules: Rules = PLAIN, runs = RUNS): Simulated | undefined {
  if (!canPlay(clock.network)) return undefined;
  const batch = new Batch(clock, rules);
  batch.run(runs);
  return batch.result();
}

/** Of so many teams, how many are played: at least one, and no more than a room holds. */
export function teamsPlayed(teams: number): number {
  return Math.min(MAX_TEAMS, Math.max(1, teams));
}

/** Only of a game that can be won (`canPlay`): with any other, an end never comes and the figures are Infinity. */
export class Batch {
  readonly #clock: Clock;
  readonly #rules: Rules;
  readonly #stream: number;
  readonly #tally: Tally;
  readonly #player: Player;
  readonly #size: number;
  readonly #teams: number;
  readonly #keptRuns: number;
  #runs = 0;
  /** By run and team. */
  #ends: Float64Array = new Float64Array(0);
  /** By run: pupil-minutes that all teams waited. */
  #idles: Float64Array = new Float64Array(0);
  /** By run, team and node. */
  #moments: Float64Array = new Float64Array(0);

  constructor(clock: Clock, rules: Rules = PLAIN, stream = STREAM) {
    this.#clock = clock;
    this.#rules = { ...rules, teams: teamsPlayed(rules.teams) };
    this.#stream = stream;
    this.#size = clock.network.size;
    this.#teams = this.#rules.teams;
    this.#tally = new Tally(this.#size);
    this.#player = new Player(clock, this.#rules, stream, this.#tally);
    this.#keptRuns = Math.floor(MAX_MOMENTS / Math.max(1, this.#size * this.#teams));
  }

  /** Runs played so far. */
  get runs(): number {
    return this.#runs;
  }

  /** Of each run played so far, in the order of the runs: the ends, one for each team, and the pupil-minutes that all teams waited. */
  get outcomes(): { readonly teams: number; readonly ends: Float64Array; readonly idles: Float64Array } {
    const teams = this.#teams;
    return {
      teams,
      ends: this.#ends.subarray(0, this.#runs * teams),
      idles: this.#idles.subarray(0, this.#runs),
    };
  }

  /** The same as `run`, with pauses in which the caller may look for something else to do. */
  *runInSlices(count: number): Generator<undefined, void> {
    const atATime = Math.max(1, Math.floor(NODES_AT_A_TIME / (this.#size * this.#teams + 1)));
    for (let left = count; left > 0; left -= atATime) {
      this.run(Math.min(left, atATime));
      yield undefined;
    }
  }

  /** Plays so many runs more. */
  run(count: number) {
    const player = this.#player;
    const width = this.#size * this.#teams;
    const runs = this.#runs + count;
    this.#ends = grown(this.#ends, runs * this.#teams);
    this.#idles = grown(this.#idles, runs);
    this.#moments = grown(this.#moments, Math.min(runs, this.#keptRuns) * width);
    for (let run = this.#runs; run < runs; run++) {
      const idleBefore = this.#tally.idle;
      player.play(run);
      this.#ends.set(player.ends, run * this.#teams);
      this.#idles[run] = this.#tally.idle - idleBefore;
      if (run < this.#keptRuns) this.#moments.set(player.reached, run * width);
    }
    this.#runs = runs;
  }

  /** Of the runs played so far, at least one. */
  result(): Simulated {
    const teams = this.#teams;
    const runs = this.#runs;
    const ends = this.#ends.slice(0, runs * teams).sort();
    const median = ends[upperMiddle(ends.length)] ?? 0;
    const latest = this.#clock.lesson.minutes + INSTANT;
    const each = runs * teams;
    return {
      runs,
      team: this.#clock.lesson.team,
      ends,
      median,
      p10: ends[nearestRank(10, ends.length)] ?? 0,
      p90: ends[nearestRank(90, ends.length)] ?? 0,
      inTime: ends.reduce((sum, end) => (end <= latest ? sum + 1 : sum), 0) / each,
      reached: this.#spread(),
      idle: this.#tally.idle / each,
      idleWhile: this.#tally.idleWhile.map((minutes) => minutes / each),
      queueing: meanOf(this.#tally.queueing, each),
      checking: meanOf(this.#tally.checking, each),
      profile: this.#tally.profile(each, ends[ends.length - 1] ?? 0),
      typical: this.#typical(median),
      queued: this.#player.queued.map((minutes) => minutes / runs),
      queuedForAdult: this.#player.queuedForAdult / runs,
    };
  }

  #spread(): Spread {
    const size = this.#size;
    const count = Math.min(this.#runs, this.#keptRuns) * this.#teams;
    const spread: Spread = {
      p10: new Float64Array(size),
      median: new Float64Array(size),
      p90: new Float64Array(size),
    };
    // Nodes that stand together in memory are gathered together.
    const gathered = new Float64Array(TOGETHER * count);
    for (let from = 0; from < size; from += TOGETHER) {
      const nodes = Math.min(TOGETHER, size - from);
      for (let i = 0; i < count; i++) {
        for (let at = 0; at < nodes; at++) {
          gathered[at * count + i] = this.#moments[i * size + from + at] ?? NEVER;
        }
      }
      for (let at = 0; at < nodes; at++) {
        const values = gathered.subarray(at * count, (at + 1) * count);
        spread.p10[from + at] = select(values, count, nearestRank(10, count));
        spread.median[from + at] = select(values, count, upperMiddle(count));
        spread.p90[from + at] = select(values, count, nearestRank(90, count));
      }
    }
    return spread;
  }

  /** The run is played once more, by a player of its own that sums up nothing. */
  #typical(median: number): RunLog {
    let nearest = 0;
    for (let i = 1; i < this.#runs * this.#teams; i++) {
      const off = Math.abs((this.#ends[i] ?? 0) - median);
      if (off < Math.abs((this.#ends[nearest] ?? 0) - median)) nearest = i;
    }
    const run = Math.floor(nearest / this.#teams);
    const player = new Player(this.#clock, this.#rules, this.#stream);
    player.play(run);
    return player.log(run, nearest - run * this.#teams);
  }
}

const meanOf = ({ idle, minutes }: Waited, each: number): Waited => ({
  idle: idle.map((sum) => sum / each),
  minutes: minutes.map((sum) => sum / each),
});

function grown(values: Float64Array, length: number): Float64Array {
  if (values.length >= length) return values;
  const longer = new Float64Array(length);
  longer.set(values);
  return longer;
}
