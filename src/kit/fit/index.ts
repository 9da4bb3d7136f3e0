/** Which real thing of the cupboard goes where in a game, and what is short. The costs are written down in costs.ts, the needs in ../needs.ts. */
import type { Game, NodeId } from '../../game/model.ts';
import { grouped } from '../grouped.ts';
import { type ItemId, type ItemOf, isCounted, itemsOf, type Kit, type KitItem, type What } from '../model.ts';
import { hangs, type LockNeed, needsOf, TYPED, teamsOf } from '../needs.ts';
import { type BoxNaming, boxWaste, haspWaste, lockWaste } from './costs.ts';
import { groupOf } from './homes.ts';
import { type TooSoon, tooSoonIn } from './keys-alike.ts';
import {
  boxUnfit,
  haspUnfit,
  holeUnfit,
  lockUnfit,
  sameWords,
  symbolsFor,
  type Through,
  toolUnfit,
  type Unfit,
} from './suits.ts';
import { type Demand, type Given, type LoosePin, type Pins, type SupplyOptions, supply } from './supply.ts';

export type { Unfit } from './suits.ts';
export type { Given, LoosePin, Pins } from './supply.ts';

export interface FitOptions {
  /** As the lesson says where it is not given; at least 1. */
  readonly teams?: number;
  /** What the teacher has fixed: by node (a fastener, container or tool; for a hasp see `haspPins`) an item for each copy, null for a copy that is free. */
  readonly pins?: Pins;
  /** By container. */
  readonly haspPins?: Pins;
  /** What was found before a small change: it is kept where nothing weightier speaks against it. */
  readonly previous?: Fitting | undefined;
  /** Hears of every assignment that is solved. */
  readonly solved?: SupplyOptions['solved'];
}

/** What there is of one sort. */
export interface Supply {
  /** False where the kit says nothing of this sort: then nothing is called short, and nothing is assigned. */
  readonly isCounted: boolean;
  /** By node, an item for each copy; null where there is none for it. */
  readonly assigned: Given;
  /** By node, how many copies have none; only those that are short. */
  readonly short: ReadonlyMap<NodeId, number>;
}

/** Padlocks with like keys on two fasteners that no one key of the game opens. */
export interface LikeKeys {
  readonly group: string;
  readonly key: NodeId;
  readonly lock: NodeId;
  /** The key to the first opens the second too soon; else each opens the other, and it does no harm. */
  readonly isTooSoon: boolean;
}

/** Top level: locks, by fastener. A latch needs none and is not in it. */
export interface Fitting extends Supply {
  readonly teams: number;
  /** As they were given. */
  readonly pins: Pins;
  readonly haspPins: Pins;
  /** By container. */
  readonly boxes: Supply;
  /** By container: those that several locks hang on. */
  readonly hasps: Supply;
  /** By tool. */
  readonly tools: Supply;
  readonly likeKeys: readonly LikeKeys[];
  readonly loosePins: readonly LoosePin[];
  /** How many things are missing in all. A device on which several answers are typed counts once. */
  readonly missing: number;
}

const NONE: ReadonlyMap<NodeId, readonly ItemId[]> = new Map();
const NEVER_TOO_SOON: TooSoon = () => false;

function shortIn(assigned: Given): ReadonlyMap<NodeId, number> {
  const short = new Map<NodeId, number>();
  for (const [node, items] of assigned) {
    const missing = items.filter((item) => item === null).length;
    if (missing > 0) short.set(node, missing);
  }
  return short;
}

function total(short: ReadonlyMap<NodeId, number>): number {
  return [...short.values()].reduce((sum, missing) => sum + missing, 0);
}

/** All that a team types, it types on one device: the first node stands for all of them. */
function oneDevice(demands: readonly Demand<ItemOf<'lock'>>[]): Demand<ItemOf<'lock'>>[] {
  const copies = Math.max(...demands.map((demand) => demand.copies));
  return demands.slice(0, 1).map((demand) => ({ ...demand, copies }));
}

