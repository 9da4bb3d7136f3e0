/** Things of one sort given to the nodes that need them: pins first, then the assignment of least cost (costs.ts). */
import type { NodeId } from '../../game/model.ts';
import { assign } from '../assignment.ts';
import type { ItemId, KitItem } from '../model.ts';
import { CHANGE, KEYS_ALIKE, LATER, MIXED, NEVER, SHORT } from './costs.ts';
import { groupOf, type Homes, settleHomes } from './homes.ts';
import type { TooSoon } from './keys-alike.ts';
import type { Unfit } from './suits.ts';

/** By node, an item for each copy; null where there is none for it. */
export type Given = ReadonlyMap<NodeId, readonly (ItemId | null)[]>;

/** By node, an item for each copy that the teacher has settled. */
export type Pins = ReadonlyMap<NodeId, readonly (ItemId | null | undefined)[]>;

export interface Demand<I extends KitItem> {
  readonly node: NodeId;
  readonly copies: number;
  readonly unfit: (item: I, copy: number) => Unfit | undefined;
  /** Of what the teacher has chosen, where that may be more than what suits by itself. */
  readonly unfitChosen?: (item: I) => Unfit | undefined;
  readonly waste: (item: I) => number;
}

/** A pin that cannot be kept: the item is gone, other pins have all of it, or it does not suit. */
export interface LoosePin {
  readonly node: NodeId;
  readonly item: ItemId;
  readonly why: 'gone' | 'taken' | Unfit;
}

export interface SupplyOptions {
  readonly pins: Pins;
  readonly previous: Given;
  readonly tooSoon: TooSoon;
  /** Hears of the assignment that is solved, so that others can solve it too: the column of each row. */
  readonly solved?: ((problem: Problem, columnOf: Int32Array) => void) | undefined;
}

export interface Supplied {
  readonly assigned: Given;
  readonly loosePins: readonly LoosePin[];
}

/** What no pin has settled, as the assignment sees it. */
export interface Problem {
  /** In the order of the rows. */
  readonly rows: readonly { readonly node: NodeId; readonly copy: number }[];
  /** A thing for each column; undefined: none. */
  readonly columns: readonly (ItemId | undefined)[];
  readonly cost: (row: number, column: number) => number;
}

interface Pinned {
  readonly assigned: Map<NodeId, (ItemId | null)[]>;
  /** Units of each item that no pin has. */
  readonly free: Map<ItemId, number>;
  readonly loosePins: LoosePin[];
}

function keepPins<I extends KitItem>(demands: readonly Demand<I>[], items: readonly I[], pins: Pins): Pinned {
  const free = new Map<ItemId, number>(items.map(({ id, count }) => [id, count]));
  const byId = new Map<ItemId, I>(items.map((item) => [item.id, item]));
  const assigned = new Map<NodeId, (ItemId | null)[]>();
  const loosePins: LoosePin[] = [];
  for (const { node, copies, unfit, unfitChosen = unfit } of demands) {
    const own = pins.get(node) ?? [];
    const kept = Array.from({ length: copies }, (_, copy) => {
      const id = own[copy] ?? null;
      if (id === null) return null;
      const item = byId.get(id);
      const units = free.get(id) ?? 0;
      const why = !item ? 'gone' : (unfitChosen(item, copy) ?? (units === 0 ? 'taken' : undefined));
      if (why === undefined) {
        free.set(id, units - 1);
        return id;
      }
      const isTold = loosePins.some((pin) => pin.node === node && pin.item === id);
      if (!isTold) loosePins.push({ node, item: id, why });
      return null;
    });
    assigned.set(node, kept);
  }
  return { assigned, free, loosePins };
}

function groupsIn(assigned: Given, items: readonly KitItem[]): [group: string, node: NodeId][] {
  return items.flatMap((item) => {
    const group = groupOf(item);
    if (group === undefined) return [];
    return [...assigned]
      .filter(([, own]) => own.includes(item.id))
      .map(([node]): [string, NodeId] => [group, node]);
  });
}

