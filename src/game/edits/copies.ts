/**
 * Copying, pasting, duplicating and removing a selection, as lists of edits. Copies take contents, fasteners and the links
 * among them, and always get new ids.
 *
 * A copied key, lock, clue, tool or prize keeps its name: a key and the lock that it opens carry the same. Places, containers
 * and puzzles are told apart by their names alone, so a copy of one whose name is in use is numbered on: Tin, Tin 2, Tin 3.
 */
import {
  type Game,
  type GameLink,
  type GameNode,
  isHolder,
  type NodeId,
  type Point,
  parentOf,
  withContents,
} from '../model.ts';
import { inRowOrder } from '../rows.ts';
import { isThing, lyingIn, STACK_STEP } from './change.ts';
import type { Edit, EditRefusal, Placement } from './edit.ts';

/** A part of a game, as it was when it was copied: it lives on when the game changes, and pastes into any game. */
export interface Fragment {
  readonly nodes: readonly GameNode[];
  readonly links: readonly GameLink[];
  readonly positions: readonly Placement[];
}

export type Copies =
  /** `ids`: the copies of what was selected itself, to be selected next. */
  | { readonly ok: true; readonly edits: readonly Edit[]; readonly ids: readonly NodeId[] }
  | { readonly ok: false; readonly refusal: EditRefusal };

export function copyOf(game: Game, ids: Iterable<NodeId>): Fragment {
  const taken = withContents(game, ids);
  return {
    nodes: [...game.nodes.values()].filter((node) => taken.has(node.id)),
    links: [...game.links.values()].filter((link) => taken.has(link.from) && taken.has(link.to)),
    positions: [...game.positions].filter(([id]) => taken.has(id)),
  };
}

/** Those that lie in, or hang on, nothing else in the fragment, in row order. */
function rootsOf(fragment: Fragment): GameNode[] {
  const ids = new Set(fragment.nodes.map((node) => node.id));
  const roots = fragment.nodes.filter((node) => {
    const parent = parentOf(node);
    return parent === undefined || !ids.has(parent);
  });
  return inRowOrder(new Map(fragment.positions), roots);
}

/** 'Tin' or 'Tin 2' and the like; up to three digits, so that a year is part of the name. */
const NUMBERED = /^(.*\S) ([1-9]\d{0,2})$/su;

function nextName(name: string, used: ReadonlySet<string>): string {
  if (!used.has(name)) return name;
  const [, base = name, last = '1'] = NUMBERED.exec(name) ?? [];
  let number = Number(last) + 1;
  while (used.has(`${base} ${number}`)) number++;
  return `${base} ${number}`;
}

/** Gives out names for copies, each once. */
function namesIn(game: Game): (node: GameNode) => string {
  const used = new Map<string, Set<string>>();
  for (const { kind, name } of game.nodes.values()) used.set(kind, (used.get(kind) ?? new Set()).add(name));
  return ({ kind, name }) => {
    if (kind !== 'place' && kind !== 'container' && kind !== 'puzzle') return name;
    const ofKind = used.get(kind) ?? new Set();
    const next = nextName(name, ofKind);
    used.set(kind, ofKind.add(next));
    return next;
  };
}

/**
 * The edit that adds a copy of the fragment, and the new ids of its roots.
 * @param homed a root where its copy is to lie or hang; all else lies in the copy of what it lay in
 * @param spots where the copies of roots stand; one that is to lie in a tray needs none, and goes to the end of its rows
 */
function addCopies(
  game: Game,
  fragment: Fragment,
  newId: () => string,
  homed: (root: GameNode) => GameNode,
  spots: ReadonlyMap<NodeId, Point>,
): { readonly edit: Edit; readonly roots: readonly NodeId[] } {
  const ids = new Map(fragment.nodes.map((node) => [node.id, newId()]));
  const copied = (id: NodeId) => ids.get(id) ?? id;
  const inCopy = (node: GameNode): GameNode => {
    if (node.kind === 'fastener') return { ...node, on: copied(node.on) };
    return isThing(node) && node.in !== undefined ? lyingIn(node, copied(node.in)) : node;
  };
  const roots = rootsOf(fragment);
  const rootIds = new Set(roots.map((root) => root.id));
  const inner = fragment.nodes.filter((node) => !rootIds.has(node.id));
  const nameOf = namesIn(game);
  const nodes = [...roots.map(homed), ...inner.map(inCopy)].map(
    (node): GameNode => ({ ...node, id: copied(node.id), name: nameOf(node) }),
  );
  const known = new Map(fragment.positions);
  const positions = fragment.nodes.flatMap(({ id }): Placement[] => {
    const point = known.get(id);
    if (!rootIds.has(id)) return point ? [[copied(id), point]] : [];
    const spot = spots.get(id);
    return spot ? [[copied(id), { ...point, ...spot }]] : [];
  });
  const links = fragment.links.map((link) => ({
    ...link,
    id: newId(),
    from: copied(link.from),
    to: copied(link.to),
  }));
  return { edit: { type: 'add', nodes, links, positions }, roots: roots.map((root) => copied(root.id)) };
}

