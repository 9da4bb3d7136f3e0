/**
 * Why things are not reached, walked to the root of the blockage.
 * Method: mend the plain faults (mended.ts). What is reached then fell to one of them: walk back through its proof in the mended
 * game until something has all it waits for except for its own fault. What is still not reached waits in a ring, or on one: the
 * strongly connected components (Tarjan 1972) of who waits for whom among them; a ring is one that would not open even if
 * everything outside it came. Cost: linear, plus a search for a shortest ring in each component.
 */
import type { Blockage, Index } from './measures.ts';
import { withFaultsMended } from './mended.ts';
import type { Network } from './network.ts';
import { chainForward, reachedEvents } from './reach.ts';
import { shortestRing, stronglyConnected } from './rings.ts';
import { rowOf } from './rows.ts';

export class Blockages {
  readonly #network: Network;
  readonly #reached: Uint8Array;
  /** By event, when it comes in the mended game: what made it come has a smaller number. -1 for never. */
  readonly #mendedPlace: Int32Array;
  /** By event not reached even when mended: the ring that it is in or waits for, as events. */
  readonly #ringOf = new Map<number, readonly number[]>();
  readonly #rings: (readonly number[])[] = [];

  constructor(network: Network) {
    this.#network = network;
    this.#reached = reachedEvents(network);
    this.#mendedPlace = new Int32Array(network.events.count).fill(-1);
    for (const [place, event] of chainForward(withFaultsMended(network)).entries()) {
      this.#mendedPlace[event] = place;
    }
    this.#findRings();
  }

  /** The cause for one node, or undefined when it is reached. */
  of(node: Index): Blockage | undefined {
    if (this.#reached[node] === 1) return undefined;
    let event: number | undefined = node;
    while (event !== undefined) {
      const ring = this.#ringOf.get(event);
      if (ring) return this.#ringBlockage(ring);
      const own = this.#faultOf(event);
      if (own) return own;
      const place: number = this.#mendedPlace[event] ?? 0;
      event = this.#waitsFor(event, this.#reached).find((other) => {
        const before = this.#mendedPlace[other] ?? -1;
        return before >= 0 && before < place;
      });
    }
    return undefined;
  }

  /** Every root once: closed fasteners, needs that cannot be met, rings; whether or not anything worth having lies behind. */
  all(): Blockage[] {
    const found: Blockage[] = [];
    for (let node = 0; node < this.#network.size; node++) {
      const own = this.#faultOf(this.#waitingEvent(node));
      if (own) found.push(own);
    }
    return [...found, ...this.#rings.map((ring) => this.#ringBlockage(ring))];
  }

  #waitingEvent(node: Index): number {
    const hand = this.#network.events.atHand[node] ?? -1;
    return hand < 0 ? node : hand;
  }

  /** What is wrong with the event itself, whatever comes before it. */
  #faultOf(event: number): Blockage | undefined {
    const { events, closed } = this.#network;
    const node = events.node[event] ?? 0;
    if (this.#waitingEvent(node) !== event) return undefined;
    if (closed[node] === 1) return { cause: 'closed', node };
    const need = events.k[event] ?? 0;
    const possible = rowOf(events.some, event).length;
    return need > possible ? { cause: 'missing', node, possible } : undefined;
  }

  /** Unreached events that this one waits for, in the order holder, fasteners, needs. */
  #waitsFor(event: number, reached: ArrayLike<number>): number[] {
    const { all, some, k } = this.#network.events;
    const missing = (other: number) => reached[other] !== 1;
    const waits = Array.from(rowOf(all, event)).filter(missing);
    const needs = rowOf(some, event);
    const possible = Math.min(k[event] ?? 0, needs.length);
    const open = Array.from(needs).filter(missing);
    return needs.length - open.length < possible ? [...waits, ...open] : waits;
  }

  #findRings() {
    const { count } = this.#network.events;
    const comes = this.#mendedPlace.map((place) => (place < 0 ? 0 : 1));
    const blocked = Array.from({ length: count }, (_, event) => event).filter((event) => comes[event] === 0);
    const waitsFor = (event: number) => this.#waitsFor(event, comes);
    // Components come after all that they wait for.
    for (const component of stronglyConnected(blocked, waitsFor)) {
      const inRing = component.length > 1 ? this.#stuckByItself(component) : [];
      const ring =
        inRing.length > 0
          ? shortestRing(inRing, waitsFor)
          : component
              .flatMap(waitsFor)
              .map((other) => this.#ringOf.get(other))
              .find((behind) => behind !== undefined);
      if (ring === undefined) continue;
      if (inRing.length > 0) this.#rings.push(ring);
      for (const event of component) this.#ringOf.set(event, ring);
    }
  }

  /** Of these events those that would not come even if everything else did. */
  #stuckByItself(component: readonly number[]): number[] {
    const reached = new Uint8Array(this.#network.events.count).fill(1);
    for (const event of component) reached[event] = 0;
    let stuck = [...component];
    for (let before = -1; before !== stuck.length; ) {
      before = stuck.length;
      stuck = stuck.filter((event) => {
        if (this.#waitsFor(event, reached).length > 0) return true;
        reached[event] = 1;
        return false;
      });
    }
    return stuck;
  }

  /** Events to nodes: a container at hand and open are the same thing to a reader. */
  #ringBlockage(ring: readonly number[]): Blockage {
    const { node } = this.#network.events;
    const nodes = ring.map((event) => node[event] ?? 0);
    return { cause: 'ring', nodes: nodes.filter((one, i) => one !== nodes.at(i - 1) || nodes.length === 1) };
  }
}