/** The assignment that is left when pins are kept. */
function problemOf<I extends KitItem>(
  demands: readonly Demand<I>[],
  items: readonly I[],
  { pins, previous, tooSoon }: SupplyOptions,
): Problem & { readonly pinned: Pinned } {
  const pinned = keepPins(demands, items, pins);
  const rows = demands.flatMap(({ node, copies }, place) =>
    Array.from({ length: copies }, (_, copy) => ({ node, copy, place })).filter(
      (row) => (pinned.assigned.get(node) ?? [])[row.copy] === null,
    ),
  );
  const units = items.flatMap((item) =>
    Array.from({ length: Math.min(rows.length, pinned.free.get(item.id) ?? 0) }, () => item),
  );
  const homes: Homes = settleHomes(
    demands.map(({ node, copies, unfit, waste }) => ({
      node,
      copies: rows.filter((row) => row.node === node).length,
      suiting: items.filter((item) =>
        Array.from({ length: copies }, (_, copy) => copy).some((copy) => unfit(item, copy) === undefined),
      ),
      waste,
      before: previous.get(node) ?? [],
    })),
    pinned.free,
    groupsIn(pinned.assigned, items),
    tooSoon,
  );
  const costOf = (item: I, row: (typeof rows)[number]): number => {
    const demand = demands[row.place];
    if (!demand || demand.unfit(item, row.copy) !== undefined) return NEVER;
    const before = previous.get(row.node)?.[row.copy] ?? null;
    return (
      (homes.clashes(row.node, item) ? KEYS_ALIKE : 0) +
      (homes.homeOf.get(row.node) === item.id ? 0 : MIXED) +
      (before === null || before === item.id ? 0 : CHANGE) +
      demand.waste(item)
    );
  };
  /** Units of an item cost alike, and so do all columns of nothing. */
  const costs = rows.map((row) => new Map(items.map((item) => [item.id, costOf(item, row)])));
  const columns = [...units.map(({ id }) => id), ...rows.map(() => undefined)];
  const table = rows.map((row, i) => {
    const none = SHORT + LATER * (demands.length - row.place);
    return Float64Array.from(columns, (id) => (id === undefined ? none : (costs[i]?.get(id) ?? NEVER)));
  });
  return { rows, columns, cost: (row, column) => table[row]?.[column] ?? NEVER, pinned };
}

export function supply<I extends KitItem>(
  demands: readonly Demand<I>[],
  items: readonly I[],
  options: SupplyOptions,
): Supplied {
  const { pinned, ...problem } = problemOf(demands, items, options);
  const { rows, columns, cost } = problem;
  const { assigned, loosePins } = pinned;
  const columnOf = assign(rows.length, columns.length, cost);
  options.solved?.(problem, columnOf);
  for (const [row, { node, copy }] of rows.entries()) {
    const own = assigned.get(node);
    if (own) own[copy] = columns[columnOf[row] ?? 0] ?? null;
  }
  const byId = new Map<ItemId, I>(items.map((item) => [item.id, item]));
  for (const demand of demands) {
    const { node } = demand;
    if (options.pins.has(node) || options.previous.has(node)) continue;
    assigned.set(node, inKitOrder(demand, assigned.get(node) ?? [], byId));
  }
  return { assigned, loosePins };
}

/** Which copy has which unit of those that the node has got is all the same, as long as each suits: those that there are first, in the order of the kit. */
function inKitOrder<I extends KitItem>(
  { unfit }: Demand<I>,
  own: (ItemId | null)[],
  byId: ReadonlyMap<ItemId, I>,
): (ItemId | null)[] {
  const placeOf = new Map([...byId.keys()].map((id, place) => [id, place]));
  const rank = (id: ItemId | null) => (id === null ? byId.size : (placeOf.get(id) ?? byId.size));
  const sorted = [...own].sort((a, b) => rank(a) - rank(b));
  const suits = sorted.every((id, copy) => {
    const item = id === null ? undefined : byId.get(id);
    return item === undefined || unfit(item, copy) === undefined;
  });
  return suits ? sorted : own;
}
