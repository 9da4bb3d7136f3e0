/** Rescue lines at the outer edges, each beside the first of its steps as far as the others let it: the same least squares under a chain. */
import { byCodePoint } from '../../../game/compare.ts';
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

/** Each to the column that is filled less far down, from the top. */
function columnsOf(wishes: readonly Wish[], count: number, gap: number): Wish[][] {
  const columns = Array.from({ length: count }, () => ({
    wishes: [] as Wish[],
    end: Number.NEGATIVE_INFINITY,
  }));
  for (const wish of wishes) {
    const column = columns.reduce((best, other) => (other.end < best.end ? other : best));
    column.end = Math.max(column.end + gap, wish.y) + wish.height;
    column.wishes.push(wish);
  }
  return columns.map((column) => column.wishes);
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
  { metrics, notes: edges }: Geometry,
  stepAt: (step: string) => number | undefined,
): Notes {
  if (edges.length === 0) return { placed: [], unplaced: notes };
  const gap = GAP * metrics.size;
  const wishes = notes
    .map((note): Wish => {
      const y = note.steps.map(stepAt).find((at) => at !== undefined) ?? area.top;
      return { note, y, height: content.measureNote(note, metrics) };
    })
    .sort((a, b) => a.y - b.y || byCodePoint(a.note.key, b.note.key));
  const placed: PlacedNote[] = [];
  const unplaced: RescueNote[] = [];
  for (const [i, column] of columnsOf(wishes, edges.length, gap).entries()) {
    const { kept, left } = fitting(column, gap, area.bottom - area.top);
    const last = kept.at(-1)?.height ?? 0;
    const heights = chain(
      kept.map(({ y }) => y),
      kept.map(({ height }) => height + gap),
      kept.map(() => 1),
      { low: area.top, high: area.bottom - last },
    );
    for (const [k, { note }] of kept.entries()) {
      placed.push({ note, x: edges[i] ?? area.x, y: heights[k] ?? area.top });
    }
    unplaced.push(...left.map(({ note }) => note));
  }
  return { placed, unplaced };
}
