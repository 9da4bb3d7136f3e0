/**
 * 'Take it from my games': the smallest cupboard, and the room, that would do for each of some games, one at a time, with as many teams as its lesson has.
 * Alike are locks of one type with the same wheels or dial, boxes by what they take, hasps by their holes, tools by name. Of each sort there are as many as
 * the game asks that asks for most. Boxes and hasps can stand in for lesser ones (a box that takes a hasp for one that takes a lock): of each
 * level there are as many as the most that any game asks of it and of all above, less those above.
 * Wheels are the lock's own where the game says them, else those that are usual for a code of that length; where no code is known yet, any of its type.
 */
import { fastenerType } from '../fasteners/index.ts';
import type { Game, NodeOf } from '../game/model.ts';
import { addItem, addPlace, setCount } from './edits.ts';
import { plainWords, symbolsFor } from './fit/suits.ts';
import { emptyKit, type ItemOf, type Kit, type KitItem } from './model.ts';
import { type BoxNeed, type LockNeed, type Needs, needsOf, TYPED, teamsOf } from './needs.ts';
import { MAX_COUNT } from './schema.ts';

export interface NewIds {
  /** An id never used before. */
  readonly newId: () => string;
}

/** What a thing is like, as an item without an id of which there is none. */
type Sort = KitItem;
type Takes = NonNullable<ItemOf<'box'>['takes']>;

const TAKES: readonly Takes[] = ['nothing', 'lock', 'hasp'];
/** Types whose usual lock has one wheel for each symbol. */
const WITH_WHEELS: ReadonlySet<string> = new Set(['number', 'word']);

const nothing = { id: '', label: '', count: 0 } as const;

/** The lock that a fastener needs, as nothing of it is owned. */
export function lockSort(game: Game, need: LockNeed): Sort {
  const { wheels, marks } = need.node.hardware ?? {};
  const base = { ...nothing, what: 'lock', type: need.type } as const;
  if (wheels) return { ...base, wheels };
  if (marks !== undefined) return { ...base, marks };
  const symbols = symbolsFor(game, need);
  if (!symbols || symbols.length === 0 || !WITH_WHEELS.has(need.type)) return base;
  const { wheel } = fastenerType(need.type);
  return { ...base, wheels: symbols.map((_, position) => (wheel(position) ?? []).join('')) };
}

export function boxSort(locks: number): Sort {
  return { ...nothing, what: 'box', takes: TAKES[Math.min(2, locks)] ?? 'hasp' };
}

export function haspSort(holes: number): Sort {
  return { ...nothing, what: 'hasp', holes };
}

export function toolSort({ name }: Pick<NodeOf<'tool'>, 'name'>): Sort {
  return { ...nothing, what: 'tool', label: name.trim() };
}

/** Things of one sort have the same key, whatever they are called. */
function sortKey(item: KitItem): string {
  switch (item.what) {
    case 'lock':
      return JSON.stringify(['lock', item.type, item.wheels ?? [], item.marks ?? 0]);
    case 'box':
      return JSON.stringify(['box', item.takes ?? '']);
    case 'hasp':
      return JSON.stringify(['hasp', item.holes]);
    case 'tool':
      return JSON.stringify(['tool', plainWords(item.label)]);
  }
}

interface Counted {
  readonly sort: Sort;
  count: number;
}

/** How many of a level are needed, from how many of it and all above are: levels ascend. */
function stepsDown(atLeast: ReadonlyMap<number, number>): Map<number, number> {
  const counts = new Map<number, number>();
  let above = 0;
  for (const level of [...atLeast.keys()].sort((a, b) => b - a)) {
    const need = atLeast.get(level) ?? 0;
    counts.set(level, Math.max(0, need - above));
    above = Math.max(above, need);
  }
  return counts;
}

