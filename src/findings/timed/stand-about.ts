/**
 * More than half of a team has nothing to do while something is being worked, for minutes. One finding, with all such steps.
 * Queues have findings of their own (queue.ts).
 */
import type { NodeId } from '../../game/model.ts';
import type { TimedRule } from './timed-finding.ts';
import { idleAtWork, waitersWhile } from './waiters.ts';

export interface StandAbout {
  /** The one with the most waiting first. */
  readonly steps: readonly NodeId[];
  /** Of the first: expected minutes of work, and how many wait meanwhile. */
  readonly minutes: number;
  readonly waiting: number;
  readonly team: number;
}

const HALF = 0.5;
/** Minutes of waiting that children bear. Common practice, no source. */
const BEARABLE = 3;

export const standAbout: TimedRule<'standAbout', StandAbout> = {
  code: 'standAbout',
  find(figures) {
    const { ids, minutes } = figures.clock.network;
    const { team } = figures.simulated;
    // Of the mean, and of the whole pupils as which it is told.
    const isMoreThanHalf = (pupils: number) => Math.min(pupils, Math.round(pupils)) > HALF * team;
    // In whole minutes, so that the order of steps alike does not hang on chance.
    const idle = (step: number) => Math.round(idleAtWork(figures, step));
    const steps = [...ids.keys()]
      .filter((step) => figures.clock.forFun[step] !== 1)
      .filter((step) => (minutes[step] ?? 0) > BEARABLE && isMoreThanHalf(waitersWhile(figures, step)))
      .sort((a, b) => idle(b) - idle(a) || a - b);
    const [worst] = steps;
    if (worst === undefined) return [];
    const nodes = steps.map((step) => ids[step] ?? '');
    const values = {
      steps: nodes,
      minutes: minutes[worst] ?? 0,
      waiting: waitersWhile(figures, worst),
      team,
    };
    return [{ code: 'standAbout', level: 'look', nodes, links: [], values }];
  },
};
