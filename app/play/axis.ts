/** The scale of minutes under the chart. */

export interface Axis {
  /** Minutes at the right end. */
  readonly span: number;
  /** Minutes that are written. */
  readonly ticks: readonly number[];
  /** The bell lies beyond the right end: it is then only told. */
  readonly bellBeyond: boolean;
}

/** A lesson so many times longer than the game would press the game into a corner. */
const MOST_EMPTY = 3;
const STEPS = [0.1, 0.2, 0.5, 1, 2, 5, 10, 15, 20, 30, 60, 120, 240, 480];
/** Pixels between two figures. */
const APART = 56;

/**
 * From 0 to the bell, or as far as the lesson and its spread reach.
 * @param latest the last minute of anything that is drawn
 * @param width in pixels
 */
export function axisOf(latest: number, bell: number, width: number): Axis {
  const needed = Math.max(latest, 0.1);
  const bellBeyond = bell > MOST_EMPTY * needed;
  const span = bellBeyond ? needed : Math.max(needed, bell);
  const most = Math.max(1, Math.floor(width / APART));
  const step = STEPS.find((minutes) => span / minutes <= most) ?? roundUp(span / most);
  const ticks = Array.from({ length: Math.floor(span / step + 1e-9) + 1 }, (_, i) => round(i * step));
  return { span, ticks, bellBeyond };
}

/** The next of 1, 2 or 5 times a power of ten. */
function roundUp(minutes: number): number {
  const unit = 10 ** Math.floor(Math.log10(minutes));
  return unit * (minutes <= unit ? 1 : minutes <= 2 * unit ? 2 : minutes <= 5 * unit ? 5 : 10);
}

const round = (minutes: number) => Math.round(minutes * 10) / 10;