/** Raises what is needed of each level and all above by what one game needs of each. */
function raiseLevels(most: Map<number, number>, own: ReadonlyMap<number, number>, levels: Iterable<number>) {
  for (const level of levels) {
    let sum = 0;
    for (const [other, count] of own) if (other >= level) sum += count;
    most.set(level, Math.max(most.get(level) ?? 0, sum));
  }
}

function countedBy(needs: readonly BoxNeed[], levelOf: (need: BoxNeed) => number): Map<number, number> {
  const counts = new Map<number, number>();
  for (const need of needs) counts.set(levelOf(need), (counts.get(levelOf(need)) ?? 0) + need.copies);
  return counts;
}

/** How many of each sort one game needs, levels apart. */
function ownSorts(game: Game, { locks, tools }: Needs): Map<string, Counted> {
  const own = new Map<string, Counted>();
  const add = (sort: Sort, count: number) => {
    const known = own.get(sortKey(sort));
    if (known) known.count += count;
    else own.set(sortKey(sort), { sort, count });
  };
  for (const need of locks) if (need.type !== TYPED) add(lockSort(game, need), need.copies);
  // All that a team types, it types on one device.
  const devices = locks.filter(({ type }) => type === TYPED).map(({ copies }) => copies);
  if (devices.length > 0) add({ ...nothing, what: 'lock', type: TYPED }, Math.max(...devices));
  for (const { node, copies } of tools) {
    if (node.name.trim() !== '') add(toolSort(node), copies);
  }
  return own;
}

function sortsOf(games: readonly Game[]): Counted[] {
  const needs = games.map((game) => ({ game, own: needsOf(game, teamsOf(game)) }));
  const hung = ({ boxes }: Needs) => boxes.filter(({ locks }) => locks > 1);
  const holes = new Set(needs.flatMap(({ own }) => hung(own).map(({ locks }) => locks)));
  const most = new Map<string, Counted>();
  const boxes = new Map<number, number>();
  const hasps = new Map<number, number>();
  for (const { game, own } of needs) {
    for (const [key, { sort, count }] of ownSorts(game, own)) {
      most.set(key, { sort, count: Math.max(count, most.get(key)?.count ?? 0) });
    }
    raiseLevels(
      boxes,
      countedBy(own.boxes, ({ locks }) => Math.min(2, locks)),
      TAKES.keys(),
    );
    raiseLevels(
      hasps,
      countedBy(hung(own), ({ locks }) => locks),
      holes,
    );
  }
  const levels = (counts: Map<number, number>, sortOf: (level: number) => Sort): Counted[] =>
    Array.from(stepsDown(counts), ([level, count]) => ({ sort: sortOf(level), count }));
  return [...most.values(), ...levels(hasps, haspSort), ...levels(boxes, boxSort)].filter(
    ({ count }) => count > 0,
  );
}

/**
 * The kit with all that one of the games needs and it has not: of each sort at least as many, and places by the names that the games use. What is there
 * already is neither lessened nor renamed. Labels of locks, hasps and boxes are left for the teacher to write.
 */
export function withGames(kit: Kit, games: readonly Game[], { newId }: NewIds): Kit {
  let next = kit;
  for (const { sort, count } of sortsOf(games)) {
    const alike = next.items.filter((item) => sortKey(item) === sortKey(sort));
    const owned = alike.reduce((sum, item) => sum + item.count, 0);
    const [first] = alike;
    if (first) next = setCount(next, first.id, first.count + Math.max(0, count - owned));
    else next = addItem(next, { ...sort, id: newId(), count: Math.min(MAX_COUNT, count) });
  }
  for (const game of games) {
    for (const node of game.nodes.values()) {
      const name = node.name.trim();
      if (node.kind !== 'place' || node.leftOut === true || name === '') continue;
      if (next.places.some((place) => plainWords(place.name) === plainWords(name))) continue;
      next = addPlace(next, { id: newId(), name });
    }
  }
  return next;
}

export function kitFromGames(games: readonly Game[], ids: NewIds): Kit {
  return withGames(emptyKit, games, ids);
}
