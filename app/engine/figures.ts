/** What the simulation computes, in the worker or, where none runs, on the page: figures, better and more of them after fewer. */
import { criticalChain } from '../../src/engine/critical-chain.ts';
import { Batch, canPlay, RUNS } from '../../src/engine/simulation/batch.ts';
import type { Clock } from '../../src/engine/simulation/clock.ts';
import { allCosts, type StepCosts } from '../../src/engine/simulation/costs.ts';
import { type Figures, WAYS } from '../../src/engine/simulation/figures.ts';
import { type Rules, statedRules } from '../../src/engine/simulation/rules.ts';
import { timedFindings } from '../../src/findings/timed/index.ts';
import type { TimedFinding } from '../../src/findings/timed/timed-finding.ts';
import { hintsAsked } from './hints-asked.ts';

/** Numbers of runs. */
export interface Effort {
  /** Of the first answer. */
  readonly coarse: number;
  readonly runs: number;
}

export const IN_A_WORKER: Effort = { coarse: 200, runs: RUNS };
/** The page may not stand still, and is slowed down all the while. */
export const ON_THE_PAGE: Effort = { coarse: 100, runs: 500 };

export interface FiguresAnswer {
  readonly figures: Omit<Figures, 'clock'>;
  readonly findings: readonly TimedFinding[];
}

/**
 * Answers to one question about a game that can be won. Undefined: nothing new yet, and who works may breathe.
 *
 * @param whole the game with everything used that is left out today
 */
export function* figuresOf(
  clock: Clock,
  { coarse, runs }: Effort,
  whole?: Clock,
): Generator<FiguresAnswer | undefined> {
  const rules = statedRules(clock);
  const batch = new Batch(clock, rules);
  const answer = (figures: Figures): FiguresAnswer => {
    const { clock: _, ...told } = figures;
    return { figures: told, findings: timedFindings(figures) };
  };

  yield* batch.runInSlices(coarse);
  const nothingMore = { whole: undefined, costs: undefined, byHints: undefined, byChoosing: undefined };
  const chain = criticalChain(clock.network);
  yield answer({ clock, simulated: batch.result(), coarse: true, chain, ...nothingMore });
  yield* batch.runInSlices(runs - coarse);
  const simulated = batch.result();
  const own: Figures = { clock, simulated, coarse: false, chain, ...nothingMore };
  yield answer(own);
  const inTime = whole && canPlay(whole.network) ? yield* chance(whole, statedRules(whole), runs) : undefined;
  const fine: Figures = inTime === undefined ? own : { ...own, whole: { inTime } };
  if (fine !== own) yield answer(fine);
  const costs = yield* costsIn(clock, rules, runs);
  yield answer({ ...fine, costs });

  const chances = yield* chancesByHints(clock, rules, simulated.inTime, runs);
  yield answer({ ...fine, costs, byHints: chances });

  const byChoosing: number[] = [simulated.inTime];
  for (const choosing of WAYS.slice(1)) byChoosing.push(yield* chance(clock, { ...rules, choosing }, runs));
  yield answer({ ...fine, costs, byHints: chances, byChoosing });
}

/**
 * Chances with 0, 1, 2 … hints. Whoever gives hints looks after all teams, so these lessons are played by all of them; what hints add there, on
 * like draws, is added to the chance that is told without them (a control variate), so that chance noise does not pass for an effect.
 */
function* chancesByHints(
  clock: Clock,
  rules: Rules,
  withoutAny: number,
  runs: number,
): Generator<undefined, number[]> {
  const { teams } = clock.lesson;
  const most = hintsAsked(clock);
  const chances = [withoutAny];
  if (most === 0) return chances;
  const played = (hints: number) => chance(clock, { ...rules, hints, teams }, Math.ceil(runs / teams));
  const none = yield* played(0);
  for (let hints = 1; hints <= most; hints++) {
    const gained = (yield* played(hints)) - none;
    chances.push(Math.min(1, Math.max(0, withoutAny + gained)));
  }
  return chances;
}

/**
 * Steps that may be played in all for the costs: each step asks for every run anew, so that the work grows with the square of their number.
 * Very large games are costed from fewer runs.
 */
const STEPS_PLAYED = 200_000_000;
const LEAST_RUNS = 20;

function costsIn(clock: Clock, rules: Rules, runs: number): Generator<undefined, StepCosts> {
  const steps = clock.network.isStep.reduce((sum, step) => sum + step, 0);
  const affordable = Math.floor(STEPS_PLAYED / (steps * steps * rules.teams + 1));
  return allCosts(clock, rules, Math.min(runs, Math.max(LEAST_RUNS, affordable)));
}

function* chance(clock: Clock, rules: Rules, runs: number): Generator<undefined, number> {
  const batch = new Batch(clock, rules);
  yield* batch.runInSlices(runs);
  return batch.result().inTime;
}
