/**
 * For fewest.ts: branch and bound in one part (Land and Doig 1960). Each event is undecided, required (it has to be reached) or given up
 * (it never is). Decisions spread: what is required requires all that it waits for, and all of a choice that has no more than it
 * wants; what waits for something given up is given up, and a choice with fewer left than it wants. Where rings are
 * possible, what can no longer be reached at all is given up too. Cost: a search node is linear in the part.
 */
import type { Part } from './fewest-parts.ts';

const UNDECIDED = 0;
const REQUIRED = 1;
const GIVEN_UP = 2;

export class PartSearch {
  /** The smallest number of steps found, beyond those paid for already. */
  best = Number.POSITIVE_INFINITY;
  searched = 0;
  /** False when the budget ran out before every other way was ruled out. */
  complete = true;

  readonly #part: Part;
  readonly #budget: number;
  readonly #state: Uint8Array;
  /** How many of a choice have not been given up. */
  readonly #left: Int32Array;
  /** Events in the order in which they were decided; a branch is undone by going back along it. */
  readonly #trail: number[] = [];
  #cost = 0;

  constructor(part: Part, budget: number) {
    this.#part = part;
    this.#budget = budget;
    this.#state = new Uint8Array(part.count);
    this.#left = Int32Array.from(
      part.k,
      (_, at) => (part.some.starts[at + 1] ?? 0) - (part.some.starts[at] ?? 0),
    );
    const required = Array.from(part.required.keys()).filter((at) => part.required[at] === 1);
    if (this.#decide(required, REQUIRED)) this.#search();
  }

