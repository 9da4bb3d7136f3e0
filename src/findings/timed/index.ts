/** The findings from simulated lessons, in the order in which they are told. Adding one means adding a file and a line here. */
import { needlessStep } from './needless-step.ts';
import { oneAtATime } from './one-at-a-time.ts';
import { queueForAdult, queueForThing } from './queue.ts';
import { standAbout } from './stand-about.ts';
import type { TimedFinding, Timing } from './timed-finding.ts';
import { tooLong } from './too-long.ts';

export const TIMED_RULES = [
  tooLong,
  queueForThing,
  queueForAdult,
  oneAtATime,
  standAbout,
  needlessStep,
] as const;

export function timedFindings(timing: Timing): TimedFinding[] {
  return TIMED_RULES.flatMap((rule): readonly TimedFinding[] => rule.find(timing));
}

/** Whether it rests on the costs of steps, which take longer to work out than the rest. */
export function isLateFinding({ code }: TimedFinding): boolean {
  return code === 'needlessStep';
}
