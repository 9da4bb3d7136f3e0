/** How pupils come by what lies in nothing. */
import type { Game, GameNode, NodeId } from '../game/model.ts';
import type { Caption } from './layout.ts';

/** What a puzzle leads to: when it lies in nothing, it is handed over. */
export function handedOver(game: Game): ReadonlySet<NodeId> {
  const given = new Set<NodeId>();
  for (const { from, to } of game.links.values()) {
    if (game.nodes.get(from)?.kind === 'puzzle') given.add(to);
  }
  return given;
}

/** Undefined for what is never given and lies in nothing by its nature. */
export function captionOf(node: GameNode, isHandedOver: boolean): Caption | undefined {
  if (node.kind === 'place' || node.kind === 'puzzle' || node.kind === 'fastener') return undefined;
  if (isHandedOver || (node.atMinute ?? 0) > 0) return 'given';
  return node.kind === 'container' ? 'tables' : 'hand';
}

/** The teacher gives it out at its minute, and nothing else has to come first; else its minute is only the earliest. */
export function isGivenOut(node: GameNode, lies: boolean, isHandedOver: boolean): boolean {
  return !lies && !isHandedOver && captionOf(node, isHandedOver) === 'given';
}
