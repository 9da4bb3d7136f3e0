import { type Game, type GameNode, type NodeId, type Point, parentOf } from '../model.ts';
import { contentsOf, inRowOrder, rowsAfterDrop, writeRows } from '../rows.ts';
import { type EditOf, isThing, lyingIn, type Outcome, STACK_STEP, unknownId } from './change.ts';

/** The first around a node that stays, and the last that goes. */
function around(game: Game, node: GameNode, gone: ReadonlySet<NodeId>) {
  let outermost: NodeId | undefined;
  let holder = parentOf(node);
  while (holder !== undefined && gone.has(holder)) {
    outermost = holder;
    holder = game.nodes.get(holder)?.in;
  }
  return { holder, outermost };
}

interface Freed {
  readonly nodes: GameNode[];
  readonly into: NodeId | undefined;
  /** Where on the mat, or in the tray, what held them lay. */
  readonly spot: NodeId;
}

/** What lay in the holders that go and stays itself, by the outermost of these. */
function freedBy(game: Game, gone: ReadonlySet<NodeId>): Freed[] {
  const byHolder = new Map<NodeId, Freed>();
  for (const node of game.nodes.values()) {
    if (gone.has(node.id)) continue;
    const { holder, outermost } = around(game, node, gone);
    if (outermost === undefined) continue;
    const freed = byHolder.get(outermost) ?? { nodes: [], into: holder, spot: outermost };
    freed.nodes.push(node);
    byHolder.set(outermost, freed);
  }
  return [...byHolder.values()];
}

/** One below the other from where their holder stood; without a position there, they have none and the map finds a spot. */
function stackOnMat(positions: Map<NodeId, Point>, ids: readonly NodeId[], from: Point | undefined): void {
  ids.forEach((id, i) => {
    const { x: _x, y: _y, ...unknown } = positions.get(id) ?? { x: 0, y: 0 };
    if (from) positions.set(id, { ...unknown, x: from.x, y: from.y + i * STACK_STEP });
    else positions.delete(id);
  });
}

/** Takes nodes and links away. A container's fasteners go with it; what a holder held drops to the nearest holder that stays, else onto the mat. */
export function remove(game: Game, edit: EditOf<'remove'>): Outcome {
  const unknown =
    edit.nodes.find((id) => !game.nodes.has(id)) ?? edit.links.find((id) => !game.links.has(id));
  if (unknown !== undefined) return unknownId(unknown);

  const gone = new Set(edit.nodes);
  for (const node of game.nodes.values()) {
    if (node.kind === 'fastener' && gone.has(node.on)) gone.add(node.id);
  }
  const nodes = new Map(game.nodes);
  const positions = new Map(game.positions);
  for (const { nodes: freed, into, spot } of freedBy(game, gone)) {
    const ids = inRowOrder(game.positions, freed).map((node) => node.id);
    for (const node of freed) if (isThing(node)) nodes.set(node.id, lyingIn(node, into));
    if (into === undefined) stackOnMat(positions, ids, game.positions.get(spot));
    else {
      const rows = contentsOf({ nodes, positions }, into).map((node) => node.id);
      writeRows(positions, rowsAfterDrop(rows, ids, spot));
    }
  }
  for (const id of gone) {
    nodes.delete(id);
    positions.delete(id);
  }
  const dropped = new Set(edit.links);
  const links = new Map(
    [...game.links].filter(([id, link]) => !dropped.has(id) && !gone.has(link.from) && !gone.has(link.to)),
  );
  return {
    head: game.head,
    nodes: gone.size === 0 ? game.nodes : nodes,
    links: links.size === game.links.size ? game.links : links,
    positions: gone.size === 0 ? game.positions : positions,
  };
}
