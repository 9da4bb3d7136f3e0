/** What the form of a step says of it as simulated: when it is done, what it costs the lesson, who waits beside it. */
import { lessonsInTen } from './chance.ts';
import { minutes } from './numbers.ts';

export const SIMULATED = {
  heading: 'In simulated lessons',
  old: 'These two are from before the last change.',
};

/** Below this nobody notices: half a second. Minutes. */
const NOTHING = 0.5 / 60;

/** Minutes of play by which half, and nine in ten, of the teams are done with it; Infinity where fewer ever are. */
export function doneBy({ p10, median, p90 }: Readonly<Record<'p10' | 'median' | 'p90', number>>): string {
  if (!Number.isFinite(p10)) return 'Hardly any team does it: the game ends without it.';
  if (!Number.isFinite(median)) return 'Most teams never do it: the game ends without it.';
  const half = `Half of the teams are done with it within ${minutes(median)}`;
  return Number.isFinite(p90) ? `${half}, nine in ten within ${minutes(p90)}.` : `${half}; some never do it.`;
}

/** `cost`: minutes by which the game ends sooner when the step takes none. */
export function costsLesson(cost: number): string {
  return cost < NOTHING ? 'It costs the lesson no time.' : `It costs the lesson ${minutes(cost)}.`;
}

/** `share` of the lessons in which the step is on the chain that decides the end. */
export function decidesEnd(share: number): string {
  return `It decides the end in ${lessonsInTen(share)}.`;
}

/** `pupilMinutes` that one team spends waiting while the step is worked, queued for or checked. */
export function waitingBeside(pupilMinutes: number): string {
  return pupilMinutes < NOTHING
    ? 'Nobody waits while it is worked or queued for.'
    : `Waiting while it is worked or queued for: ${minutes(pupilMinutes)}, over all pupils of a team.`;
}
