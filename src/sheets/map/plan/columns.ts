/** Sides and order of the trays of a part, by the search of the spine. */
import { excessOf, runsOf } from '../../../spine/columns.ts';
import { search } from '../../../spine/search.ts';
import { type Columns, join } from '../../../spine/spine.ts';
import { BAR_GAP, measuring, spineOf, TRAY_GAP } from './blocks.ts';
import { homeColumns, homesOf } from './homes.ts';
import type { Part } from './part.ts';
import { geometryIn } from './place.ts';
import { neverDrawn } from './references.ts';
import { deal } from './shares.ts';

export interface Searching {
  readonly effort: number;
  readonly start?: Columns;
}

/** Better and better columns for a size of type; the last is the best that was found. */
export function* columnsOf(part: Part, size: number, options: Searching): Generator<Columns, Columns> {
  const measure = measuring(part, geometryIn(part, size).metrics);
  const told = neverDrawn(part, measure(new Set()));
  const measured = measure(told);
  const homes = homesOf(part);
  const joined = join({ ...spineOf(part, measured, told, size), homes });
  const start = options.start ?? homeColumns(part, homes);
  const searching = search(joined, { ...options, ...(start && { start }) });
  for (let step = searching.next(); ; step = searching.next()) {
    const { columns } = step.value;
    if (!step.done) {
      yield columns;
      continue;
    }
    if (excessOf(runsOf(joined, columns)) === 0) return columns;
    const bars = part.bars.length;
    const dealt = deal(
      part.trays.map((_, i) => bars + i),
      {
        height: part.area.bottom - part.area.top,
        gap: TRAY_GAP * size,
        heightOf: (block) => measured.heights[block] ?? 0,
      },
    );
    return dealt ? { left: dealt[0] ?? [], spine: columns.spine, right: dealt[1] ?? [] } : columns;
  }
}

/** Heights of the blocks when nothing but what can never be drawn is told. */
function leastHeights(part: Part, size: number): readonly number[] {
  const measure = measuring(part, geometryIn(part, size).metrics);
  return measure(neverDrawn(part, measure(new Set()))).heights;
}

/** False when bars or trays are too high for their columns, wherever each tray stands. */
export function mayFit(part: Part, size: number): boolean {
  const heights = leastHeights(part, size);
  const { area, bars } = part;
  const room = area.bottom - area.top;
  const whole = (from: number, to: number, gap: number) =>
    heights.slice(from, to).reduce((sum, height) => sum + height + gap, -gap);
  return (
    whole(0, bars.length, BAR_GAP * size) <= room &&
    whole(bars.length, heights.length, TRAY_GAP * size) <= 2 * room + TRAY_GAP * size &&
    heights.every((height) => height <= room)
  );
}

/** Some tray is higher than the part, so that no cut between bars helps. */
export function hasTallTray(part: Part, size: number): boolean {
  const room = part.area.bottom - part.area.top;
  return leastHeights(part, size).some((height, block) => block >= part.bars.length && height > room);
}
