/**
 * A game as the player walks it: counters and lists over the events of the network, made once for a batch.
 * An event that needs all of its links has them among what it waits for; only true choices keep a second counter.
 */
import { KINDS } from '../../game/model.ts';
import { Pairs, type Rows } from '../rows.ts';
import type { Clock } from './clock.ts';
import type { Choosing } from './rules.ts';

const FASTENER = KINDS.indexOf('fastener');
const CLUE = KINDS.indexOf('clue');
const TOOL = KINDS.indexOf('tool');
const CONTAINER = KINDS.indexOf('container');

export interface Plan {
  /** What each event still waits for at the start: events that it needs all of, its release, and its choice, each counted once. */
  readonly waits: Int32Array;
  /** How many of its choice an event wants. */
  readonly wants: Int32Array;
  /** Events that wait for an event, and that have it in their choice. */
  readonly next: Rows;
  readonly choices: Rows;
  /** Events that nothing keeps back. */
  readonly ready: Int32Array;
  /** Events that a minute of play releases, in that order. */
  readonly released: Int32Array;
  /** By node: 1 for a prize. */
  readonly isPrize: Uint8Array;
  /** By node: its followers; -1 where it has none, and is therefore never passed over. */
  readonly followers: Int32Array;
  /** The steps that a node follows. */
  readonly follows: Rows;
}

export function planOf({ network }: Clock): Plan {
  const { size, events, prizes, isStep } = network;
  const waits = new Int32Array(events.count);
  const wants = new Int32Array(events.count);
  const next = new Pairs(events.all.items.length + events.some.items.length);
  const choices = new Pairs(events.some.items.length);
  const ready: number[] = [];
  const released: number[] = [];
  for (let event = 0; event < events.count; event++) {
    const allFrom = events.all.starts[event] ?? 0;
    const allTo = events.all.starts[event + 1] ?? 0;
    const from = events.some.starts[event] ?? 0;
    const to = events.some.starts[event + 1] ?? 0;
    const wanted = events.k[event] ?? 0;
    for (let i = allFrom; i < allTo; i++) next.add(events.all.items[i] ?? 0, event);
    let wait = allTo - allFrom;
    if (wanted === to - from) {
      for (let i = from; i < to; i++) next.add(events.some.items[i] ?? 0, event);
      wait += wanted;
    } else if (wanted > 0) {
      for (let i = from; i < to; i++) choices.add(events.some.items[i] ?? 0, event);
      wants[event] = wanted;
      wait++;
    }
    if ((events.release[event] ?? 0) > 0) {
      released.push(event);
      wait++;
    }
    waits[event] = wait;
    if (wait === 0) ready.push(event);
  }
  released.sort((a, b) => (events.release[a] ?? 0) - (events.release[b] ?? 0));
  const isPrize = new Uint8Array(size);
  for (const prize of prizes) isPrize[prize] = 1;

  const followers = new Int32Array(size);
  const follows = new Pairs(network.outs.items.length + network.contents.items.length + size);
  for (let node = 0; node < size; node++) {
    if (isStep[node] !== 1) continue;
    const add = (follower: number) => {
      follows.add(follower, node);
      followers[node] = (followers[node] ?? 0) + 1;
    };
    for (const rows of [network.outs, network.contents]) {
      for (let i = rows.starts[node] ?? 0; i < (rows.starts[node + 1] ?? 0); i++) add(rows.items[i] ?? 0);
    }
    if (network.kinds[node] === FASTENER) add(network.parent[node] ?? 0);
    if (followers[node] === 0) followers[node] = -1;
  }
  return {
    waits,
    wants,
    next: next.rows(events.count),
    choices: choices.rows(events.count),
    ready: Int32Array.from(ready),
    released: Int32Array.from(released),
    isPrize,
    followers,
    follows: follows.rows(size),
  };
}

/** By node: of two open steps the one with the smaller class is taken first, and within a class any. */
export function classesOf({ network }: Clock, choosing: Choosing): Int32Array {
  const classes = new Int32Array(network.size);
  if (choosing === 'locksFirst') {
    for (let node = 0; node < network.size; node++) classes[node] = network.kinds[node] === FASTENER ? 0 : 1;
  } else if (typeof choosing !== 'string') {
    classes.fill(choosing.length);
    for (let i = choosing.length - 1; i >= 0; i--) classes[choosing[i] ?? 0] = i;
  }
  return classes;
}

/**
 * The shared things that each step uses: itself; the container that a fastener is on; tools that link to it, or to clues and tools on the way to it
 * that take no time. A thing of which there are as many as teams is not waited for.
 */
export function usesOf({ network, shared, lesson }: Clock): Rows {
  const { size, kinds, isStep, fasteners, outs } = network;
  const owners: number[] = [];
  const items: number[] = [];
  const seen = new Int32Array(size).fill(-1);
  for (let thing = 0; thing < size; thing++) {
    const count = shared[thing] ?? 0;
    if (count === 0 || count >= lesson.teams) continue;
    const use = (step: number) => {
      owners.push(step);
      items.push(thing);
    };
    if (isStep[thing] === 1) use(thing);
    if (kinds[thing] === CONTAINER) {
      for (let i = fasteners.starts[thing] ?? 0; i < (fasteners.starts[thing + 1] ?? 0); i++) {
        const fastener = fasteners.items[i] ?? 0;
        if (isStep[fastener] === 1) use(fastener);
      }
    }
    if (kinds[thing] !== TOOL) continue;
    const walk = [thing];
    seen[thing] = thing;
    for (let from = walk.pop(); from !== undefined; from = walk.pop()) {
      for (let i = outs.starts[from] ?? 0; i < (outs.starts[from + 1] ?? 0); i++) {
        const to = outs.items[i] ?? 0;
        if (seen[to] === thing) continue;
        seen[to] = thing;
        if (isStep[to] === 1) use(to);
        else if (kinds[to] === CLUE || kinds[to] === TOOL) walk.push(to);
      }
    }
  }
  const rows = new Pairs(owners.length);
  for (const [i, owner] of owners.entries()) rows.add(owner, items[i] ?? 0);
  return rows.rows(size);
}
