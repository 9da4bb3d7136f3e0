/** A file that is refused, and how much of one is looked at. */
import type { KitProblem, KitReading } from './problem.ts';

/** In UTF-16 units: ten thousand things with long notes. */
export const MAX_KIT_LENGTH = 5_000_000;
/** Of items, and of places. No school has more, and every one of them is compared with all others. */
export const MOST_THINGS = 2000;
/** So many problems are told; the rest are counted. */
const MOST_PROBLEMS = 50;

export interface ReadKitOptions {
  /** For what comes without an id. */
  readonly newId: () => string;
}

export function refusal(...problems: readonly KitProblem[]): KitReading {
  return {
    ok: false,
    problems: problems.slice(0, MOST_PROBLEMS),
    more: Math.max(0, problems.length - MOST_PROBLEMS),
  };
}