/** Whether one key of the game leads to both. */
function sharesKey(game: Game): (a: NodeId, b: NodeId) => boolean {
  const keysTo = new Map<NodeId, Set<NodeId>>();
  for (const { from, to } of game.links.values()) {
    if (game.nodes.get(from)?.kind === 'key') keysTo.set(to, (keysTo.get(to) ?? new Set()).add(from));
  }
  return (a, b) => [...(keysTo.get(a) ?? [])].some((key) => keysTo.get(b)?.has(key) === true);
}

function likeKeysIn(
  game: Game,
  assigned: Given,
  byId: ReadonlyMap<ItemId, KitItem>,
  tooSoon: TooSoon,
): LikeKeys[] {
  const isOneKey = sharesKey(game);
  const nodesOf = new Map<string, Set<NodeId>>();
  for (const [node, items] of assigned) {
    for (const id of items) {
      const item = byId.get(id ?? '');
      const group = item && groupOf(item);
      if (group === undefined) continue;
      nodesOf.set(group, (nodesOf.get(group) ?? new Set()).add(node));
    }
  }
  return [...nodesOf].flatMap(([group, nodes]) => {
    const own = [...nodes];
    return own.flatMap((key, place) =>
      own.flatMap((lock, other): LikeKeys[] => {
        if (lock === key) return [];
        if (tooSoon(key, lock)) return [{ group, key, lock, isTooSoon: true }];
        const isHarmless = other > place && !tooSoon(lock, key) && !isOneKey(key, lock);
        return isHarmless ? [{ group, key, lock, isTooSoon: false }] : [];
      }),
    );
  });
}

/** Whether the box bears the name of the node, or that of another box of the game. */
function boxNaming(
  { name }: { readonly name: string },
  { label }: KitItem,
  names: readonly string[],
): BoxNaming {
  if (label.trim() === '') return 'none';
  if (sameWords(name, label)) return 'own';
  return names.some((other) => sameWords(other, label)) ? 'other' : 'none';
}

/** Of a sort that the kit is silent about. */
const UNCOUNTED: Supply = { isCounted: false, assigned: NONE, short: new Map() };

/**
 * Cost: for each type of lock, and for boxes, hasps and tools, an assignment of its copies to its units (see assignment.ts); with padlocks of
 * like keys the game is compiled besides. Depends on the game, the kit and the options alone.
 */
