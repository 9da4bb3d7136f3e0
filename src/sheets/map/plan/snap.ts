/** Lines that are almost level are made level, where a bar or a tray has room to move a little and no level line is bent by it. */
import type { Columns, Spine } from '../../../spine/spine.ts';
import type { Range } from './blocks.ts';

/** Bends lower than this, in sizes of the type, look like a slip. */
const SLIP = 0.8;
const PASSES = 3;
const LEVEL = 1e-6;

export interface Rung {
  readonly bar: number;
  readonly tray: number;
  /** Height of the row in the tray. */
  readonly row: number;
  /** Where lines may meet the bar. */
  readonly range: Range;
}

/** How far a bar would have to move down for the line to be level; 0 when it is. */
function offOf({ bar, tray, row, range }: Rung, y: Float64Array): number {
  const at = (y[tray] ?? 0) + row - (y[bar] ?? 0);
  return at < range.low ? at - range.low : at > range.high ? at - range.high : 0;
}

/** Between which heights each block can stand, its neighbours held. */
function roomOf(spine: Spine, columns: Columns, y: Float64Array): (block: number) => Range {
  const above = new Map<number, number>();
  const below = new Map<number, number>();
  const band = new Map<number, Range>();
  for (const column of ['left', 'spine', 'right'] as const) {
    const { top = 0, bottom = Number.POSITIVE_INFINITY } = spine.bands?.[column] ?? {};
    for (const [i, block] of columns[column].entries()) {
      const next = columns[column][i + 1];
      band.set(block, { low: top, high: bottom });
      if (next === undefined) continue;
      above.set(next, block);
      below.set(block, next);
    }
  }
  const height = (block: number) => spine.blocks[block]?.height ?? 0;
  return (block) => {
    const { low = 0, high = 0 } = band.get(block) ?? {};
    const [up, down] = [above.get(block), below.get(block)];
    return {
      low: up === undefined ? low : (y[up] ?? 0) + height(up) + spine.gap(up, block),
      high: (down === undefined ? high : (y[down] ?? 0) - spine.gap(block, down)) - height(block),
    };
  };
}

/** Changes y in place. */
export function snap(spine: Spine, columns: Columns, rungs: readonly Rung[], y: Float64Array): void {
  const room = roomOf(spine, columns, y);
  const at = spine.blocks.map((): Rung[] => []);
  for (const rung of rungs) {
    at[rung.bar]?.push(rung);
    at[rung.tray]?.push(rung);
  }
  const isLevel = (rung: Rung) => Math.abs(offOf(rung, y)) < LEVEL;
  const move = (block: number, by: number): boolean => {
    const before = y[block] ?? 0;
    const { low, high } = room(block);
    if (before + by < low - LEVEL || before + by > high + LEVEL) return false;
    const level = (at[block] ?? []).filter(isLevel);
    y[block] = before + by;
    if (level.every(isLevel)) return true;
    y[block] = before;
    return false;
  };
  for (let pass = 0; pass < PASSES; pass++) {
    for (const rung of rungs) {
      const off = offOf(rung, y);
      if (Math.abs(off) < LEVEL || Math.abs(off) > SLIP * spine.unit) continue;
      if (!move(rung.bar, off)) move(rung.tray, -off);
    }
  }
}
