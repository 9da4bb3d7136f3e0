/**
 * Three estimates made from fewer figures: from one number by the spread that is usual, or from a width that a hand on a slider gives.
 * Spread = high less low. Its share below the likely time stays as it is while a spread is widened, until the low estimate is 0.
 */
import { defaultMinutes } from './defaults.ts';
import type { Estimate, GameNode } from './model.ts';

/** For kinds that take no time by themselves: as a puzzle (common practice, no source). */
const OTHERWISE: Estimate = { low: 3, likely: 5, high: 10 };
/** So many times the likely time is the widest spread where the low estimate sets no end to it. */
const WIDEST = 10;

/** The estimates of which a kind has its usual ratios; never of no time. */
export function usualEstimate(node: GameNode): Estimate {
  const usual = defaultMinutes(node);
  return usual.likely > 0 ? usual : OTHERWISE;
}

/** Another likely time with the ratios of `base`, or of `usual` where that has no likely time. Whole seconds, but for `likely` itself. */
export function aroundLikely(likely: number, base: Estimate, usual: Estimate): Estimate {
  const by = base.likely > 0 ? base : usual;
  const scaled = (minutes: number) => Math.round((minutes / by.likely) * likely * 60) / 60;
  return {
    low: Math.min(likely, scaled(by.low)),
    likely,
    high: Math.max(likely, scaled(by.high)),
  };
}

/** `below`: share of the spread that is below the likely time. `most`: the widest spread, in likely times. */
interface Shape {
  readonly below: number;
  readonly most: number;
  readonly spread: number;
}

function shapeOf(estimate: Estimate, usual: Estimate): Shape {
  const { low, likely, high } = estimate;
  const { low: from, likely: middle, high: to } = high > low ? estimate : usual;
  const below = to > from ? (middle - from) / (to - from) : 0;
  const spread = (high - low) / likely;
  return { below, spread, most: Math.max(spread, Math.min(WIDEST, 1 / below)) };
}

/** How wide the spread is: 0 for always the same, 1 for as wide as it can be around this likely time. The likely time is above 0. */
export function widthOf(estimate: Estimate, usual: Estimate): number {
  const { spread, most } = shapeOf(estimate, usual);
  return most > 0 ? spread / most : 0;
}

/** The same likely time with a spread of that width (0 to 1), to seconds that can be told. */
export function withWidth(estimate: Estimate, usual: Estimate, width: number): Estimate {
  const { likely } = estimate;
  const { below, most } = shapeOf(estimate, usual);
  const spread = width * most * likely;
  const under = below * spread;
  const over = spread - under;
  return {
    low: under > 0 ? Math.max(0, Math.min(likely, rounded(likely - under))) : likely,
    likely,
    high: over > 0 ? Math.max(likely, rounded(likely + over)) : likely,
  };
}

/** Nobody estimates 4 minutes 37: the longer, the rounder. Minutes. */
function rounded(minutes: number): number {
  const seconds = minutes * 60;
  const unit = seconds < 20 ? 1 : seconds < 120 ? 5 : seconds < 600 ? 15 : seconds < 3600 ? 60 : 300;
  return (Math.round(seconds / unit) * unit) / 60;
}
