/**
 * The rule of level.ts asked for many nodes of an unsolvable game at once: which unreached prizes hang on each of them.
 * A prize hangs on a node when it is reached once the node is given, everything else as it is; or when, with every other fault
 * mended and rings trusted to open (largest fixed point), it is not reached because the node is not.
 * Method: 32 nodes in the bits of a word, as in the engine's falls.ts, here on all events and from a worklist, since most of a
 * game does not change: the first question from what is reached upwards, the second from everything downwards.
 * Cost: what changes, times its needs, times nodes / 32.
 */
import type { Index } from '../engine/measures.ts';
import { withFaultsMended } from '../engine/mended.ts';
import type { Network } from '../engine/network.ts';

/** For each of the nodes, which must differ, the unreached prizes that hang on it. */
export function prizesOn(network: Network, reached: Uint8Array, nodes: readonly Index[]): Index[][] {
  const prizes = Array.from(network.prizes).filter((prize) => reached[prize] !== 1);
  if (prizes.length === 0) return nodes.map(() => []);
  const given = new Scenarios(network, nodes, true);
  const missing = new Scenarios(withFaultsMended(network), nodes, false);
  return nodes.map((_, scenario) =>
    prizes.filter((prize) => given.holds(scenario, prize) || !missing.holds(scenario, prize)),
  );
}

class Scenarios {
  readonly #network: Network;
  readonly #words: number;
  /** By event its words; a bit is set where it comes. */
  readonly #comes: Uint32Array;
  /** The scenario in which an event is given or missing; -1 for most. */
  readonly #own: Int32Array;
  readonly #isGiven: boolean;
  readonly #nodes: readonly Index[];

  constructor(network: Network, nodes: readonly Index[], isGiven: boolean) {
    const { count } = network.events;
    this.#network = network;
    this.#nodes = nodes;
    this.#isGiven = isGiven;
    this.#words = (nodes.length + 31) >>> 5;
    this.#comes = new Uint32Array(count * this.#words);
    if (!isGiven) this.#comes.fill(0xffffffff);
    this.#own = new Int32Array(count).fill(-1);
    for (const [scenario, node] of nodes.entries()) this.#own[node] = scenario;
    this.#settle();
  }

  holds(scenario: number, event: number): boolean {
    const word = this.#comes[event * this.#words + (scenario >>> 5)] ?? 0;
    return ((word >>> (scenario & 31)) & 1) === 1;
  }

  #settle() {
    const { count, allOf, someOf } = this.#network.events;
    const waiting = new Uint8Array(count);
    const queue: number[] = [];
    const add = (event: number) => {
      if (waiting[event] === 1) return;
      waiting[event] = 1;
      queue.push(event);
    };
    if (this.#isGiven) for (let event = 0; event < count; event++) add(event);
    else for (const node of this.#nodes) add(node);
    for (let at = 0; at < queue.length; at++) {
      const event = queue[at] ?? 0;
      waiting[event] = 0;
      if (!this.#update(event)) continue;
      for (let i = allOf.starts[event] ?? 0; i < (allOf.starts[event + 1] ?? 0); i++)
        add(allOf.items[i] ?? 0);
      for (let i = someOf.starts[event] ?? 0; i < (someOf.starts[event + 1] ?? 0); i++)
        add(someOf.items[i] ?? 0);
    }
  }

  /** True when the event comes in other scenarios than before. */
  #update(event: number): boolean {
    const words = this.#words;
    let isChanged = false;
    for (let w = 0; w < words; w++) {
      const own = this.#own[event] ?? -1;
      const bit = own >>> 5 === w ? 1 << (own & 31) : 0;
      const met = this.#metIn(event, w);
      const now = (this.#isGiven ? met | bit : met & ~bit) >>> 0;
      const place = event * words + w;
      if (this.#comes[place] === now) continue;
      this.#comes[place] = now;
      isChanged = true;
    }
    return isChanged;
  }

  /** The scenarios of one word in which all that the event waits for comes. */
  #metIn(event: number, w: number): number {
    const { all, some, k } = this.#network.events;
    const words = this.#words;
    let met = 0xffffffff;
    for (let i = all.starts[event] ?? 0; i < (all.starts[event + 1] ?? 0); i++) {
      met &= this.#comes[(all.items[i] ?? 0) * words + w] ?? 0;
    }
    const wanted = k[event] ?? 0;
    const from = some.starts[event] ?? 0;
    const to = some.starts[event + 1] ?? 0;
    if (wanted > to - from) return 0;
    if (wanted === to - from) {
      for (let i = from; i < to; i++) met &= this.#comes[(some.items[i] ?? 0) * words + w] ?? 0;
      return met;
    }
    // Word j has a bit where at least j of the needs seen so far come.
    const atLeast = [0xffffffff, ...new Array<number>(wanted).fill(0)];
    for (let i = from; i < to; i++) {
      const comes = this.#comes[(some.items[i] ?? 0) * words + w] ?? 0;
      for (let j = wanted; j >= 1; j--) atLeast[j] = (atLeast[j] ?? 0) | ((atLeast[j - 1] ?? 0) & comes);
    }
    return met & (atLeast[wanted] ?? 0);
  }
}
