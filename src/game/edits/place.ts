import { type Game, isHolder, type NodeId, parentOf } from '../model.ts';
import { contentsOf, rowsAfterDrop, writeRows } from '../rows.ts';
import {
  badValue,
  type EditOf,
  isThing,
  lyingIn,
  type Outcome,
  putAt,
  type Refused,
  refuse,
  unknownId,
} from './change.ts';

/** Whether a node is, or lies at any depth in or on, one of those given. */
function isWithin(game: Game, id: NodeId, outer: ReadonlySet<NodeId>): boolean {
  for (let at: NodeId | undefined = id; at !== undefined; ) {
    if (outer.has(at)) return true;
    const node = game.nodes.get(at);
    at = node && parentOf(node);
  }
  return false;
}

/** Those that do not lie in, or hang on, another of them: what lies in a moved box goes along untouched. */
export function outermost(game: Game, ids: Iterable<NodeId>): NodeId[] {
  const all = new Set(ids);
  return [...all].filter((id) => {
    const node = game.nodes.get(id);
    const parent = node && parentOf(node);
    return parent === undefined || !isWithin(game, parent, all);
  });
}

function refusalOf(game: Game, ids: readonly NodeId[], holder: NodeId | null): Refused | undefined {
  const target = holder === null ? undefined : game.nodes.get(holder);
  if (holder !== null && !target) return unknownId(holder);
  for (const id of ids) {
    const node = game.nodes.get(id);
    if (!node) return unknownId(id);
    if (node.kind === 'fastener') return refuse({ reason: 'needsContainer', id });
    if (!target) continue;
    if (isWithin(game, target.id, new Set([id]))) {
      return refuse({ reason: 'insideItself', id, holder: target.id });
    }
    if (!isHolder(target) || !isThing(node)) {
      return refuse({ reason: 'cannotHold', id, holder: target.id });
    }
  }
  return undefined;
}

/**
 * Into a tray as rows, or out onto the mat: places and puzzles in a selection on the mat only get their position.
 * What comes out of a tray without a position has none, and the map finds a free spot.
 */
export function place(game: Game, edit: EditOf<'place'>): Outcome {
  const { holder, before } = edit;
  const unknown = edit.ids.find((id) => !game.nodes.has(id));
  if (unknown !== undefined) return unknownId(unknown);
  const moved = outermost(game, edit.ids);
  const refused = refusalOf(game, moved, holder);
  if (refused) return refused;

  const nodes = new Map(game.nodes);
  const positions = new Map(game.positions);
  let rehomed = false;
  for (const id of moved) {
    const node = nodes.get(id);
    if (!node || !isThing(node) || (node.in ?? null) === holder) continue;
    nodes.set(id, lyingIn(node, holder ?? undefined));
    rehomed = true;
  }
  if (holder !== null) {
    const rows = contentsOf(game, holder).map((node) => node.id);
    writeRows(positions, rowsAfterDrop(rows, moved, before));
  } else {
    const given = new Map(edit.positions);
    for (const id of given.keys()) if (!nodes.has(id)) return unknownId(id);
    for (const id of moved) {
      const point = given.get(id);
      if (point && !putAt(positions, [id, point])) return badValue(id, 'at');
      /** The number of a row in the tray that it comes from is no place on the mat. */
      if (!point && nodes.get(id) !== game.nodes.get(id)) positions.delete(id);
    }
  }
  return { ...game, nodes: rehomed ? nodes : game.nodes, positions };
}
