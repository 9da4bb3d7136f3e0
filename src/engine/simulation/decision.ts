/**
 * Which steps decided when a run ended: from the prize that came last, back through what was waited for last. A step that could be taken up before it
 * was begun waited for pupils: then the step that freed them decided. Of several at one instant one is followed, the first by index.
 * Cost: linear in nodes and links for a run.
 */
import type { Network } from '../network.ts';
import type { Clock } from './clock.ts';
import { INSTANT, type Player } from './play.ts';

export class Decision {
  readonly #network: Network;
  readonly #seen: Uint8Array;
  readonly #path: Int32Array;

  constructor({ network }: Clock) {
    this.#network = network;
    this.#seen = new Uint8Array(network.events.count);
    const { all, some } = network.events;
    this.#path = new Int32Array(all.items.length + some.items.length + 1);
  }

  /** Adds 1 to each step that decided how the last run ended for a team. */
  of(player: Player, team: number, counts: Int32Array) {
    const { size, prizes } = this.#network;
    const from = team * size;
    this.#seen.fill(0);
    let event = -1;
    let latest = -1;
    for (const prize of prizes) {
      const came = player.reached[from + prize] ?? 0;
      if (came <= latest + INSTANT) continue;
      latest = came;
      event = prize;
    }
    while (event >= 0) {
      const step = this.#endedFor(event, player, from);
      if (step < 0) return;
      counts[step] = (counts[step] ?? 0) + 1;
      const begin = player.begin[from + step] ?? 0;
      if (begin <= (player.possible[from + step] ?? 0) + INSTANT) event = this.#laterNeed(step, player, from);
      else event = this.#freedAt(begin, player, from);
    }
  }

  /** The step whose end made this event come, the event itself when it is one: back through what came at the same instant. */
  #endedFor(event: number, player: Player, from: number): number {
    const path = this.#path;
    let length = 1;
    path[0] = event;
    while (length > 0) {
      const next = path[--length] ?? 0;
      if (this.#seen[next] === 1) continue;
      this.#seen[next] = 1;
      if (next < this.#network.size && this.#network.isStep[next] === 1) return next;
      length = this.#addNeeds(next, this.#came(next, player, from), length, player, from);
    }
    return -1;
  }

  /** What a step waited for last before it could be taken up; -1 where that was nothing but the clock. */
  #laterNeed(step: number, player: Player, from: number): number {
    const possible = player.possible[from + step] ?? 0;
    const length = this.#addNeeds(step, possible, 0, player, from);
    return length > 0 ? (this.#path[length - 1] ?? -1) : -1;
  }

  /** Puts what the event needed and what came at that minute on the path, the first by index on top. */
  #addNeeds(event: number, minute: number, length: number, player: Player, from: number): number {
    const { all, some } = this.#network.events;
    let end = length;
    for (const rows of [some, all]) {
      for (let i = (rows.starts[event + 1] ?? 0) - 1; i >= (rows.starts[event] ?? 0); i--) {
        const need = rows.items[i] ?? 0;
        const came = this.#came(need, player, from);
        if (this.#seen[need] !== 1 && Math.abs(came - minute) <= INSTANT) this.#path[end++] = need;
      }
    }
    return end;
  }

  #came(event: number, player: Player, from: number): number {
    const { size, events } = this.#network;
    if (event < size) return player.reached[from + event] ?? 0;
    return player.atHand[from + (events.node[event] ?? 0)] ?? 0;
  }

  #freedAt(minute: number, player: Player, from: number): number {
    for (let step = 0; step < this.#network.size; step++) {
      if (this.#seen[step] !== 1 && Math.abs((player.free[from + step] ?? 0) - minute) <= INSTANT)
        return step;
    }
    return -1;
  }
}
