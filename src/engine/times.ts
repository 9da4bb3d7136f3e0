/**
 * When each reached event starts and finishes, with as many hands as the game can use.
 * An event starts with the latest of its release, of all that it waits for, and of the k-th smallest finish among a choice.
 * Method: without rings one walk in topological order; with rings Knuth's generalisation of Dijkstra's algorithm (1977), which
 * finds, of several solutions, the largest: a ring does not start itself.
 * Cost: linear; with rings times the logarithm of the number of events.
 */
import type { Flow } from './flow.ts';

/** By position. */
export interface Times {
  readonly start: Float64Array;
  readonly finish: Float64Array;
  /** Whatever an event's start rests on has a smaller rank than the event. */
  readonly rank: Int32Array;
}

/** Times with the minutes and releases given, or with those of the game. */
export function timesOf(
  flow: Flow,
  minutes: Float64Array = flow.minutes,
  release: Float64Array = flow.release,
): Times {
  return flow.rings ? settle(flow, minutes, release) : sweep(flow, minutes, release);
}

/** The latest of the finishes at the positions given; 0 for none. */
export function latest(finish: Float64Array, positions: Int32Array): number {
  let last = 0;
  for (let i = 0; i < positions.length; i++) last = Math.max(last, finish[positions[i] ?? 0] ?? 0);
  return last;
}

function sweep(flow: Flow, minutes: Float64Array, release: Float64Array): Times {
  const { count } = flow;
  const start = new Float64Array(count);
  const finish = new Float64Array(count);
  const rank = new Int32Array(count);
  for (let at = 0; at < count; at++) {
    rank[at] = at;
    const begin = startOf(flow, at, finish, release[at] ?? 0);
    start[at] = begin;
    finish[at] = begin + (minutes[at] ?? 0);
  }
  return { start, finish, rank };
}

/** The start of an event from the finishes of what it waits for. */
export function startOf(flow: Flow, at: number, finish: Float64Array, release: number): number {
  const { all, some } = flow;
  let begin = release;
  for (let i = all.starts[at] ?? 0; i < (all.starts[at + 1] ?? 0); i++) {
    const end = finish[all.items[i] ?? 0] ?? 0;
    if (end > begin) begin = end;
  }
  const from = some.starts[at] ?? 0;
  const to = some.starts[at + 1] ?? 0;
  if (to > from) begin = Math.max(begin, smallest(flow.k[at] ?? 0, some.items, from, to, finish));
  return begin;
}

/** The k-th smallest finish, by insertion: choices are short. */
function smallest(k: number, items: Int32Array, from: number, to: number, finish: Float64Array): number {
  if (k === 1) {
    let least = Number.POSITIVE_INFINITY;
    for (let i = from; i < to; i++) least = Math.min(least, finish[items[i] ?? 0] ?? 0);
    return least;
  }
  const best = new Float64Array(k).fill(Number.POSITIVE_INFINITY);
  for (let i = from; i < to; i++) {
    const value = finish[items[i] ?? 0] ?? 0;
    let at = k - 1;
    if (value >= (best[at] ?? 0)) continue;
    while (at > 0 && (best[at - 1] ?? 0) > value) {
      best[at] = best[at - 1] ?? 0;
      at--;
    }
    best[at] = value;
  }
  return best[k - 1] ?? 0;
}

function settle(flow: Flow, minutes: Float64Array, release: Float64Array): Times {
  const { count, all, some, next } = flow;
  const start = new Float64Array(count);
  const finish = new Float64Array(count).fill(Number.POSITIVE_INFINITY);
  const rank = new Int32Array(count);
  /** Of what an event waits for, how many have still to come; a choice is listed apart. */
  const missing = new Int32Array(count);
  const wanted = flow.k.slice();
  const queue = new EarliestFirst(finish);
  const begin = (at: number, minute: number) => {
    const first = Math.max(minute, release[at] ?? 0);
    start[at] = first;
    finish[at] = first + (minutes[at] ?? 0);
    queue.add(at);
  };
  for (let at = 0; at < count; at++) {
    missing[at] = (all.starts[at + 1] ?? 0) - (all.starts[at] ?? 0);
    if (missing[at] === 0 && wanted[at] === 0) begin(at, 0);
  }
  let settled = 0;
  for (let at = queue.take(); at >= 0; at = queue.take()) {
    rank[at] = settled++;
    for (let i = next.starts[at] ?? 0; i < (next.starts[at + 1] ?? 0); i++) {
      const waiting = next.items[i] ?? 0;
      const wasMissing = missing[waiting] ?? 0;
      const wasWanted = wanted[waiting] ?? 0;
      if (wasMissing === 0 && wasWanted === 0) continue;
      if (isAmong(some.items, some.starts[waiting] ?? 0, some.starts[waiting + 1] ?? 0, at)) {
        wanted[waiting] = Math.max(0, wasWanted - 1);
      } else {
        missing[waiting] = wasMissing - 1;
      }
      if (missing[waiting] === 0 && wanted[waiting] === 0) begin(waiting, finish[at] ?? 0);
    }
  }
  return { start, finish, rank };
}

function isAmong(items: Int32Array, from: number, to: number, item: number): boolean {
  for (let i = from; i < to; i++) if (items[i] === item) return true;
  return false;
}

/** A binary heap of positions, smallest finish first, then smallest position. */
class EarliestFirst {
  readonly #heap: number[] = [];
  readonly #finish: Float64Array;

  constructor(finish: Float64Array) {
    this.#finish = finish;
  }

  add(position: number) {
    const heap = this.#heap;
    let at = heap.length;
    while (at > 0) {
      const up = (at - 1) >> 1;
      const other = heap[up] ?? 0;
      if (!this.#isEarlier(position, other)) break;
      heap[at] = other;
      at = up;
    }
    heap[at] = position;
  }

  /** The earliest, taken out; -1 when there is none. */
  take(): number {
    const heap = this.#heap;
    const first = heap[0];
    const last = heap.pop();
    if (first === undefined || last === undefined) return -1;
    const length = heap.length;
    if (length === 0) return first;
    let at = 0;
    for (;;) {
      let down = 2 * at + 1;
      if (down >= length) break;
      if (down + 1 < length && this.#isEarlier(heap[down + 1] ?? 0, heap[down] ?? 0)) down++;
      const other = heap[down] ?? 0;
      if (!this.#isEarlier(other, last)) break;
      heap[at] = other;
      at = down;
    }
    heap[at] = last;
    return first;
  }

  #isEarlier(a: number, b: number): boolean {
    const difference = (this.#finish[a] ?? 0) - (this.#finish[b] ?? 0);
    return difference < 0 || (!(difference > 0) && a < b);
  }
}
