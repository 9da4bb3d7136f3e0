/** In a typical lesson there is hardly a minute with two things to do: whoever does not hold the pencil watches. */
import type { RunLog } from '../../engine/simulation/model.ts';
import type { TimedRule } from './timed-finding.ts';

export interface OneAtATime {
  /** Of a typical lesson: with just one step to be worked, and in all. */
  readonly alone: number;
  readonly end: number;
  readonly team: number;
}

/** Part of the lesson, steps and pupils from which on it is worth saying. Common practice, no source. */
const NEARLY_ALL = 0.85;
const FEWEST_STEPS = 4;
const FEWEST_PUPILS = 3;

/** Minutes of a run in which just one step could be worked or was. When there is none, pupils wait for something else: a check, a minute. */
export function minutesAlone({ possible, free, end }: RunLog, isStep: Uint8Array): number {
  const events: { readonly minute: number; readonly change: number }[] = [];
  isStep.forEach((step, i) => {
    const from = possible[i] ?? end;
    const to = Math.min(free[i] ?? end, end);
    if (step !== 1 || !(from < to)) return;
    events.push({ minute: from, change: 1 }, { minute: to, change: -1 });
  });
  events.sort((a, b) => a.minute - b.minute);
  let alone = 0;
  let open = 0;
  let last = 0;
  for (const { minute, change } of events) {
    if (open === 1) alone += minute - last;
    open += change;
    last = minute;
  }
  return alone;
}

export const oneAtATime: TimedRule<'oneAtATime', OneAtATime> = {
  code: 'oneAtATime',
  find({ clock, simulated }) {
    const { team, typical } = simulated;
    const { isStep } = clock.network;
    const worked = isStep.reduce(
      (sum, step, i) => sum + (step === 1 && Number.isFinite(typical.begin[i]) ? 1 : 0),
      0,
    );
    if (team < FEWEST_PUPILS || worked < FEWEST_STEPS) return [];
    const alone = minutesAlone(typical, isStep);
    if (alone < NEARLY_ALL * typical.end) return [];
    const values = { alone, end: typical.end, team };
    return [{ code: 'oneAtATime', level: 'look', nodes: [], links: [], values }];
  },
};
