/** A part at one size of type: heights, lines, and what is told instead, until nothing is wrong any more. */
import type { LinkId } from '../../../game/model.ts';
import type { Side } from '../../../map/layout.ts';
import { excessOf, packed, runsOf, settle } from '../../../spine/columns.ts';
import { type Columns, join } from '../../../spine/spine.ts';
import type { MapContent, RescueNote, Tellings } from '../content.ts';
import type { PlannedPart } from '../plan.ts';
import { type Measured, measuring, rungsOf, spineOf } from './blocks.ts';
import { type Geometry, geometryOf } from './geometry.ts';
import { draw, type Lines } from './lines.ts';
import { type Notes, notesOf } from './notes.ts';
import type { Part } from './part.ts';
import { lengthsOf, neverDrawn, tooMuch } from './references.ts';
import { snap } from './snap.ts';

const ROUNDS = 30;
const TURNS = 8;
const ROUNDS_EACH = 5;

export interface Placed {
  readonly part: PlannedPart;
  readonly tellings: Tellings;
  readonly told: ReadonlySet<LinkId>;
  /** Rescue lines that found no room. */
  readonly unplaced: readonly RescueNote[];
  /** Lengths of all lines. */
  readonly length: number;
  /** Bars in which an answer is broken that should not be. */
  readonly broken: number;
}

/** All upper edges moved so that the highest is at the top. */
function toTop({ area }: Part, y: Float64Array): void {
  const up = y.reduce((least, value) => Math.min(least, value), Number.POSITIVE_INFINITY) - area.top;
  for (let i = 0; i < y.length; i++) y[i] = (y[i] ?? 0) - up;
}

const leastBars = new WeakMap<MapContent, Map<number, number>>();

/** Bars are as wide in all parts, so that no page looks unlike the others. */
function leastBarOf(content: MapContent, size: number): number {
  const sizes = leastBars.get(content) ?? new Map<number, number>();
  leastBars.set(content, sizes);
  const known = sizes.get(size);
  if (known !== undefined) return known;
  const least = content.bars.reduce((most, id) => Math.max(most, content.leastBarWidth(id, size)), 0);
  sizes.set(size, least);
  return least;
}

export const geometryIn = ({ area, content }: Part, size: number): Geometry =>
  geometryOf(area, size, leastBarOf(content, size));

/**
 * Heights that are nearest to where the lines lead. A line may meet a bar anywhere between two heights, so it is first
 * pulled to the middle of them, then, in turn with the heights, to the nearest: what can be level becomes level.
 */
function heightsOf(
  part: Part,
  measured: Measured,
  told: ReadonlySet<LinkId>,
  size: number,
  columns: Columns,
  before: Float64Array | undefined,
): { y: Float64Array; excess: number } {
  const joined = join(spineOf(part, measured, told, size));
  const runs = runsOf(joined, columns);
  const y = before ?? packed(joined, runs);
  const excess = excessOf(runs);
  settle(joined, runs, y, ROUNDS);
  for (let turn = 0; turn < TURNS; turn++) {
    settle(join(spineOf(part, measured, told, size, y)), runs, y, ROUNDS_EACH);
  }
  snap(joined.spine, columns, rungsOf(part, measured, told), y);
  toTop(part, y);
  return { y, excess };
}

/** Undefined when it does not fit, unless `anyway`: then it is higher than its area. */
export function place(part: Part, size: number, columns: Columns, anyway = false): Placed | undefined {
  const geometry = geometryIn(part, size);
  const measure = measuring(part, geometry.metrics);
  const sides = new Map<number, Side>();
  for (const side of ['left', 'right'] as const) for (const block of columns[side]) sides.set(block, side);
  const told = neverDrawn(part, measure(new Set()));
  let y: Float64Array | undefined;
  for (;;) {
    const measured = measure(told);
    const settled = heightsOf(part, measured, told, size, columns, y);
    if (!anyway && settled.excess > 0) return undefined;
    y = settled.y;
    const lengths = lengthsOf(part, measured, told, y);
    let worst = tooMuch(part, lengths);
    let lines: Lines | undefined;
    if (worst.length === 0) {
      lines = draw({ part, measured, drawn: lengths.map(({ link }) => link), y, sides }, geometry);
      if (lines.worst !== undefined) worst = [lines.worst];
    }
    for (const link of worst) told.add(link);
    if (worst.length > 0 || !lines) continue;
    const at = y;
    const notes = notesOf(part, geometry, (step) => {
      const end = measured.ends.get(step);
      return end && (at[end.block] ?? 0) + (end.block < part.bars.length ? 0 : end.y - size);
    });
    const length = lengths.reduce((sum, line) => sum + line.length, 0);
    return {
      part: planned(part, geometry, sides, y, lines, notes),
      tellings: measured.tellings,
      told,
      unplaced: notes.unplaced,
      length,
      broken: part.bars.filter((id) => part.content.leastBarWidth(id, size) > geometry.metrics.barWidth)
        .length,
    };
  }
}

function planned(
  part: Part,
  geometry: Geometry,
  sides: ReadonlyMap<number, Side>,
  y: Float64Array,
  { lines }: Lines,
  { placed }: Notes,
): PlannedPart {
  const bars = part.bars.length;
  return {
    metrics: geometry.metrics,
    bars: part.bars.map((id, i) => ({ id, x: geometry.bar, y: y[i] ?? 0 })),
    trays: part.trays.map((tray, i) => {
      const side = sides.get(bars + i) ?? 'left';
      return { tray, side, x: geometry.trays[side], y: y[bars + i] ?? 0 };
    }),
    lines,
    notes: placed,
    x: part.area.x,
    width: part.area.width,
  };
}
