/** Parts of the game as it is played. */
import type { Assessment } from '../../src/findings/assess.ts';
import { type NodeId, parentOf } from '../../src/game/model.ts';

/**
 * In the order of play. A thing without a number of its own, such as a box, goes by the first step in it or on it; what is never
 * reached comes last.
 */
export function inOrderOfPlay<T>(
  { game, network, measures }: Assessment,
  things: Iterable<T>,
  nodeOf: (thing: T) => NodeId,
): readonly T[] {
  const own = (id: NodeId) => measures.number[network.index.get(id) ?? -1] || Infinity;
  const first = new Map<NodeId, number>();
  for (const node of game.nodes.values()) {
    const holder = parentOf(node);
    if (holder !== undefined) first.set(holder, Math.min(first.get(holder) ?? Infinity, own(node.id)));
  }
  const rank = (thing: T) => Math.min(own(nodeOf(thing)), first.get(nodeOf(thing)) ?? Infinity);
  return [...things].sort((a, b) => (rank(a) === rank(b) ? 0 : rank(a) - rank(b)));
}