/** Where roots come to stand on the mat: as they stood to each other, the top left corner of all at `at`; what lay in trays, below each other. */
function onMat(roots: readonly GameNode[], fragment: Fragment, at: Point): Map<NodeId, Point> {
  const known = new Map(fragment.positions);
  const stood = roots.flatMap((root) => {
    const point = parentOf(root) === undefined ? known.get(root.id) : undefined;
    return point ? [{ id: root.id, point }] : [];
  });
  const left = Math.min(...stood.map(({ point }) => point.x));
  const top = Math.min(...stood.map(({ point }) => point.y));
  const placed = new Map<NodeId, Point>(
    stood.map(({ id, point }) => [id, { x: at.x + point.x - left, y: at.y + point.y - top }]),
  );
  const below = Math.max(-STACK_STEP, ...stood.map(({ point }) => point.y - top)) + STACK_STEP;
  roots
    .filter((root) => !placed.has(root.id))
    .forEach((root, i) => {
      placed.set(root.id, { x: at.x, y: at.y + below + i * STACK_STEP });
    });
  return placed;
}

/**
 * Pastes into the holder given; places and puzzles, and everything when nothing that holds is given, go on the mat at `at`.
 * A fastener copied without its container goes on the container given, else the paste is refused.
 */
export function pasteEdits(
  game: Game,
  fragment: Fragment,
  holder: NodeId | null,
  at: Point,
  newId: () => string,
): Copies {
  const target = holder === null ? undefined : game.nodes.get(holder);
  const tray = target && isHolder(target) ? target : undefined;
  const roots = rootsOf(fragment);
  const loose = roots.find((root) => root.kind === 'fastener');
  if (loose && tray?.kind !== 'container') {
    return { ok: false, refusal: { reason: 'needsContainer', id: loose.id } };
  }
  const homed = (root: GameNode): GameNode => {
    if (root.kind === 'fastener') return tray ? { ...root, on: tray.id } : root;
    return isThing(root) ? lyingIn(root, tray?.id) : root;
  };
  const free = roots.filter((root) => parentOf(homed(root)) === undefined);
  const { edit, roots: ids } = addCopies(game, fragment, newId, homed, onMat(free, fragment, at));
  return { ok: true, edits: fragment.nodes.length === 0 ? [] : [edit], ids };
}

/** Copies beside what is selected: in the same tray at the end of its rows, on the same container, or on the mat so far to the side. */
export function duplicateEdits(
  game: Game,
  ids: Iterable<NodeId>,
  newId: () => string,
  offset: Point,
): Extract<Copies, { ok: true }> {
  const fragment = copyOf(game, ids);
  const positions = new Map<NodeId, Point>();
  for (const root of rootsOf(fragment)) {
    const stood = parentOf(root) === undefined ? game.positions.get(root.id) : undefined;
    if (stood) positions.set(root.id, { x: stood.x + offset.x, y: stood.y + offset.y });
  }
  const { edit, roots } = addCopies(game, fragment, newId, (root) => root, positions);
  return { ok: true, edits: fragment.nodes.length === 0 ? [] : [edit], ids: roots };
}

/** Takes a selection away; none when nothing of it is there. */
export function removeEdits(game: Game, nodes: Iterable<NodeId>, links: Iterable<string>): Edit[] {
  const edit: Edit = {
    type: 'remove',
    nodes: [...new Set(nodes)].filter((id) => game.nodes.has(id)),
    links: [...new Set(links)].filter((id) => game.links.has(id)),
  };
  return edit.nodes.length + edit.links.length === 0 ? [] : [edit];
}
