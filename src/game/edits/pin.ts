import { type Game, type NodeId, type Point, parentOf } from '../model.ts';
import { type EditOf, type Outcome, refuse, unknownId } from './change.ts';

/** Positions and nothing else, as with a move: nothing is computed anew. A default is never written: what is let go loses the field. */
export function pin(game: Game, { ids, pinned }: EditOf<'pin'>): Outcome {
  const changed = new Map<NodeId, Point>();
  for (const id of new Set(ids)) {
    const node = game.nodes.get(id);
    if (!node) return unknownId(id);
    const point = game.positions.get(id);
    if (!point || parentOf(node) !== undefined) return refuse({ reason: 'notOnMat', id });
    if ((point.pinned === true) === pinned) continue;
    const { pinned: _, ...loose } = point;
    changed.set(id, pinned ? { ...loose, pinned } : loose);
  }
  return changed.size === 0 ? game : { ...game, positions: new Map([...game.positions, ...changed]) };
}
