/** Fewer than half of the simulated lessons end within the lesson's minutes. */
import type { TimedRule } from './timed-finding.ts';

export interface TooLong {
  /** Share of the runs in time. */
  readonly inTime: number;
  readonly median: number;
  /** Of play. */
  readonly lesson: number;
}

/** Share of lessons that should end before the bell. Common practice, no source. */
export const OFTEN_ENOUGH = 0.5;

export const tooLong: TimedRule<'tooLong', TooLong> = {
  code: 'tooLong',
  find({ clock, simulated }) {
    const { inTime, median } = simulated;
    const lesson = clock.lesson.minutes;
    // A lesson of no minutes is a finding of its own.
    if (lesson === 0 || inTime >= OFTEN_ENOUGH) return [];
    return [{ code: 'tooLong', level: 'look', nodes: [], links: [], values: { inTime, median, lesson } }];
  },
};
