/** Which nodes are used this time, and where the used ones lie. Linear, but for chains of left-out holders. */
import { type Game, type NodeId, parentOf } from '../game/model.ts';

/** Not used this time: left out itself, or fastened to a container that is. */
export function isLeftOut(game: Game, id: NodeId): boolean {
  const node = game.nodes.get(id);
  if (node === undefined || node.leftOut === true) return true;
  return node.kind === 'fastener' && game.nodes.get(node.on)?.leftOut === true;
}

/**
 * The nearest holder still used, or for a fastener its container. Undefined: in the pupils' hands.
 * What a left-out holder held lies in the holder of that, and so on.
 */
export function parentInUse(game: Game, id: NodeId): NodeId | undefined {
  const node = game.nodes.get(id);
  let parent = node && parentOf(node);
  while (parent !== undefined) {
    const holder = game.nodes.get(parent);
    if (holder?.leftOut !== true) return parent;
    parent = parentOf(holder);
  }
  return undefined;
}
