/**
 * Short cuts: what a game loses when a node is reached in another way than by its needs: a lock is guessed, a key is tried, a place is
 * come upon by chance.
 *
 * Let G be the game, n a reached node (a fastener or a place), and K nodes that are given. G' is G with one change: n is reached as soon
 * as what it lies on or is fastened to is there (a fastener's container is at hand) and every node of K is reached; its links no longer
 * count. In G' n takes `minutes`; its `atMinute` stays. Then, with must-do, finish and shortest time as src/engine/measures.ts has them:
 *
 *   at             = max(atMinute(n), its container at hand in G, finish(k) in G for every k of K)
 *   skips          = the steps that are must-do in G, and without which G' is solvable; n is never one
 *   minutesSkipped = the sum of the expected minutes of skips
 *   shortest       = the shortest time of G'; of G where n comes no sooner that way: at + minutes ≥ finish(n)
 *   saved          = shortest time of G − shortest; never below 0
 *   solvedAt       = finish(n) in G when every step of skips is given out no sooner than `at`: when the links would reach it, were what
 *                    the short cut makes needless begun only then
 *
 * Nothing is skipped or saved in a game that is not solvable, or at a node that is not reached.
 *
 * Method: for every must-do step at once, in the bits of words, what falls without it (falls.ts). Until n is reached, G' is G; so in the
 * scenario 'without s' n comes in G' exactly where it comes in G or where its container and K do. Where that is news, it is carried
 * on to what waits for n, and s is skipped when then every prize stands. The shortest time is a question to what-if.ts; only in games
 * with rings is the network patched for it.
 * Cost: once as must-do.ts; for a short cut what comes after n; for solvedAt a walk over the flow.
 */
import { isLonger } from '../compare.ts';
import { countersFor, type Falls, falling, wordsAt } from '../falls.ts';
import { type Flow, flowAsLinked, flowOf } from '../flow.ts';
import type { Index, Measures } from '../measures.ts';
import type { Events, Network } from '../network.ts';
import { Pairs, reversed, rowOf } from '../rows.ts';
import { latest, timesOf } from '../times.ts';
import { WhatIf } from '../what-if.ts';

export interface ShortCut {
  /** Minute of play at which it can be begun; Infinity when never. */
  readonly at: number;
  /** Steps that could not be skipped and now can, ascending. */
  readonly skips: readonly Index[];
  readonly minutesSkipped: number;
  /** Minutes by which the shortest time falls. */
  readonly saved: number;
  readonly shortest: number;
}

/** Asks any number of short cuts of one game. */
export class ShortCuts {
  readonly #network: Network;
  readonly #measures: Measures;
  /** With all needs. Positions are of this flow. */
  readonly #flow: Flow;
  /** Must-do steps; scenario i is without the i-th. */
  readonly #steps: readonly Index[];
  readonly #falls: Falls;
  readonly #scenario: Int32Array;
  readonly #now: Uint32Array;
  readonly #counters: Uint32Array;
  readonly #stale: Uint8Array;
  /** Made when it is first needed, and never where there are rings. */
  #whatIf: WhatIf | undefined;

  constructor(network: Network, measures: Measures) {
    const flow = flowAsLinked(network);
    const steps = Array.from(measures.mustDo.keys()).filter((node) => measures.mustDo[node] === 1);
    const positions = Int32Array.from(steps, (step) => flow.position[step] ?? 0);
    this.#network = network;
    this.#measures = measures;
    this.#flow = flow;
    this.#steps = steps;
    this.#falls = falling(flow, positions);
    this.#scenario = new Int32Array(flow.count).fill(-1);
    for (let i = 0; i < positions.length; i++) this.#scenario[positions[i] ?? 0] = i;
    this.#now = new Uint32Array(this.#falls.words);
    this.#counters = countersFor(flow, this.#falls.words);
    this.#stale = new Uint8Array(flow.count);
  }

