/**
 * The shortest time with other minutes for a few steps, asked many times over.
 * Only what changes is computed again: from the first changed step rightwards, and there only events (or whole rings) of which
 * something that they wait for has changed, until nothing is left to look at. Afterwards all is as before.
 * Cost: at most a walk over what comes after the changed steps.
 */
import type { Flow } from './flow.ts';
import { latest, settleRing, startOf, type Times } from './times.ts';

export class WhatIf {
  readonly #flow: Flow;
  readonly #finish: Float64Array;
  readonly #minutes: Float64Array;
  readonly #stale: Uint8Array;
  readonly #touched: Int32Array;
  readonly #before: Float64Array;
  #changes = 0;
  /** The last position that is marked. */
  #end = -1;

  constructor(flow: Flow, times: Times) {
    this.#flow = flow;
    this.#finish = times.finish.slice();
    this.#minutes = flow.minutes.slice();
    this.#stale = new Uint8Array(flow.count);
    this.#touched = new Int32Array(flow.count);
    this.#before = new Float64Array(flow.count);
  }

  /** The latest finish over the prizes if each of these positions took that many minutes. */
  shortest(positions: readonly number[], minutes: number): number {
    const own = this.#minutes;
    for (const at of positions) own[at] = minutes;
    const last = this.#walk(positions);
    for (const at of positions) own[at] = this.#flow.minutes[at] ?? 0;
    return last;
  }

  #walk(positions: readonly number[]): number {
    const flow = this.#flow;
    const { release, prizes, ringEnd } = flow;
    const finish = this.#finish;
    const before = this.#before;
    this.#changes = 0;
    this.#end = -1;
    let at = flow.count;
    for (const position of positions) at = Math.min(at, this.#mark(position));
    for (; at <= this.#end; at++) {
      if (this.#stale[at] === 0) continue;
      this.#stale[at] = 0;
      const end = ringEnd[at] ?? at + 1;
      if (end > at + 1) {
        before.set(finish.subarray(at, end), at);
        settleRing(flow, at, this.#minutes, release, finish);
        for (let member = at; member < end; member++) this.#changed(member, at);
        at = end - 1;
        continue;
      }
      before[at] = finish[at] ?? 0;
      finish[at] = startOf(flow, at, finish, release[at] ?? 0) + (this.#minutes[at] ?? 0);
      this.#changed(at, at);
    }
    const last = latest(finish, prizes);
    for (let i = 0; i < this.#changes; i++) {
      const position = this.#touched[i] ?? 0;
      finish[position] = before[position] ?? 0;
    }
    return last;
  }

  /** Marks a position, or the ring that it is in, as to be looked at; gives where that begins. */
  #mark(position: number): number {
    const first = this.#flow.ringStart[position] ?? position;
    this.#stale[first] = 1;
    if (first > this.#end) this.#end = first;
    return first;
  }

  /** If the finish is another now, remembers to restore it and marks what waits for it outside its own ring. */
  #changed(position: number, ring: number) {
    if (this.#finish[position] === this.#before[position]) return;
    this.#touched[this.#changes++] = position;
    const { next, ringStart } = this.#flow;
    for (let i = next.starts[position] ?? 0; i < (next.starts[position + 1] ?? 0); i++) {
      const waiting = next.items[i] ?? 0;
      if ((ringStart[waiting] ?? waiting) !== ring) this.#mark(waiting);
    }
  }
}
