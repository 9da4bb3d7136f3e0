import { checkNode } from '../faults.ts';
import { type Game, type GameNode, isHolder, type NodeId, type Point, parentOf } from '../model.ts';
import { contentsOf, fastenersOf, rowsAfterDrop, writeRows } from '../rows.ts';
import {
  badValue,
  type EditOf,
  isRefused,
  isThing,
  type Outcome,
  putAt,
  type Refused,
  refuse,
  unknownId,
} from './change.ts';
import { addLink } from './links.ts';

/** Why a node may not be where it says that it is. */
function parentRefusal(nodes: ReadonlyMap<NodeId, GameNode>, node: GameNode): Refused | undefined {
  const parent = parentOf(node);
  if (parent === undefined) return undefined;
  const target = nodes.get(parent);
  if (!target) return unknownId(parent);
  if (node.kind === 'fastener') {
    return target.kind === 'container' ? undefined : refuse({ reason: 'needsContainer', id: node.id });
  }
  if (!isHolder(target) || !isThing(node)) {
    return refuse({ reason: 'cannotHold', id: node.id, holder: parent });
  }
  const above = new Set<NodeId>();
  for (let at: NodeId | undefined = parent; at !== undefined && !above.has(at); at = nodes.get(at)?.in) {
    if (at === node.id) return refuse({ reason: 'insideItself', id: node.id, holder: parent });
    above.add(at);
  }
  return undefined;
}

/** New nodes in trays that came without a position lie below what is there, in the order given. */
function writeNewRows(game: Game, added: readonly GameNode[], positions: Map<NodeId, Point>): void {
  const trays = new Map<NodeId, NodeId[]>();
  const walls = new Map<NodeId, NodeId[]>();
  for (const node of added) {
    const parent = parentOf(node);
    if (parent === undefined || positions.has(node.id)) continue;
    const lists = node.kind === 'fastener' ? walls : trays;
    lists.set(parent, [...(lists.get(parent) ?? []), node.id]);
  }
  const idsOf = (nodes: readonly GameNode[]) => nodes.map((node) => node.id);
  for (const [id, ids] of trays) writeRows(positions, rowsAfterDrop(idsOf(contentsOf(game, id)), ids, null));
  for (const [id, ids] of walls) writeRows(positions, rowsAfterDrop(idsOf(fastenersOf(game, id)), ids, null));
}

/** The copy of what is pinned is pinned too, where it stands on the mat. */
function keepPin(
  game: { readonly nodes: Game['nodes']; readonly positions: Map<NodeId, Point> },
  id: NodeId,
): void {
  const node = game.nodes.get(id);
  const point = game.positions.get(id);
  if (node && point && parentOf(node) === undefined) game.positions.set(id, { ...point, pinned: true });
}

export function add(game: Game, edit: EditOf<'add'>): Outcome {
  const nodes = new Map(game.nodes);
  const added: GameNode[] = [];
  for (const node of edit.nodes) {
    const checked = checkNode(node);
    if (!checked.ok) return badValue(node.id, checked.field);
    if (nodes.has(node.id)) return refuse({ reason: 'taken', id: node.id });
    nodes.set(node.id, checked.value);
    added.push(checked.value);
  }
  for (const node of added) {
    const refused = parentRefusal(nodes, node);
    if (refused) return refused;
  }
  const positions = new Map(game.positions);
  for (const placement of edit.positions) {
    const [id] = placement;
    if (!nodes.has(id)) return unknownId(id);
    if (!putAt(positions, placement)) return badValue(id, 'at');
    if (placement[1].pinned === true) keepPin({ nodes, positions }, id);
  }
  let next: Game = { ...game, nodes, positions };
  writeNewRows(next, added, positions);
  for (const link of edit.links) {
    const outcome = addLink(next, link);
    if (isRefused(outcome)) return outcome;
    next = outcome;
  }
  return next;
}
