/** How many of a thing have to be there before the lesson. */
import { parentInUse } from '../engine/left-out.ts';
import { lessonOf, sharedOf } from '../game/defaults.ts';
import type { Game, NodeId } from '../game/model.ts';

/**
 * How many there are for all teams together; undefined where each team has its own. What lies in a shared box, and the locks
 * on it, follow the box. What lies in a shared place does not: there each team may find its own.
 */
export function copiesOf(game: Game, id: NodeId): number | undefined {
  let copies = ownCopies(game, id);
  for (let holder = parentInUse(game, id); holder !== undefined; holder = parentInUse(game, holder)) {
    if (game.nodes.get(holder)?.kind !== 'container') continue;
    copies = fewer(copies, ownCopies(game, holder));
  }
  return copies;
}

/** The same without regard to what it lies in. As many as there are teams is one for each. */
export function ownCopies(game: Game, id: NodeId): number | undefined {
  const node = game.nodes.get(id);
  const shared = node && sharedOf(node);
  return shared !== undefined && shared < lessonOf(game).teams ? shared : undefined;
}

function fewer(a: number | undefined, b: number | undefined): number | undefined {
  if (a === undefined || b === undefined) return a ?? b;
  return Math.min(a, b);
}