  /** `minutes` may be Infinity: then only `at`, `skips` and `minutesSkipped` tell anything. */
  of(node: Index, given: readonly Index[], minutes: number): ShortCut {
    const { shortest, solvable, finish } = this.#measures;
    const at = this.begins(node, given);
    if (!solvable || (this.#flow.position[node] ?? -1) < 0 || at === Number.POSITIVE_INFINITY)
      return { at, skips: [], minutesSkipped: 0, saved: 0, shortest };
    const skips = this.#skips(node, given);
    const minutesSkipped = skips.reduce((sum, step) => sum + (this.#network.minutes[step] ?? 0), 0);
    const sooner = isLonger(finish[node] ?? 0, at + minutes)
      ? Math.min(shortest, this.#shortest(node, given, at, minutes))
      : shortest;
    const saved = isLonger(shortest, sooner) ? shortest - sooner : 0;
    return { at, skips, minutesSkipped, saved, shortest: sooner };
  }

  /** When the links would reach the node, were what the short cut makes needless begun only when it is. */
  solvedAt(node: Index, { skips, at }: ShortCut): number {
    if (skips.length === 0) return this.#measures.finish[node] ?? Number.POSITIVE_INFINITY;
    const flow = this.#flow.rings ? flowOf(this.#network) : this.#flow;
    const release = flow.release.slice();
    for (const step of skips) {
      const hand = this.#network.events.atHand[step] ?? -1;
      const position = flow.position[hand < 0 ? step : hand] ?? 0;
      release[position] = Math.max(release[position] ?? 0, at);
    }
    return timesOf(flow, flow.minutes, release).finish[flow.position[node] ?? 0] ?? Number.POSITIVE_INFINITY;
  }

  /** `at`; Infinity when never. Without anything given: for a fastener, when its container is at hand. */
  begins(node: Index, given: readonly Index[]): number {
    const { events } = this.#network;
    const { finish } = this.#measures;
    let at = events.release[node] ?? 0;
    for (const event of rowOf(events.all, node)) at = Math.max(at, this.#eventFinish(event));
    for (const other of given) at = Math.max(at, finish[other] ?? Number.POSITIVE_INFINITY);
    return at;
  }

  /** When an event of the network comes, in G: a container at hand, for instance. */
  #eventFinish(event: number): number {
    const { events, size } = this.#network;
    if (event < size) return this.#measures.finish[event] ?? Number.POSITIVE_INFINITY;
    // 'At hand' has no minutes of its own, and no measure: it is what its container's start would be without fasteners.
    const { finish } = this.#measures;
    if ((this.#flow.position[event] ?? -1) < 0) return Number.POSITIVE_INFINITY;
    let at = events.release[event] ?? 0;
    for (const before of rowOf(events.all, event)) at = Math.max(at, finish[before] ?? 0);
    const k = events.k[event] ?? 0;
    if (k === 0) return at;
    const needs = Array.from(rowOf(events.some, event), (need) => finish[need] ?? Number.POSITIVE_INFINITY);
    return Math.max(at, needs.sort((a, b) => a - b)[k - 1] ?? Number.POSITIVE_INFINITY);
  }

  #skips(node: Index, given: readonly Index[]): Index[] {
    const { position, ringStart, next } = this.#flow;
    const { stands, words } = this.#falls;
    const own = position[node] ?? 0;
    const fresh = this.#newly(own, node, given);
    if (fresh.every((word) => word === 0)) return [];
    const before = new Map<number, Uint32Array>();
    const write = (at: number, value: Uint32Array) => {
      const base = at * words;
      before.set(at, before.get(at) ?? stands.slice(base, base + words));
      stands.set(value, base);
      for (let i = next.starts[at] ?? 0; i < (next.starts[at + 1] ?? 0); i++) {
        const waiting = next.items[i] ?? 0;
        if (waiting !== own) this.#stale[waiting] = 1;
      }
    };
    const now = this.#now;
    for (let w = 0; w < words; w++) now[w] = (stands[own * words + w] ?? 0) | (fresh[w] ?? 0);
    write(own, now);
    // Bits are only ever added, so where there are rings a few sweeps settle them; elsewhere one does.
    const from = ringStart.length > 0 ? 0 : own + 1;
    for (let again = true; again; ) {
      again = false;
      for (let at = from; at < this.#flow.count; at++) {
        if (this.#stale[at] === 0) continue;
        this.#stale[at] = 0;
        wordsAt(this.#flow, at, stands, now, this.#counters);
        this.#strike(at, now);
        if (isSame(now, stands, at * words)) continue;
        write(at, now);
        again = from === 0;
      }
    }
    const skips: Index[] = [];
    for (let i = 0; i < this.#steps.length; i++) {
      const isFresh = (((fresh[i >>> 5] ?? 0) >>> (i & 31)) & 1) === 1;
      if (isFresh && this.#isWon(i)) skips.push(this.#steps[i] ?? 0);
    }
    for (const [at, value] of before) stands.set(value, at * words);
    return skips;
  }

  /** Every prize stands in this scenario. */
  #isWon(scenario: number): boolean {
    const { prizes } = this.#flow;
    for (let i = 0; i < prizes.length; i++) if (this.#falls.falls(scenario, prizes[i] ?? 0)) return false;
    return true;
  }

  /** The scenarios in which the node falls in G and comes in G'. */
  #newly(own: number, node: Index, given: readonly Index[]): Uint32Array {
    const { position } = this.#flow;
    const { stands, words } = this.#falls;
    const fresh = new Uint32Array(words);
    for (let w = 0; w < words; w++) fresh[w] = ~(stands[own * words + w] ?? 0);
    const mustStand = [...rowOf(this.#network.events.all, node), ...given];
    for (const event of mustStand) {
      const base = (position[event] ?? 0) * words;
      for (let w = 0; w < words; w++) fresh[w] = (fresh[w] ?? 0) & (stands[base + w] ?? 0);
    }
    this.#strike(own, fresh);
    // Bits beyond the last scenario stand for none.
    const spare = this.#steps.length & 31;
    if (words > 0 && spare > 0) fresh[words - 1] = (fresh[words - 1] ?? 0) & ((1 << spare) - 1);
    return fresh;
  }

  /** A step never comes in the scenario without it. */
  #strike(at: number, words: Uint32Array) {
    const scenario = this.#scenario[at] ?? -1;
    if (scenario >= 0) words[scenario >>> 5] = (words[scenario >>> 5] ?? 0) & ~(1 << (scenario & 31));
  }

  #shortest(node: Index, given: readonly Index[], at: number, minutes: number): number {
    const flow = this.#flow;
    if (!flow.rings) {
      this.#whatIf ??= new WhatIf(flow, timesOf(flow));
      // Its start is where it was: so many minutes from there on, fewer than none if need be, end when the short cut does.
      const taken = at + minutes - (this.#measures.start[node] ?? 0);
      return this.#whatIf.shortest([flow.position[node] ?? 0], taken);
    }
    const patched = flowOf(withShortCut(this.#network, node, given, minutes));
    return latest(timesOf(patched).finish, patched.prizes);
  }
}

/** The words are those that stand from `base` on. */
function isSame(words: Uint32Array, stands: Uint32Array, base: number): boolean {
  for (let w = 0; w < words.length; w++) if (words[w] !== stands[base + w]) return false;
  return true;
}

/** The network of G'. */
export function withShortCut(
  network: Network,
  node: Index,
  given: readonly Index[],
  minutes: number,
): Network {
  const { events } = network;
  const { count } = events;
  const all = new Pairs(events.all.items.length + given.length);
  const some = new Pairs(events.some.items.length);
  for (let event = 0; event < count; event++) {
    for (const item of rowOf(events.all, event)) all.add(event, item);
    if (event === node) for (const item of given) all.add(event, item);
    else for (const item of rowOf(events.some, event)) some.add(event, item);
  }
  const k = events.k.slice();
  k[node] = 0;
  const taken = events.minutes.slice();
  taken[node] = minutes;
  const allRows = all.rows(count);
  const someRows = some.rows(count);
  const patched: Events = {
    ...events,
    all: allRows,
    some: someRows,
    k,
    minutes: taken,
    allOf: reversed(allRows, count),
    someOf: reversed(someRows, count),
  };
  return { ...network, events: patched };
}
