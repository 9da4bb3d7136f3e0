/**
 * Earliest proofs: for everything reached, what its earliest start rests on; which steps that takes in all; what can be done side
 * by side; and the reasons for one thing ('opens because … because …').
 * Method: of a choice of k the k needs that finish first count, those of equal finish by name (code point), then
 * id, as in the order of play; what settles later never does, so no proof rests on itself. Cost: linear, plus events times steps / 32 for the sets of steps.
 */
import { byCodePoint } from '../game/compare.ts';
import { isLonger } from './compare.ts';
import { type Flow, flowOf } from './flow.ts';
import type { Index, Reason } from './measures.ts';
import { reachedSteps } from './must-do.ts';
import type { Network } from './network.ts';
import { type Rows, rowOf, rowsOf } from './rows.ts';
import { type Times, timesOf } from './times.ts';

export class EarliestProofs {
  readonly #network: Network;
  readonly #flow: Flow;
  readonly #times: Times;
  /** By position. */
  readonly #grounds: Rows;
  readonly #steps: Int32Array;
  readonly #words: number;
  /** By position, the steps of its proof as bits; an event's own step is not in it. */
  readonly #uses: Uint32Array;

  constructor(network: Network) {
    this.#network = network;
    this.#flow = flowOf(network);
    this.#times = timesOf(this.#flow);
    this.#grounds = groundsOf(network, this.#flow, this.#times);
    this.#steps = reachedSteps(network, this.#flow);
    this.#words = (this.#steps.length + 31) >>> 5;
    this.#uses = this.#stepSets();
  }

  /** Steps in the earliest proof of a node, ascending; not the node itself. Empty for what is not reached. */
  steps(node: Index): Index[] {
    const at = this.#flow.position[node] ?? -1;
    if (at < 0) return [];
    return Array.from(this.#steps).filter((_, number) => this.#hasBit(at, number));
  }

  /** Reached steps of which neither is in the other's earliest proof, ascending. Empty for what is no reached step. */
  sideBySide(step: Index): Index[] {
    const own = this.#steps.indexOf(step);
    if (own < 0) return [];
    const at = this.#flow.position[step] ?? -1;
    return Array.from(this.#steps).filter(
      (other, number) =>
        other !== step && !this.#hasBit(at, number) && !this.#hasBit(this.#flow.position[other] ?? -1, own),
    );
  }

  /** Why a node is reached; undefined when it is not. */
  reason(node: Index): Reason | undefined {
    const at = this.#flow.position[node] ?? -1;
    if (at < 0) return undefined;
    const { events } = this.#network;
    const hand = events.atHand[node] ?? -1;
    return hand < 0
      ? this.#reasonAt(node, [at])
      : this.#reasonAt(node, [this.#flow.position[hand] ?? -1, at]);
  }

  /** Why a container is at hand, open or not; undefined when it is not, and for what is no container. */
  atHandReason(container: Index): Reason | undefined {
    const at = this.#flow.position[this.#network.events.atHand[container] ?? -1] ?? -1;
    return at < 0 ? undefined : this.#reasonAt(container, [at]);
  }

  #reasonAt(node: Index, positions: readonly number[]): Reason {
    const { size, events } = this.#network;
    const because: Index[] = [];
    const last: Index[] = [];
    let atHand = -1;
    const begin = this.#times.start[positions.at(-1) ?? -1] ?? 0;
    for (const position of positions) {
      for (const ground of rowOf(this.#grounds, position)) {
        const event = this.#flow.event[ground] ?? 0;
        const of = events.node[event] ?? 0;
        if (of === node) continue;
        if (event >= size) atHand = of;
        else because.push(of);
        if (!isLonger(begin, this.#times.finish[ground] ?? 0)) last.push(of);
      }
    }
    return { node, because, atHand, last };
  }

  #hasBit(position: number, number: number): boolean {
    const word = this.#uses[position * this.#words + (number >>> 5)] ?? 0;
    return ((word >>> (number & 31)) & 1) === 1;
  }

  #stepSets(): Uint32Array {
    const { count, position } = this.#flow;
    const words = this.#words;
    const uses = new Uint32Array(count * words);
    const numberAt = new Int32Array(count).fill(-1);
    for (const [number, step] of this.#steps.entries()) numberAt[position[step] ?? 0] = number;
    const byRank = new Int32Array(count);
    for (let at = 0; at < count; at++) byRank[this.#times.rank[at] ?? 0] = at;
    for (const at of byRank) {
      const base = at * words;
      for (let i = this.#grounds.starts[at] ?? 0; i < (this.#grounds.starts[at + 1] ?? 0); i++) {
        const ground = this.#grounds.items[i] ?? 0;
        for (let w = 0; w < words; w++) {
          uses[base + w] = (uses[base + w] ?? 0) | (uses[ground * words + w] ?? 0);
        }
        const number = numberAt[ground] ?? -1;
        if (number >= 0) {
          const word = base + (number >>> 5);
          uses[word] = (uses[word] ?? 0) | (1 << (number & 31));
        }
      }
    }
    return uses;
  }
}

/** By position, what an event's earliest start rests on. */
function groundsOf(network: Network, flow: Flow, times: Times): Rows {
  const owners: number[] = [];
  const items: number[] = [];
  for (let at = 0; at < flow.count; at++) {
    const grounds = [...rowOf(flow.all, at), ...earliest(network, flow, times, at)];
    for (const ground of grounds) {
      owners.push(at);
      items.push(ground);
    }
  }
  return rowsOf(flow.count, Int32Array.from(owners), Int32Array.from(items));
}

/** Of a choice the k that finish first. */
function earliest(network: Network, flow: Flow, times: Times, at: number): number[] {
  const k = flow.k[at] ?? 0;
  if (k === 0) return [];
  const finish = (position: number) => times.finish[position] ?? 0;
  const settled = Array.from(rowOf(flow.some, at)).filter(
    (need) => (times.rank[need] ?? 0) < (times.rank[at] ?? 0),
  );
  const limit = settled.map(finish).sort((a, b) => a - b)[k - 1] ?? Number.POSITIVE_INFINITY;
  const sooner = settled.filter((need) => isLonger(limit, finish(need)));
  const equal = settled.filter((need) => !isLonger(limit, finish(need)) && !isLonger(finish(need), limit));
  const node = (position: number) => flow.event[position] ?? 0;
  const name = (position: number) => network.names[node(position)] ?? '';
  equal.sort((a, b) => byCodePoint(name(a), name(b)) || node(a) - node(b));
  return [...sooner, ...equal].slice(0, k);
}
