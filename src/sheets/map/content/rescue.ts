/** Which steps share a rescue line, and what it says. */
import { rowOf } from '../../../engine/rows.ts';
import { fastenerType } from '../../../fasteners/index.ts';
import type { Assessment } from '../../../findings/assess.ts';
import { shortRescue } from '../../../words/lift.ts';
import type { RescueNote } from '../content.ts';

/**
 * One line for each step in the order of play; one for a puzzle and the lock that it alone opens and that it alone is needed for,
 * where their numbers follow each other: else nobody would look for the second under the first. None for a latch, where there is
 * nothing to solve, nor for what nothing hangs on.
 */
export function rescueNotes(assessment: Assessment): RescueNote[] {
  const { network, measures, context, game } = assessment;
  const shared = new Map<number, number>();
  for (const puzzle of measures.order) {
    const outs = rowOf(network.outs, puzzle);
    const [lock] = outs;
    if (context.kindOf(puzzle) !== 'puzzle' || lock === undefined || outs.length !== 1) continue;
    const isOnlyIts = rowOf(network.needs, lock).length === 1 && context.kindOf(lock) === 'fastener';
    if (isOnlyIts && measures.number[lock] === (measures.number[puzzle] ?? 0) + 1) shared.set(puzzle, lock);
  }
  const second = new Set(shared.values());
  const notes: RescueNote[] = [];
  for (const step of measures.order) {
    const node = game.nodes.get(context.idOf(step));
    const isLatch = node?.kind === 'fastener' && fastenerType(node.type).opensWith === 'nothing';
    if (!node || isLatch || second.has(step)) continue;
    const lock = shared.get(step);
    const steps = lock === undefined ? [node.id] : [node.id, context.idOf(lock)];
    if (shortRescue(assessment, steps, true).length > 0) notes.push({ key: node.id, steps });
  }
  return notes;
}
