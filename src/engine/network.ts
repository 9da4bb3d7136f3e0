/**
 * The game compiled: what every analysis and every worker gets. Plain arrays, no objects of the document, structured-cloneable.
 * What is left out is not in it. Nodes are indices into `ids`, which are sorted by code point.
 *
 * All that the analyses walk is one uniform network of *events*: event i below `size` is 'node i is reached', and each container
 * has one more, 'it is at hand' (its fasteners can be worked, it need not be open). An event waits for every one of its `all`
 * list and for at least `k` of its `some` list; this is the whole meaning of holders, fasteners, links and needs.
 * Cost: linear in nodes and links, plus the sorting of ids.
 */

import { fastenerType } from '../fasteners/index.ts';
import { byCodePoint } from '../game/compare.ts';
import { expectedMinutes, isStep } from '../game/defaults.ts';
import { type Game, KINDS, type Kind, type NodeId } from '../game/model.ts';
import { isLeftOut, parentInUse } from './left-out.ts';
import type { Index } from './measures.ts';
import { Pairs, type Rows, reversed } from './rows.ts';

const KIND_NUMBERS: ReadonlyMap<Kind, number> = new Map(KINDS.map((kind, number) => [kind, number]));
const CONTAINER = KINDS.indexOf('container');
const FASTENER = KINDS.indexOf('fastener');

export interface Network {
  /** Number of nodes. */
  readonly size: number;
  /** Sorted by code point. */
  readonly ids: readonly NodeId[];
  readonly names: readonly string[];
  readonly index: ReadonlyMap<NodeId, Index>;
  /** Positions in KINDS. */
  readonly kinds: Uint8Array;
  /** The holder, or for a fastener the container that it is on; -1 for what is in the pupils' hands. */
  readonly parent: Int32Array;
  /** Sources of the links into a node, by index. */
  readonly needs: Rows;
  /** Targets of the links out of a node, by index. */
  readonly outs: Rows;
  /** What lies in a holder, by index; fasteners are not in it. */
  readonly contents: Rows;
  /** Fasteners of a container, by index. */
  readonly fasteners: Rows;
  /** How many needs must be met; their count for 'all', one more than their count for more than there are. */
  readonly k: Int32Array;
  /** 1 for a fastener that is no latch and to which nothing leads: it is never opened. */
  readonly closed: Uint8Array;
  /** 1 for what pupils spend time on. */
  readonly isStep: Uint8Array;
  /** Expected minutes of a step; 0 of anything else. */
  readonly minutes: Float64Array;
  /** Minute of play at which the teacher gives it out; 0 when not said. */
  readonly atMinute: Float64Array;
  readonly prizes: Int32Array;
  readonly events: Events;
}

/** See above. `atHand` gives the second event of a container, -1 for every other node; `node` the node that an event is of. */
export interface Events {
  readonly count: number;
  readonly node: Int32Array;
  readonly atHand: Int32Array;
  readonly all: Rows;
  readonly some: Rows;
  /** More than there are in `some` when that can never be met. */
  readonly k: Int32Array;
  /** Minutes from the start of an event to its finish. */
  readonly minutes: Float64Array;
  /** An event does not start before this minute. */
  readonly release: Float64Array;
  /** Events that have it in their `all`, and in their `some`. */
  readonly allOf: Rows;
  readonly someOf: Rows;
}

