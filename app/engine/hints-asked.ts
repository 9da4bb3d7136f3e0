import type { Clock } from '../../src/engine/simulation/clock.ts';

/** Chances are told for so many hints at least, and at most. */
const LEAST_HINTS = 3;
const MOST_HINTS = 8;

/** Hints for which a chance is told, from 0 up to this: as many as the lesson has. */
export function hintsAsked({ lesson }: Pick<Clock, 'lesson'>): number {
  return Math.min(MOST_HINTS, Math.max(LEAST_HINTS, lesson.hints));
}
