/**
 * Order of play: a number for each reached step, so that a game reads as one walk through it.
 * Method: again and again, among the steps that could be reached from what is already taken, first a fastener or place that the
 * step just taken made possible, else the one with the smallest start, then finish, then name (by code point), then id. Things that
 * take no time come along by themselves. Own rule; forward chaining as in reach.ts.
 * Cost: linear, plus sorting the steps.
 */

import { byCodePoint } from '../game/compare.ts';
import { KINDS } from '../game/model.ts';
import { classesOf } from './compare.ts';
import type { Flow } from './flow.ts';
import { reachedSteps } from './must-do.ts';
import type { Network } from './network.ts';
import type { Times } from './times.ts';

/** Node indices of the reached steps, first to last. */
export function orderOfPlay(network: Network, flow: Flow, times: Times): Int32Array {
  const steps = byTime(network, flow, times);
  const placeOf = new Int32Array(network.size).fill(-1);
  for (let place = 0; place < steps.length; place++) placeOf[steps[place] ?? 0] = place;

  const order = new Int32Array(steps.length);
  const open = new LowestFirst(steps.length);
  const frontier = new Frontier(network, flow);
  const PLACE = KINDS.indexOf('place');
  const FASTENER = KINDS.indexOf('fastener');
  let fresh = frontier.begin();
  for (let taken = 0; taken < steps.length; taken++) {
    let next = -1;
    for (const step of fresh) {
      const place = placeOf[step] ?? 0;
      open.add(place);
      const kind = network.kinds[step];
      const goesFirst = taken > 0 && (kind === PLACE || kind === FASTENER);
      if (goesFirst && (next < 0 || place < next)) next = place;
    }
    if (next < 0) next = open.lowest();
    open.remove(next);
    const step = steps[next] ?? 0;
    order[taken] = step;
    fresh = frontier.take(step);
  }
  return order;
}

function byTime(network: Network, flow: Flow, times: Times): Int32Array {
  const steps = reachedSteps(network, flow);
  const at = (values: Float64Array) =>
    classesOf(Float64Array.from(steps, (step) => values[flow.position[step] ?? 0] ?? 0));
  const start = at(times.start);
  const finish = at(times.finish);
  const places = Int32Array.from(steps, (_, place) => place);
  places.sort(
    (a, b) =>
      (start[a] ?? 0) - (start[b] ?? 0) ||
      (finish[a] ?? 0) - (finish[b] ?? 0) ||
      byCodePoint(network.names[steps[a] ?? 0] ?? '', network.names[steps[b] ?? 0] ?? '') ||
      a - b,
  );
  return places.map((place) => steps[place] ?? 0);
}

/** What has been taken so far, and which steps that makes possible. */
class Frontier {
  readonly #network: Network;
  readonly #reached: Int32Array;
  readonly #missing: Int32Array;
  readonly #wanted: Int32Array;

  constructor(network: Network, flow: Flow) {
    const { count, all, k } = network.events;
    this.#network = network;
    this.#reached = flow.position;
    this.#wanted = k.slice();
    this.#missing = new Int32Array(count);
    for (let event = 0; event < count; event++) {
      this.#missing[event] = (all.starts[event + 1] ?? 0) - (all.starts[event] ?? 0);
    }
  }

  /** Steps that are possible before anything is taken. */
  begin(): number[] {
    const waitless: number[] = [];
    for (let event = 0; event < this.#missing.length; event++) {
      if (this.#missing[event] === 0 && this.#wanted[event] === 0) waitless.push(event);
    }
    return this.#spread(waitless);
  }

  /** Steps that this one makes possible. */
  take(step: number): number[] {
    return this.#spread(this.#follow(step));
  }

  /** Of the events that have become possible, the steps; all else is taken at once, and what that makes possible is added. */
  #spread(possible: number[]): number[] {
    const { size, isStep } = this.#network;
    const steps: number[] = [];
    for (const event of possible) {
      if ((this.#reached[event] ?? -1) < 0) continue;
      if (event < size && isStep[event] === 1) steps.push(event);
      else possible.push(...this.#follow(event));
    }
    return steps;
  }

  #follow(event: number): number[] {
    const { allOf, someOf } = this.#network.events;
    const possible: number[] = [];
    for (let i = allOf.starts[event] ?? 0; i < (allOf.starts[event + 1] ?? 0); i++) {
      const next = allOf.items[i] ?? 0;
      const left = (this.#missing[next] ?? 0) - 1;
      this.#missing[next] = left;
      if (left === 0 && (this.#wanted[next] ?? 0) <= 0) possible.push(next);
    }
    for (let i = someOf.starts[event] ?? 0; i < (someOf.starts[event + 1] ?? 0); i++) {
      const next = someOf.items[i] ?? 0;
      const left = (this.#wanted[next] ?? 0) - 1;
      this.#wanted[next] = left;
      if (left === 0 && this.#missing[next] === 0) possible.push(next);
    }
    return possible;
  }
}

/** A set of small whole numbers that gives its lowest: two levels of bits, so that an empty stretch is passed 1,024 at a time. */
class LowestFirst {
  readonly #words: Uint32Array;
  readonly #groups: Uint32Array;

  constructor(room: number) {
    this.#words = new Uint32Array((room >>> 5) + 1);
    this.#groups = new Uint32Array((room >>> 10) + 1);
  }

  add(value: number) {
    const word = value >>> 5;
    this.#words[word] = (this.#words[word] ?? 0) | (1 << (value & 31));
    this.#groups[word >>> 5] = (this.#groups[word >>> 5] ?? 0) | (1 << (word & 31));
  }

  remove(value: number) {
    const word = value >>> 5;
    const left = (this.#words[word] ?? 0) & ~(1 << (value & 31));
    this.#words[word] = left;
    if (left === 0) this.#groups[word >>> 5] = (this.#groups[word >>> 5] ?? 0) & ~(1 << (word & 31));
  }

  /** The lowest; -1 when there is none. */
  lowest(): number {
    for (let group = 0; group < this.#groups.length; group++) {
      const words = this.#groups[group] ?? 0;
      if (words === 0) continue;
      const word = (group << 5) + lowestBit(words);
      return (word << 5) + lowestBit(this.#words[word] ?? 0);
    }
    return -1;
  }
}

function lowestBit(word: number): number {
  return 31 - Math.clz32(word & -word);
}
