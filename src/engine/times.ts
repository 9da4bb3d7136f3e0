/**
 * When each reached event starts and finishes, with as many hands as the game can use.
 * An event starts with the latest of its release, of all that it waits for, and of the k-th smallest finish among a choice.
 * Method: one walk in topological order; inside a ring Knuth's generalisation of Dijkstra's algorithm (1977), which finds, of several
 * solutions, the largest: a ring does not start itself. Cost: linear; in a ring its length squared, and rings are short.
 */
import type { Flow } from './flow.ts';

/** By position. */
export interface Times {
  readonly start: Float64Array;
  readonly finish: Float64Array;
  /** Whatever an event's start rests on has a smaller rank than the event. */
  readonly rank: Int32Array;
}

/** The latest of the finishes at the positions given; 0 for none. */
export function latest(finish: Float64Array, positions: Int32Array): number {
  let last = 0;
  for (let i = 0; i < positions.length; i++) last = Math.max(last, finish[positions[i] ?? 0] ?? 0);
  return last;
}

/** Times with the minutes and releases given, or with those of the game. */
export function timesOf(
  flow: Flow,
  minutes: Float64Array = flow.minutes,
  release: Float64Array = flow.release,
): Times {
  const { count, ringEnd } = flow;
  const start = new Float64Array(count);
  const finish = new Float64Array(count);
  const rank = new Int32Array(count);
  for (let at = 0; at < count; at++) {
    const end = ringEnd[at] ?? at + 1;
    if (end > at + 1) {
      settleRing(flow, at, minutes, release, finish, (event, place) => {
        rank[event] = place;
        start[event] = startOf(flow, event, finish, release[event] ?? 0);
      });
      at = end - 1;
      continue;
    }
    rank[at] = at;
    const begin = startOf(flow, at, finish, release[at] ?? 0);
    start[at] = begin;
    finish[at] = begin + (minutes[at] ?? 0);
  }
  return { start, finish, rank };
}

/**
 * The finishes in the ring that begins at a position, from those before it: again and again the earliest of what could finish
 * by what has. `settled` hears of each with its rank, before anything that rests on it.
 */
export function settleRing(
  flow: Flow,
  begin: number,
  minutes: Float64Array,
  release: Float64Array,
  finish: Float64Array,
  settled: (event: number, rank: number) => void = () => {},
) {
  const { next, ringStart, ringEnd } = flow;
  const end = ringEnd[begin] ?? begin;
  finish.fill(Number.POSITIVE_INFINITY, begin, end);
  const possible = new Float64Array(end - begin);
  const isSettled = new Uint8Array(end - begin);
  const look = (event: number) => {
    possible[event - begin] = startOf(flow, event, finish, release[event] ?? 0) + (minutes[event] ?? 0);
  };
  for (let event = begin; event < end; event++) look(event);
  for (let rank = begin; rank < end; rank++) {
    let earliest = -1;
    for (let i = 0; i < possible.length; i++) {
      if (isSettled[i] === 1) continue;
      if (earliest < 0 || (possible[i] ?? 0) < (possible[earliest] ?? 0)) earliest = i;
    }
    const event = begin + earliest;
    isSettled[earliest] = 1;
    settled(event, rank);
    finish[event] = possible[earliest] ?? 0;
    for (let i = next.starts[event] ?? 0; i < (next.starts[event + 1] ?? 0); i++) {
      const waiting = next.items[i] ?? 0;
      if (ringStart[waiting] === begin && isSettled[waiting - begin] !== 1) look(waiting);
    }
  }
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
