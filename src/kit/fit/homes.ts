/**
 * What is at home at a node: the item that all its copies should be, so that no team has another lock than the next.
 * It is settled node by node, those with the fewest items that suit first, then by id. At home is, of the items that suit, the one that most copies
 * had before and still has units; where none had, the one with the least of, in this order: copies that its free units leave without, whether
 * its keys are like those at home elsewhere and one opens the other too soon, waste, place in the kit. Its units are set aside, as far as they go.
 * Keys of what is pinned at a node are at home there from the start.
 */
import type { NodeId } from '../../game/model.ts';
import type { ItemId, KitItem } from '../model.ts';
import type { TooSoon } from './keys-alike.ts';

export interface Homeless<I extends KitItem> {
  readonly node: NodeId;
  /** Copies that no pin has settled. */
  readonly copies: number;
  readonly suiting: readonly I[];
  readonly waste: (item: I) => number;
  readonly before: readonly (ItemId | null)[];
}

export interface Homes {
  readonly homeOf: ReadonlyMap<NodeId, ItemId>;
  /** Whether the keys of the item's group are at home at another node, and one opens the other's lock too soon. */
  readonly clashes: (node: NodeId, item: KitItem) => boolean;
}

export function groupOf(item: KitItem): string | undefined {
  return item.what === 'lock' ? item.keyedAlike : undefined;
}

export function settleHomes<I extends KitItem>(
  homeless: readonly Homeless<I>[],
  free: ReadonlyMap<ItemId, number>,
  groupsPinned: readonly (readonly [group: string, node: NodeId])[],
  tooSoon: TooSoon,
): Homes {
  const left = new Map(free);
  const homeOf = new Map<NodeId, ItemId>();
  const nodesOf = new Map<string, NodeId[]>();
  const settle = (group: string, node: NodeId) => nodesOf.set(group, [...(nodesOf.get(group) ?? []), node]);
  for (const [group, node] of groupsPinned) settle(group, node);
  const clashes = (node: NodeId, item: KitItem) => {
    const group = groupOf(item);
    if (group === undefined) return false;
    return (nodesOf.get(group) ?? []).some(
      (other) => other !== node && (tooSoon(node, other) || tooSoon(other, node)),
    );
  };
  const inTurn = homeless
    .map((one, place) => ({ one, place }))
    .sort((a, b) => a.one.suiting.length - b.one.suiting.length || a.place - b.place);
  for (const { one } of inTurn) {
    const unitsOf = (item: I) => left.get(item.id) ?? 0;
    const had = new Map<ItemId, number>();
    for (const id of one.before) if (id !== null) had.set(id, (had.get(id) ?? 0) + 1);
    const ranked = one.suiting
      .filter((item) => unitsOf(item) > 0)
      .map((item, place) => ({
        item,
        rank: [
          -(had.get(item.id) ?? 0),
          Math.max(0, one.copies - unitsOf(item)),
          clashes(one.node, item) ? 1 : 0,
          one.waste(item),
          place,
        ],
      }))
      .sort((a, b) => firstDifference(a.rank, b.rank));
    const home = ranked[0]?.item;
    if (!home) continue;
    homeOf.set(one.node, home.id);
    left.set(home.id, Math.max(0, unitsOf(home) - one.copies));
    const group = groupOf(home);
    if (group !== undefined) settle(group, one.node);
  }
  return { homeOf, clashes };
}

function firstDifference(a: readonly number[], b: readonly number[]): number {
  for (const [i, value] of a.entries()) if (value !== b[i]) return value - (b[i] ?? 0);
  return 0;
}
