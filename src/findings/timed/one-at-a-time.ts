/** In a typical lesson there is hardly a minute with two things to do, and pupils wait meanwhile: whoever does not hold the pencil watches. */
import { rowOf } from '../../engine/rows.ts';
import type { Clock } from '../../engine/simulation/clock.ts';
import type { RunLog } from '../../engine/simulation/model.ts';
import { planOf } from '../../engine/simulation/plan.ts';
import type { TimedRule } from './timed-finding.ts';

export interface OneAtATime {
  /** Of a typical lesson: with just one step to be worked, and in all. */
  readonly alone: number;
  readonly end: number;
  readonly team: number;
}

/** Part of the lesson, of the team's time spent waiting meanwhile, steps and pupils from which on it is worth saying. Common practice, no source. */
const NEARLY_ALL = 0.85;
const MUCH_WAITING = 0.25;
const FEWEST_STEPS = 4;
const FEWEST_PUPILS = 3;

export interface Alone {
  /** Minutes of a run in which a step is worked and no other could be. */
  readonly minutes: number;
  /** Pupil-minutes spent waiting in them. */
  readonly waiting: number;
}

/**
 * Where the one step that could be taken up is not worked, pupils wait for something else, such as a thing that teams share: then there is nothing to do.
 * A step passed over is nothing to do either.
 */
export function aloneIn(clock: Clock, log: RunLog): Alone {
  const { end, possible, begin, free, pupils } = log;
  const { isStep } = clock.network;
  const passedOver = passedOverFrom(clock, log);
  const events: { readonly minute: number; readonly open: number; readonly worked: number }[] = [];
  const between = (from: number, to: number, open: number, worked: number) => {
    if (!(from < Math.min(to, end))) return;
    events.push({ minute: from, open, worked }, { minute: Math.min(to, end), open: -open, worked: -worked });
  };
  isStep.forEach((step, i) => {
    if (step !== 1) return;
    const begun = begin[i] ?? Number.POSITIVE_INFINITY;
    between(possible[i] ?? end, Math.min(begun, passedOver[i] ?? end), 1, 0);
    between(begun, free[i] ?? end, 0, pupils[i] ?? 0);
  });
  events.sort((a, b) => a.minute - b.minute);
  let minutes = 0;
  let waiting = 0;
  let open = 0;
  let working = 0;
  let busy = 0;
  let last = 0;
  for (const { minute, open: opened, worked } of events) {
    if (open === 0 && working === 1) {
      minutes += minute - last;
      waiting += (minute - last) * (clock.lesson.team - busy);
    }
    open += opened;
    working += Math.sign(worked);
    busy += worked;
    last = minute;
  }
  return { minutes, waiting };
}

/** By step: from when on all that follows it has been reached; Infinity where nothing follows it. */
function passedOverFrom(clock: Clock, { reached }: RunLog): Float64Array {
  const { followers, follows } = planOf(clock);
  const from = Float64Array.from(followers, (count) => (count > 0 ? 0 : Number.POSITIVE_INFINITY));
  for (let node = 0; node < clock.network.size; node++) {
    for (const step of rowOf(follows, node)) {
      from[step] = Math.max(from[step] ?? 0, reached[node] ?? Number.POSITIVE_INFINITY);
    }
  }
  return from;
}

export const oneAtATime: TimedRule<'oneAtATime', OneAtATime> = {
  code: 'oneAtATime',
  find({ clock, simulated }) {
    const { team, typical } = simulated;
    const { end } = typical;
    const worked = clock.network.isStep.reduce(
      (sum, step, i) => sum + (step === 1 && Number.isFinite(typical.begin[i]) ? 1 : 0),
      0,
    );
    if (team < FEWEST_PUPILS || worked < FEWEST_STEPS) return [];
    const { minutes: alone, waiting } = aloneIn(clock, typical);
    if (alone < NEARLY_ALL * end || waiting < MUCH_WAITING * team * end) return [];
    const values = { alone, end, team };
    return [{ code: 'oneAtATime', level: 'look', nodes: [], links: [], values }];
  },
};
