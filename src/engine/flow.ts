/**
 * The reached part of a network, renumbered so that a pass over it is one walk from left to right.
 * Positions follow a topological order of what waits for what, its rings (strongly connected components) kept together:
 * Tarjan 1972, 'Depth-first search and linear graph algorithms'. A need that itself falls without its target can never be what lets
 * the target start, whatever the minutes: when there are rings such needs are dropped first. What rings are left then (two ways in,
 * each leading to the other) are few and short. A choice that is none (as many needed as can be reached) joins what is waited for
 * anyway. Cost: linear; with rings also one pass of falls.ts.
 */
import { falling } from './falls.ts';
import type { Network } from './network.ts';
import { isSolvable, reachedEvents } from './reach.ts';
import { type Rows, rowsOf } from './rows.ts';

export interface Flow {
  /** Reached events; positions run from 0 up to it. */
  readonly count: number;
  /** The event at a position, and the position of an event (-1 when it is not reached). */
  readonly event: Int32Array;
  readonly position: Int32Array;
  /** True when not everything waits only for what stands before it. */
  readonly rings: boolean;
  /** By position, where its ring begins: its own position for what is in none. Empty without rings. */
  readonly ringStart: Int32Array;
  /** By position where a ring begins, one past its last. Empty without rings. */
  readonly ringEnd: Int32Array;
  /** Waited for, by position. */
  readonly all: Rows;
  /** Choices: `k` of these, fewer than there are. Empty where there is no choice. */
  readonly some: Rows;
  readonly k: Int32Array;
  readonly minutes: Float64Array;
  readonly release: Float64Array;
  /** Who waits for a position. */
  readonly next: Rows;
  /** Positions of the prizes that are reached. */
  readonly prizes: Int32Array;
  readonly solvable: boolean;
}

export function flowOf(network: Network): Flow {
  const reached = reachedEvents(network);
  const flow = arrange(network, reached);
  return flow.rings ? arrange(network, reached, uselessNeeds(network, flow)) : flow;
}

/** With every need, also those that can never be what lets their target start: for questions about another game of the same reached events. */
export function flowAsLinked(network: Network): Flow {
  return arrange(network, reachedEvents(network));
}

function arrange(network: Network, reached: Uint8Array, useless?: Uint8Array): Flow {
  const { events, prizes } = network;
  const { order, ringStart, ringEnd } = depthFirst(network, reached, useless);
  const count = order.length;
  const position = new Int32Array(events.count).fill(-1);
  for (let at = 0; at < count; at++) position[order[at] ?? 0] = at;
  const minutes = new Float64Array(count);
  const release = new Float64Array(count);
  const k = new Int32Array(count);
  const edges = events.all.items.length + events.some.items.length;
  const all = new Lists(count, edges);
  const some = new Lists(count, events.some.items.length);
  const owners = new Int32Array(edges);
  const items = new Int32Array(edges);
  let pairs = 0;
  for (let at = 0; at < count; at++) {
    const event = order[at] ?? 0;
    minutes[at] = events.minutes[event] ?? 0;
    release[at] = events.release[event] ?? 0;
    const firstPair = pairs;
    for (let i = events.all.starts[event] ?? 0; i < (events.all.starts[event + 1] ?? 0); i++) {
      items[pairs++] = position[events.all.items[i] ?? 0] ?? 0;
    }
    const firstSome = pairs;
    for (let i = events.some.starts[event] ?? 0; i < (events.some.starts[event + 1] ?? 0); i++) {
      const need = position[events.some.items[i] ?? 0] ?? -1;
      if (need >= 0 && useless?.[i] !== 1) items[pairs++] = need;
    }
    owners.fill(at, firstPair, pairs);
    const wanted = events.k[event] ?? 0;
    const isChoice = wanted < pairs - firstSome;
    if (isChoice) k[at] = wanted;
    all.close(at, items.subarray(firstPair, isChoice ? firstSome : pairs));
    some.close(at, items.subarray(firstSome, isChoice ? pairs : firstSome));
  }
  return {
    count,
    event: order,
    position,
    rings: ringStart.length > 0,
    ringStart,
    ringEnd,
    all: all.rows(),
    some: some.rows(),
    k,
    minutes,
    release,
    next: rowsOf(count, items.subarray(0, pairs), owners.subarray(0, pairs)),
    prizes: prizes.filter((prize) => reached[prize] === 1).map((prize) => position[prize] ?? 0),
    solvable: isSolvable(network, reached),
  };
}

/** Rows filled in the order of their owners. */
class Lists {
  readonly #starts: Int32Array;
  readonly #items: Int32Array;
  #end = 0;

  constructor(count: number, room: number) {
    this.#starts = new Int32Array(count + 1);
    this.#items = new Int32Array(room);
  }

