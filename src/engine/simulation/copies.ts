/** Copies of shared things: who has them, and which teams wait for one, in the order in which they came. */
import { KINDS } from '../../game/model.ts';
import type { Clock } from './clock.ts';
import type { Away } from './model.ts';
import { usesOf } from './plan.ts';

const NOT_HAD = 0;
const HAS = 1;
const HAD = 2;

const TOOL = KINDS.indexOf('tool');

/** A team that has a copy uses it for as many of its steps as it likes. A tool that a team has not found yet it does without. */
export class Copies {
  /** Minutes that teams waited while all copies of a thing were taken, over all runs. */
  readonly queued: Float64Array;
  /** Steps of teams, as `team * size + step`, that wait. */
  readonly waiting: Int32Array;
  length = 0;
  readonly #size: number;
  readonly #starts: Int32Array;
  readonly #things: Int32Array;
  readonly #isTool: Uint8Array;
  readonly #shared: Int32Array;
  readonly #reached: Float64Array;
  readonly #left: Int32Array;
  /** By team and thing: for how many steps the team has it now. */
  readonly #held: Int32Array;
  /** By team and use: NOT_HAD, or HAS while it has a copy for that, HAD after it. */
  readonly #taken: Uint8Array;

  /** `reached` is the player's, by team and node. */
  constructor(clock: Clock, teams: number, reached: Float64Array) {
    const { size, kinds } = clock.network;
    const uses = usesOf(clock);
    this.#size = size;
    this.#starts = uses.starts;
    this.#things = uses.items;
    this.#shared = clock.shared;
    this.#reached = reached;
    this.#isTool = kinds.map((kind) => (kind === TOOL ? 1 : 0));
    this.#left = new Int32Array(size);
    this.#held = new Int32Array(teams * size);
    this.#taken = new Uint8Array(teams * uses.items.length);
    this.queued = new Float64Array(size);
    this.waiting = new Int32Array(teams * size);
  }

  clear() {
    this.length = 0;
    this.#left.set(this.#shared);
    this.#held.fill(0);
    this.#taken.fill(NOT_HAD);
  }

  /** A copy of all that the step uses is free, or the team has it already. */
  canTake(team: number, step: number): boolean {
    for (let i = this.#starts[step] ?? 0; i < (this.#starts[step + 1] ?? 0); i++) {
      if (this.#isMissing(team, this.#things[i] ?? 0)) return false;
    }
    return true;
  }

  #isMissing(team: number, thing: number): boolean {
    const slot = team * this.#size + thing;
    if ((this.#left[thing] ?? 0) > 0 || (this.#held[slot] ?? 0) > 0) return false;
    return this.#isTool[thing] !== 1 || this.#reached[slot] !== Number.POSITIVE_INFINITY;
  }

  take(team: number, step: number) {
    for (let i = this.#starts[step] ?? 0; i < (this.#starts[step + 1] ?? 0); i++) {
      const thing = this.#things[i] ?? 0;
      const slot = team * this.#size + thing;
      if (this.#isTool[thing] === 1 && this.#reached[slot] === Number.POSITIVE_INFINITY) continue;
      if (this.#held[slot] === 0) this.#left[thing] = (this.#left[thing] ?? 0) - 1;
      this.#held[slot] = (this.#held[slot] ?? 0) + 1;
      this.#taken[team * this.#things.length + i] = HAS;
    }
  }

  giveBack(team: number, step: number) {
    for (let i = this.#starts[step] ?? 0; i < (this.#starts[step + 1] ?? 0); i++) {
      const use = team * this.#things.length + i;
      if (this.#taken[use] !== HAS) continue;
      this.#taken[use] = HAD;
      const thing = this.#things[i] ?? 0;
      const slot = team * this.#size + thing;
      this.#held[slot] = (this.#held[slot] ?? 0) - 1;
      if (this.#held[slot] === 0) this.#left[thing] = (this.#left[thing] ?? 0) + 1;
    }
  }

  /**
   * When, in the run that has been played, the other teams had every copy: by thing, in the order of time.
   * @param begin by team and step, when it was begun
   * @param until the same for when it gave its copies back
   */
  awayFrom(team: number, begin: Float64Array, until: (slot: number) => number): Away[] {
    const changes = new Map<number, Change[]>();
    const teams = begin.length / this.#size;
    for (let other = 0; other < teams; other++) {
      if (other === team) continue;
      for (let step = 0; step < this.#size; step++) {
        const slot = other * this.#size + step;
        for (let i = this.#starts[step] ?? 0; i < (this.#starts[step + 1] ?? 0); i++) {
          if (this.#taken[other * this.#things.length + i] === NOT_HAD) continue;
          const thing = this.#things[i] ?? 0;
          const list = changes.get(thing) ?? [];
          changes.set(thing, list);
          list.push(
            { team: other, at: begin[slot] ?? 0, more: 1 },
            { team: other, at: until(slot), more: -1 },
          );
        }
      }
    }
    return [...changes].flatMap(([thing, list]) => allTaken(thing, list, this.#shared[thing] ?? 0));
  }

  /** So many minutes go by with those waiting that still wait, by `isWaiting`. */
  elapse(minutes: number, isWaiting: Int32Array) {
    for (let at = 0; at < this.length; at++) {
      const slot = this.waiting[at] ?? 0;
      if (isWaiting[slot] !== 1) continue;
      const team = Math.floor(slot / this.#size);
      const step = slot - team * this.#size;
      for (let i = this.#starts[step] ?? 0; i < (this.#starts[step + 1] ?? 0); i++) {
        const thing = this.#things[i] ?? 0;
        if (this.#isMissing(team, thing)) this.queued[thing] = (this.queued[thing] ?? 0) + minutes;
      }
    }
  }
}

/** From one minute on a team has a thing for one step more, or less. */
interface Change {
  readonly team: number;
  readonly at: number;
  readonly more: 1 | -1;
}

/** What is given back and taken up again at one instant is never there. */
function allTaken(thing: number, changes: readonly Change[], copies: number): Away[] {
  const sorted = changes.toSorted((a, b) => a.at - b.at);
  const held = new Map<number, number>();
  const away: Away[] = [];
  let from: number | undefined;
  for (const [i, { team, at, more }] of sorted.entries()) {
    const steps = (held.get(team) ?? 0) + more;
    if (steps === 0) held.delete(team);
    else held.set(team, steps);
    if (sorted[i + 1]?.at === at) continue;
    if (held.size >= copies) from ??= at;
    else if (from !== undefined) {
      away.push({ thing, from, to: at });
      from = undefined;
    }
  }
  return away;
}