  #search() {
    if (this.searched >= this.#budget && this.best < Number.POSITIVE_INFINITY) {
      this.complete = false;
      return;
    }
    this.searched++;
    if (this.#part.rings && !this.#giveUpTheUnreachable()) return;
    if (this.#cost >= this.best) return;
    const reached = this.#reachable(true);
    const choice = this.#branch(reached);
    if (choice < 0) {
      this.best = this.#cost;
      return;
    }
    if (this.#cost + 1 >= this.best) return;
    for (const state of [REQUIRED, GIVEN_UP]) {
      const mark = this.#trail.length;
      if (this.#decide([choice], state)) this.#search();
      this.#undo(mark);
    }
  }

  /** Decides these and all that follows from it; false when something would have to be both required and given up. */
  #decide(events: readonly number[], state: number): boolean {
    const first = this.#trail.length;
    for (const event of events) if (!this.#set(event, state)) return false;
    for (let i = first; i < this.#trail.length; i++) {
      const event = this.#trail[i] ?? 0;
      const follows = this.#state[event] === REQUIRED ? this.#require(event) : this.#giveUp(event);
      if (!follows) return false;
    }
    return true;
  }

  #set(event: number, state: number): boolean {
    const now = this.#state[event];
    if (now !== UNDECIDED) return now === state;
    this.#state[event] = state;
    this.#trail.push(event);
    if (state === REQUIRED) {
      this.#cost += this.#part.cost[event] ?? 0;
      return true;
    }
    const { starts, items } = this.#part.someOf;
    for (let i = starts[event] ?? 0; i < (starts[event + 1] ?? 0); i++) {
      const waiting = items[i] ?? 0;
      this.#left[waiting] = (this.#left[waiting] ?? 0) - 1;
    }
    return true;
  }

  #undo(mark: number) {
    while (this.#trail.length > mark) {
      const event = this.#trail.pop() ?? 0;
      const was = this.#state[event];
      this.#state[event] = UNDECIDED;
      if (was === REQUIRED) {
        this.#cost -= this.#part.cost[event] ?? 0;
        continue;
      }
      const { starts, items } = this.#part.someOf;
      for (let i = starts[event] ?? 0; i < (starts[event + 1] ?? 0); i++) {
        const waiting = items[i] ?? 0;
        this.#left[waiting] = (this.#left[waiting] ?? 0) + 1;
      }
    }
  }

  #require(event: number): boolean {
    const { starts, items } = this.#part.all;
    for (let i = starts[event] ?? 0; i < (starts[event + 1] ?? 0); i++) {
      if (!this.#set(items[i] ?? 0, REQUIRED)) return false;
    }
    return this.#requireLast(event);
  }

  /** Of a choice that has no more left than it wants, all are required; one that has fewer fails. */
  #requireLast(event: number): boolean {
    const spare = (this.#left[event] ?? 0) - (this.#part.k[event] ?? 0);
    if (spare !== 0) return spare > 0;
    const { starts, items } = this.#part.some;
    for (let i = starts[event] ?? 0; i < (starts[event + 1] ?? 0); i++) {
      const need = items[i] ?? 0;
      if (this.#state[need] !== GIVEN_UP && !this.#set(need, REQUIRED)) return false;
    }
    return true;
  }

  #giveUp(event: number): boolean {
    const { allOf, someOf, k } = this.#part;
    for (let i = allOf.starts[event] ?? 0; i < (allOf.starts[event + 1] ?? 0); i++) {
      if (!this.#set(allOf.items[i] ?? 0, GIVEN_UP)) return false;
    }
    for (let i = someOf.starts[event] ?? 0; i < (someOf.starts[event + 1] ?? 0); i++) {
      const waiting = someOf.items[i] ?? 0;
      const state = this.#state[waiting];
      if (state === REQUIRED ? !this.#requireLast(waiting) : !this.#keepsEnough(waiting, k)) return false;
    }
    return true;
  }

  #keepsEnough(waiting: number, k: Int32Array): boolean {
    return (this.#left[waiting] ?? 0) >= (k[waiting] ?? 0) || this.#set(waiting, GIVEN_UP);
  }

  #giveUpTheUnreachable(): boolean {
    const reached = this.#reachable(false);
    const lost: number[] = [];
    for (let at = 0; at < reached.length; at++) {
      if (reached[at] === 1 || this.#state[at] === GIVEN_UP) continue;
      if (this.#state[at] === REQUIRED) return false;
      lost.push(at);
    }
    return this.#decide(lost, GIVEN_UP);
  }

  /** 1 for what is reached without what is given up, and, if so asked, without steps that are not required. */
  #reachable(requiredOnly: boolean): Uint8Array {
    const { count, all, some, k, cost, rings } = this.#part;
    const reached = new Uint8Array(count);
    for (let changed = true; changed; changed = changed && rings) {
      changed = false;
      for (let at = 0; at < count; at++) {
        if (reached[at] === 1 || this.#state[at] === GIVEN_UP) continue;
        if (requiredOnly && cost[at] === 1 && this.#state[at] !== REQUIRED) continue;
        let comes = true;
        for (let i = all.starts[at] ?? 0; comes && i < (all.starts[at + 1] ?? 0); i++) {
          comes = reached[all.items[i] ?? 0] === 1;
        }
        let wanted = k[at] ?? 0;
        for (let i = some.starts[at] ?? 0; comes && i < (some.starts[at + 1] ?? 0); i++) {
          wanted -= reached[some.items[i] ?? 0] ?? 0;
        }
        if (!comes || wanted > 0) continue;
        reached[at] = 1;
        changed = true;
      }
    }
    return reached;
  }

  /**
   * The undecided need to branch on: the one that most unmet choices would count; -1 when everything required is reached.
   * When something required is not, such a need exists: else all that it could rest on would be required, and so reached.
   */
  #branch(reached: Uint8Array): number {
    const { count, some, someOf } = this.#part;
    let best = -1;
    let most = 0;
    for (let at = 0; at < count; at++) {
      if (this.#state[at] !== REQUIRED || reached[at] === 1) continue;
      for (let i = some.starts[at] ?? 0; i < (some.starts[at + 1] ?? 0); i++) {
        const need = some.items[i] ?? 0;
        if (this.#state[need] !== UNDECIDED || reached[need] === 1) continue;
        let unmet = 0;
        for (let j = someOf.starts[need] ?? 0; j < (someOf.starts[need + 1] ?? 0); j++) {
          const waiting = someOf.items[j] ?? 0;
          if (this.#state[waiting] === REQUIRED && reached[waiting] !== 1) unmet++;
        }
        if (unmet <= most) continue;
        best = need;
        most = unmet;
      }
    }
    return best;
  }
}
