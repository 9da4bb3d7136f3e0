/** What the engine says of one thing, by its id. */
import type { NodeId } from '../../src/game/model.ts';
import type { Assessment } from '../store/assessment.ts';

/** Number in the order of play; 0 for what has none. */
export function stepNumber({ network, measures }: Assessment, id: NodeId): number {
  const i = network.index.get(id);
  return i === undefined ? 0 : (measures.number[i] ?? 0);
}