/** Compiles a legal game (as the reader and the edits keep it). */
export function compile(game: Game): Network {
  const ids: NodeId[] = [];
  for (const id of game.nodes.keys()) if (!isLeftOut(game, id)) ids.push(id);
  // Code units order like code points as long as there are no surrogates.
  if (ids.some((id) => /[\uD800-\uDFFF]/.test(id))) ids.sort(byCodePoint);
  else ids.sort();
  const size = ids.length;
  const index = new Map<NodeId, Index>();
  for (let i = 0; i < size; i++) index.set(ids[i] ?? '', i);

  const outs = outsOf(game, index);
  const needs = reversed(outs, size);
  const names: string[] = [];
  const kinds = new Uint8Array(size);
  const parent = new Int32Array(size).fill(-1);
  const steps = new Uint8Array(size);
  const minutes = new Float64Array(size);
  const atMinute = new Float64Array(size);
  const k = new Int32Array(size);
  const closed = new Uint8Array(size);
  const prizes: Index[] = [];
  const contents = new Pairs(size);
  const fasteners = new Pairs(size);
  for (let i = 0; i < size; i++) {
    const node = game.nodes.get(ids[i] ?? '');
    if (node === undefined) continue;
    names.push(node.name);
    kinds[i] = KIND_NUMBERS.get(node.kind) ?? 0;
    const parentId = parentInUse(game, node.id);
    const at = parentId === undefined ? undefined : index.get(parentId);
    if (at !== undefined) {
      parent[i] = at;
      (node.kind === 'fastener' ? fasteners : contents).add(at, i);
    }
    if (isStep(node)) {
      steps[i] = 1;
      minutes[i] = expectedMinutes(node);
    }
    atMinute[i] = node.atMinute ?? 0;
    const count = (needs.starts[i + 1] ?? 0) - (needs.starts[i] ?? 0);
    // More than there are can never be met, however many more; so large numbers fit the array.
    k[i] = node.need === undefined || node.need === 'all' ? count : Math.min(node.need, count + 1);
    if (count === 0 && node.kind === 'fastener' && fastenerType(node.type).opensWith !== 'nothing')
      closed[i] = 1;
    if (node.kind === 'prize') prizes.push(i);
  }
  const base = {
    size,
    ids,
    names,
    index,
    kinds,
    parent,
    needs,
    outs: reversed(needs, size),
    contents: contents.rows(size),
    fasteners: fasteners.rows(size),
    k,
    closed,
    isStep: steps,
    minutes,
    atMinute,
    prizes: Int32Array.from(prizes),
  };
  return { ...base, events: eventsOf(base) };
}

/** Links between used nodes, by source. */
function outsOf(game: Game, index: ReadonlyMap<NodeId, Index>): Rows {
  const pairs = new Pairs(game.links.size);
  for (const link of game.links.values()) {
    const from = index.get(link.from);
    const to = index.get(link.to);
    if (from !== undefined && to !== undefined) pairs.add(from, to);
  }
  return pairs.rows(index.size);
}

function eventsOf(network: Omit<Network, 'events'>): Events {
  const { size, kinds, parent, needs, fasteners } = network;
  const containers = kinds.reduce((sum, kind) => (kind === CONTAINER ? sum + 1 : sum), 0);
  const node = new Int32Array(size + containers);
  const atHand = new Int32Array(size).fill(-1);
  let hands = size;
  for (let i = 0; i < size; i++) {
    node[i] = i;
    if (kinds[i] !== CONTAINER) continue;
    node[hands] = i;
    atHand[i] = hands++;
  }
  const count = node.length;
  const k = new Int32Array(count);
  const minutes = new Float64Array(count);
  const release = new Float64Array(count);
  minutes.set(network.minutes);
  const all = new Pairs(size + containers + fasteners.items.length);
  const some = new Pairs(needs.items.length);
  for (let i = 0; i < size; i++) {
    const hand = atHand[i] ?? -1;
    const waiting = hand < 0 ? i : hand;
    const above = parent[i] ?? -1;
    if (above >= 0) all.add(waiting, kinds[i] === FASTENER ? (atHand[above] ?? above) : above);
    for (let at = needs.starts[i] ?? 0; at < (needs.starts[i + 1] ?? 0); at++) {
      some.add(waiting, needs.items[at] ?? 0);
    }
    k[waiting] = network.closed[i] === 1 ? Math.max(1, network.k[i] ?? 0) : (network.k[i] ?? 0);
    release[waiting] = network.atMinute[i] ?? 0;
    if (hand < 0) continue;
    all.add(i, hand);
    for (let at = fasteners.starts[i] ?? 0; at < (fasteners.starts[i + 1] ?? 0); at++) {
      all.add(i, fasteners.items[at] ?? 0);
    }
  }
  const allRows = all.rows(count);
  const someRows = some.rows(count);
  return {
    count,
    node,
    atHand,
    all: allRows,
    some: someRows,
    k,
    minutes,
    release,
    allOf: reversed(allRows, count),
    someOf: reversed(someRows, count),
  };
}
