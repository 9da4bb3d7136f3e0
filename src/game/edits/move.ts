import type { Game } from '../model.ts';
import { badValue, type EditOf, type Outcome, putAt, unknownId } from './change.ts';

/** Positions and nothing else: nodes and links stay the same objects, so nothing is computed anew. */
export function move(game: Game, edit: EditOf<'move'>): Outcome {
  const positions = new Map(game.positions);
  for (const placement of edit.positions) {
    const [id] = placement;
    if (!game.nodes.has(id)) return unknownId(id);
    if (!putAt(positions, placement)) return badValue(id, 'at');
  }
  return { ...game, positions };
}