  close(owner: number, items: Int32Array) {
    for (let i = 0; i < items.length; i++) this.#items[this.#end++] = items[i] ?? 0;
    this.#starts[owner + 1] = this.#end;
  }

  rows(): Rows {
    return { starts: this.#starts, items: this.#items.subarray(0, this.#end) };
  }
}

/** Every reached event after all that it waits for, but for those of its own ring, which stand together. */
function depthFirst(
  network: Network,
  reached: Uint8Array,
  useless?: Uint8Array,
): Pick<Flow, 'ringStart' | 'ringEnd'> & { readonly order: Int32Array } {
  const { count, all, some } = network.events;
  /** Numbers from 1 in the order of finding; the smallest that an event leads back to; 0 for not found, `count + 1` for done. */
  const found = new Int32Array(count);
  const lowest = new Int32Array(count);
  const done = count + 1;
  /** Where in its two lists an event stands; `some` counts on from `all`. */
  const cursor = new Int32Array(count);
  const path = new Int32Array(count);
  const pending = new Int32Array(count);
  const order = new Int32Array(count);
  const rings: number[] = [];
  let numbers = 0;
  let waiting = 0;
  let length = 0;
  for (let root = 0; root < count; root++) {
    if (reached[root] !== 1 || found[root] !== 0) continue;
    let depth = 0;
    path[0] = root;
    pending[waiting++] = root;
    lowest[root] = found[root] = ++numbers;
    while (depth >= 0) {
      const event = path[depth] ?? 0;
      const from = all.starts[event] ?? 0;
      const allCount = (all.starts[event + 1] ?? 0) - from;
      const someFrom = (some.starts[event] ?? 0) - allCount;
      const end = (some.starts[event + 1] ?? 0) - someFrom;
      let at = cursor[event] ?? 0;
      let deeper = -1;
      while (at < end && deeper < 0) {
        const isSome = at >= allCount;
        const need = isSome ? (some.items[someFrom + at] ?? 0) : (all.items[from + at] ?? 0);
        const counts = reached[need] === 1 && !(isSome && useless?.[someFrom + at] === 1);
        at++;
        if (!counts) continue;
        const number = found[need] ?? 0;
        if (number === 0) deeper = need;
        else if (number < (lowest[event] ?? 0)) lowest[event] = number;
      }
      cursor[event] = at;
      if (deeper >= 0) {
        path[++depth] = deeper;
        pending[waiting++] = deeper;
        lowest[deeper] = found[deeper] = ++numbers;
        continue;
      }
      depth--;
      const above = path[depth];
      const low = lowest[event] ?? 0;
      if (depth >= 0 && above !== undefined && low < (lowest[above] ?? 0)) lowest[above] = low;
      if (low !== found[event]) continue;
      const begin = length;
      for (let member = -1; member !== event; ) {
        member = pending[--waiting] ?? 0;
        found[member] = done;
        order[length++] = member;
      }
      if (length - begin > 1) rings.push(begin, length);
    }
  }
  return { order: order.slice(0, length), ...ringBounds(rings, length) };
}

/** From the begins and ends of the rings, one after the other. */
function ringBounds(bounds: readonly number[], length: number): Pick<Flow, 'ringStart' | 'ringEnd'> {
  if (bounds.length === 0) return { ringStart: new Int32Array(0), ringEnd: new Int32Array(0) };
  const ringStart = Int32Array.from({ length }, (_, at) => at);
  const ringEnd = Int32Array.from({ length }, (_, at) => at + 1);
  for (let i = 0; i < bounds.length; i += 2) {
    const begin = bounds[i] ?? 0;
    const end = bounds[i + 1] ?? 0;
    ringStart.fill(begin, begin, end);
    ringEnd[begin] = end;
  }
  return { ringStart, ringEnd };
}

/** 1 at each place of `events.some.items` whose need falls when its target never comes. */
function uselessNeeds(network: Network, flow: Flow): Uint8Array {
  const { some } = network.events;
  const useless = new Uint8Array(some.items.length);
  const choosing: number[] = [];
  for (let at = 0; at < flow.count; at++) {
    if ((flow.some.starts[at + 1] ?? 0) > (flow.some.starts[at] ?? 0)) choosing.push(at);
  }
  const fall = falling(flow, Int32Array.from(choosing));
  for (const [scenario, at] of choosing.entries()) {
    const event = flow.event[at] ?? 0;
    for (let i = some.starts[event] ?? 0; i < (some.starts[event + 1] ?? 0); i++) {
      const need = flow.position[some.items[i] ?? 0] ?? -1;
      if (need >= 0 && fall.falls(scenario, need)) useless[i] = 1;
    }
  }
  return useless;
}
