/** The one table of legal links. The canvas, the forms, the reader and the handbook all read it. */
import type { Game, Kind, NodeId } from './model.ts';

export const LEGAL_TARGETS: Readonly<Record<Kind, readonly Kind[]>> = {
  key: ['fastener', 'puzzle'],
  clue: ['puzzle', 'clue', 'fastener', 'place'],
  tool: ['puzzle', 'clue', 'tool', 'fastener'],
  /** The last four are handed over by the teacher when the puzzle is solved. */
  puzzle: ['puzzle', 'clue', 'fastener', 'place', 'key', 'tool', 'container', 'prize'],
  place: ['puzzle'],
  container: ['puzzle'],
  fastener: ['puzzle'],
  prize: [],
};

/** Why a link may not be drawn; 'kinds' means that the table above has no such pair. */
export type LinkRefusal = 'unknown' | 'self' | 'kinds' | 'twice';

/** Why no link may lead from the one node to the other, or undefined when it may. */
export function linkRefusal(game: Game, from: NodeId, to: NodeId): LinkRefusal | undefined {
  const source = game.nodes.get(from);
  const target = game.nodes.get(to);
  if (!source || !target) return 'unknown';
  if (from === to) return 'self';
  if (!LEGAL_TARGETS[source.kind].includes(target.kind)) return 'kinds';
  for (const link of game.links.values()) {
    if (link.from === from && link.to === to) return 'twice';
  }
  return undefined;
}
