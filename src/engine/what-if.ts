/**
 * The shortest time with other minutes for a few steps, asked many times over.
 * Without rings only what changes is computed again: from the first changed step rightwards, and there only events of
 * which something that they wait for has changed, until nothing is left to look at. Afterwards all is as before.
 * With rings every question is a whole pass (times.ts).
 * Cost: at most a walk over what comes after the changed steps.
 */
import type { Flow } from './flow.ts';
import { latest, startOf, type Times, timesOf } from './times.ts';

export class WhatIf {
  readonly #flow: Flow;
  readonly #finish: Float64Array;
  readonly #minutes: Float64Array;
  readonly #stale: Uint8Array;
  readonly #touched: Int32Array;
  readonly #before: Float64Array;

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
    const last = this.#flow.rings
      ? latest(timesOf(this.#flow, own).finish, this.#flow.prizes)
      : this.#walk(positions);
    for (const at of positions) own[at] = this.#flow.minutes[at] ?? 0;
    return last;
  }

  #walk(positions: readonly number[]): number {
    const { release, next, prizes } = this.#flow;
    const finish = this.#finish;
    const stale = this.#stale;
    const touched = this.#touched;
    let changes = 0;
    let at = this.#flow.count;
    let end = -1;
    for (const position of positions) {
      stale[position] = 1;
      if (position < at) at = position;
      if (position > end) end = position;
    }
    for (; at <= end; at++) {
      if (stale[at] === 0) continue;
      stale[at] = 0;
      const then = startOf(this.#flow, at, finish, release[at] ?? 0) + (this.#minutes[at] ?? 0);
      const was = finish[at] ?? 0;
      if (then === was) continue;
      touched[changes] = at;
      this.#before[changes++] = was;
      finish[at] = then;
      for (let i = next.starts[at] ?? 0; i < (next.starts[at + 1] ?? 0); i++) {
        const waiting = next.items[i] ?? 0;
        stale[waiting] = 1;
        if (waiting > end) end = waiting;
      }
    }
    const last = latest(finish, prizes);
    for (let i = 0; i < changes; i++) finish[touched[i] ?? 0] = this.#before[i] ?? 0;
    return last;
  }
}