export function fitKit(game: Game, kit: Kit, options: FitOptions = {}): Fitting {
  const { pins = NONE, haspPins = NONE, previous, solved } = options;
  const teams = teamsOf(game, options.teams);
  const needs = needsOf(game, teams);
  const loosePins: LoosePin[] = [];
  const byId = new Map(kit.items.map((item) => [item.id, item]));

  const give = <W extends What>(
    what: W,
    demands: readonly Demand<ItemOf<W>>[],
    own: { readonly pins: Pins; readonly previous: Given | undefined },
  ): Supply => {
    if (!isCounted(kit, what)) return UNCOUNTED;
    const { assigned, loosePins: loose } = supply(demands, itemsOf(kit, what), {
      pins: own.pins,
      previous: own.previous ?? NONE,
      tooSoon: NEVER_TOO_SOON,
      solved,
    });
    loosePins.push(...loose);
    return { isCounted: true, assigned, short: shortIn(assigned) };
  };

  const symbols = new Map(needs.locks.map((need) => [need.node.id, symbolsFor(game, need)]));
  const locksOn = grouped(needs.locks, ({ node }) => node.on);
  const ownLocks = itemsOf(kit, 'lock');
  const boxNames = needs.boxes.map(({ node }) => node.name);
  const boxes = give(
    'box',
    needs.boxes.map((need) => ({
      node: need.node.id,
      copies: need.copies,
      unfit: (item) => boxUnfit(need, item),
      waste: (item) =>
        boxWaste(
          item,
          boxNaming(need.node, item, boxNames),
          need.locks,
          blockedBy(item, need.locks === 1 ? (locksOn.get(need.node.id) ?? []) : []),
        ),
    })),
    { pins, previous: previous?.boxes.assigned },
  );
  function blockedBy(box: ItemOf<'box'>, locks: readonly LockNeed[]): number {
    let blocked = 0;
    for (const { node, type } of locks) {
      for (const item of ownLocks) {
        const own = symbols.get(node.id);
        const isBlocked =
          lockUnfit(type, own, item, undefined) === undefined &&
          lockUnfit(type, own, item, box) !== undefined;
        if (isBlocked) blocked += item.count;
      }
    }
    return blocked;
  }
  const hasps = give(
    'hasp',
    needs.boxes
      .filter(({ locks }) => locks > 1)
      .map(({ node, copies, locks }) => ({
        node: node.id,
        copies,
        unfit: (item) => haspUnfit(locks, item),
        waste: (item) => haspWaste(item, locks),
      })),
    { pins: haspPins, previous: previous?.hasps.assigned },
  );
  const tools = give(
    'tool',
    needs.tools.map(({ node, copies }) => ({
      node: node.id,
      copies,
      unfit: (item) => toolUnfit(node, item),
      // Names differ from cupboard to cupboard: a teacher knows that a magnifier is a hand lens.
      unfitChosen: () => undefined,
      waste: () => 0,
    })),
    { pins, previous: previous?.tools.assigned },
  );

  const through = (container: NodeId, copy: number): Through => {
    const id = (hasps.assigned.get(container) ?? boxes.assigned.get(container))?.[copy] ?? '';
    const item = byId.get(id);
    return item?.what === 'box' || item?.what === 'hasp' ? item : undefined;
  };
  const isAlike = ownLocks.some((item) => groupOf(item) !== undefined && item.count > 0);
  const tooSoon = isAlike ? tooSoonIn(game) : NEVER_TOO_SOON;
  const assigned = new Map<NodeId, readonly (ItemId | null)[]>();
  let missing = 0;
  for (const [type, locks] of grouped(needs.locks, (need) => need.type)) {
    const items = ownLocks.filter((item) => item.type === type);
    const demands = locks.map(({ node, copies }): Demand<ItemOf<'lock'>> => {
      const own = symbols.get(node.id);
      // A code is held against an item once, and not for every copy.
      const carries = new Map<ItemId, Unfit | undefined>();
      return {
        node: node.id,
        copies,
        unfit: (item, copy) => {
          if (!carries.has(item.id)) carries.set(item.id, lockUnfit(type, own, item, undefined));
          const hole = hangs(type) ? through(node.on, copy) : undefined;
          return carries.get(item.id) ?? (hole && holeUnfit(item, hole));
        },
        waste: (item) => lockWaste(item, own),
      };
    });
    const asked = type === TYPED ? oneDevice(demands) : demands;
    const supplied = supply(asked, items, { pins, previous: previous?.assigned ?? NONE, tooSoon, solved });
    loosePins.push(...supplied.loosePins);
    missing += total(shortIn(supplied.assigned));
    for (const { node, copies } of demands) {
      const own = supplied.assigned.get(node) ?? supplied.assigned.get(asked[0]?.node ?? '');
      assigned.set(node, (own ?? []).slice(0, copies));
    }
  }
  const short = shortIn(assigned);
  return {
    isCounted: true,
    teams,
    pins,
    haspPins,
    assigned,
    short,
    boxes,
    hasps,
    tools,
    likeKeys: likeKeysIn(game, assigned, byId, tooSoon),
    // What is there and not among those of its sort is another sort of thing.
    loosePins: loosePins.map((pin) =>
      pin.why === 'gone' && byId.has(pin.item) ? { ...pin, why: 'type' } : pin,
    ),
    missing: missing + total(boxes.short) + total(hasps.short) + total(tools.short),
  };
}
