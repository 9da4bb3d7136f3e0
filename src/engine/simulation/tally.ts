/**
 * What is summed up while runs are played: waiting, and the profile. The profile is sampled at whole multiples of a step that doubles whenever a run
 * outlasts the grid; samples of the coarser grid are among those of the finer, so that the order and number of runs make no difference.
 */
import type { Profile, Waited } from './model.ts';

const POINTS = 240;
const FINEST = 2 ** -10;

const noWaits = (size: number): Waited => ({ idle: new Float64Array(size), minutes: new Float64Array(size) });

export class Tally {
  /** Pupil-minutes of all teams and runs. */
  idle = 0;
  readonly idleWhile: Float64Array;
  readonly queueing: Waited;
  readonly checking: Waited;
  #step = FINEST;
  /** Changes from the sample before, in whole numbers, which add up exactly. */
  readonly #open = new Float64Array(POINTS);
  readonly #busy = new Float64Array(POINTS);
  readonly #idle = new Float64Array(POINTS);

  constructor(size: number) {
    this.idleWhile = new Float64Array(size);
    this.queueing = noWaits(size);
    this.checking = noWaits(size);
  }

  /** From this minute on one team has so many more open steps, busy and idle pupils. */
  change(minute: number, open: number, busy: number, idle: number) {
    let at = Math.ceil(minute / this.#step);
    while (at >= POINTS) {
      this.#coarsen();
      at = Math.ceil(minute / this.#step);
    }
    this.#open[at] = (this.#open[at] ?? 0) + open;
    this.#busy[at] = (this.#busy[at] ?? 0) + busy;
    this.#idle[at] = (this.#idle[at] ?? 0) + idle;
  }

  #coarsen() {
    this.#step *= 2;
    for (const changes of [this.#open, this.#busy, this.#idle]) {
      for (let at = 1; at < POINTS; at++) {
        const change = changes[at] ?? 0;
        changes[at] = 0;
        const to = (at + 1) >> 1;
        changes[to] = (changes[to] ?? 0) + change;
      }
    }
  }

  /** Means over so many runs, up to the first sample that is not before the longest end. */
  profile(runs: number, longest: number): Profile {
    const count = Math.min(POINTS, Math.ceil(longest / this.#step) + 1);
    const summed = (changes: Float64Array): Float64Array => {
      let sum = 0;
      return Float64Array.from({ length: count }, (_, at) => {
        sum += changes[at] ?? 0;
        return sum / runs;
      });
    };
    return {
      minutes: Float64Array.from({ length: count }, (_, at) => at * this.#step),
      open: summed(this.#open),
      busy: summed(this.#busy),
      idle: summed(this.#idle),
    };
  }
}
