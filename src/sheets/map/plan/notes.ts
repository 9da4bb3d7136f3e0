/**
 * Rescue lines in one column, in the order of play, so that a number is found at once: each as near to the first of its steps
 * as the order lets it, by the same least squares under a chain.
 */
import type { NodeId } from '../../../game/model.ts';
import { chain } from '../../../spine/isotonic.ts';
import type { RescueNote } from '../content.ts';
import type { PlacedNote } from '../plan.ts';
import type { Geometry } from './geometry.ts';
import type { Part } from './part.ts';

/** Between two notes, in sizes of the type. */
const GAP = 0.7;

interface Wish {
  readonly note: RescueNote;
  /** Upper edge. */
  readonly y: number;
  readonly height: number;
}

export interface Notes {
  readonly placed: readonly PlacedNote[];
  /** What found no room. */
  readonly unplaced: readonly RescueNote[];
}

/** What fits into a column, the highest left out first. */
function fitting(wishes: readonly Wish[], gap: number, room: number): { kept: Wish[]; left: Wish[] } {
  const kept = [...wishes];
  const left: Wish[] = [];
  const whole = () => kept.reduce((sum, { height }) => sum + height + gap, -gap);
  while (kept.length > 0 && whole() > room) {
    const worst = kept.reduce((best, wish) => (wish.height >= best.height ? wish : best));
    kept.splice(kept.indexOf(worst), 1);
    left.push(worst);
  }
  return { kept, left };
}

/** `stepAt`: height at which the step stands, if it does in this part. */
export function notesOf(
  { content, notes, area }: Part,
  { metrics, notes: x }: Geometry,
  stepAt: (step: NodeId) => number | undefined,
): Notes {
  if (x === undefined) return { placed: [], unplaced: notes };
  const gap = GAP * metrics.size;
  const wishes = notes.map((note): Wish => {
    const y = note.steps.map(stepAt).find((at) => at !== undefined) ?? area.top;
    return { note, y, height: content.measureNote(note, metrics) };
  });
  const { kept, left } = fitting(wishes, gap, area.bottom - area.top);
  const heights = chain(
    kept.map(({ y }) => y),
    kept.map(({ height }) => height + gap),
    kept.map(() => 1),
    { low: area.top, high: area.bottom - (kept.at(-1)?.height ?? 0) },
  );
  return {
    placed: kept.map(({ note }, i) => ({ note, x, y: heights[i] ?? area.top })),
    unplaced: left.map(({ note }) => note),
  };
}
