/**
 * What is reached: the least fixed point of the rules for opening and having things.
 * Method: forward chaining over an and/or network with a counter for each event (Dowling and Gallier 1984, 'Linear-time algorithms
 * for testing the satisfiability of propositional Horn formulae'). Nothing is used up, so order does not matter.
 * Cost: linear in nodes and links.
 */
import type { Index } from './measures.ts';
import type { Network } from './network.ts';

export interface Suppositions {
  /** 1 for each event that never comes. An event of a node is its index; a container can still be at hand. */
  readonly never?: Uint8Array;
  /** 1 for each event that comes whatever it waits for. */
  readonly given?: Uint8Array;
}

/** The events that come to pass, each after what made it come. */
export function chainForward(network: Network, { never, given }: Suppositions = {}): Int32Array {
  const { count, all, k, allOf, someOf } = network.events;
  const missing = new Int32Array(count);
  const wanted = k.slice();
  const queue = new Int32Array(count);
  let end = 0;
  for (let event = 0; event < count; event++) {
    missing[event] = (all.starts[event + 1] ?? 0) - (all.starts[event] ?? 0);
    const comes = given?.[event] === 1 || (missing[event] === 0 && wanted[event] === 0);
    if (comes && never?.[event] !== 1) queue[end++] = event;
  }
  for (let at = 0; at < end; at++) {
    const event = queue[at] ?? 0;
    for (let i = allOf.starts[event] ?? 0; i < (allOf.starts[event + 1] ?? 0); i++) {
      const next = allOf.items[i] ?? 0;
      const left = (missing[next] ?? 0) - 1;
      missing[next] = left;
      if (left !== 0 || (wanted[next] ?? 0) > 0) continue;
      if (never?.[next] !== 1 && given?.[next] !== 1) queue[end++] = next;
    }
    for (let i = someOf.starts[event] ?? 0; i < (someOf.starts[event + 1] ?? 0); i++) {
      const next = someOf.items[i] ?? 0;
      const left = (wanted[next] ?? 0) - 1;
      wanted[next] = left;
      if (left !== 0 || missing[next] !== 0) continue;
      if (never?.[next] !== 1 && given?.[next] !== 1) queue[end++] = next;
    }
  }
  return queue.subarray(0, end);
}

/** 1 for each event that comes to pass. */
export function reachedEvents(network: Network, suppositions?: Suppositions): Uint8Array {
  const reached = new Uint8Array(network.events.count);
  const order = chainForward(network, suppositions);
  for (let i = 0; i < order.length; i++) reached[order[i] ?? 0] = 1;
  return reached;
}

/** 1 for each node that is reached. */
export function reach(network: Network, suppositions?: Suppositions): Uint8Array {
  return reachedEvents(network, suppositions).subarray(0, network.size);
}

/** The game has a prize, and every prize is reached: by node, or by event. */
export function isSolvable(network: Network, reached: Uint8Array): boolean {
  return network.prizes.length > 0 && network.prizes.every((prize) => reached[prize] === 1);
}

/** Marks one node, as `Suppositions` want it. */
export function only(network: Network, node: Index): Uint8Array {
  const marks = new Uint8Array(network.size);
  marks[node] = 1;
  return marks;
}
