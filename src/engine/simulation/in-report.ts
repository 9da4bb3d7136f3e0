/**
 * What the headless report says of simulated lessons, by the plain model. What a large game may cost is counted, never timed: in nodes times runs
 * for the batch, and times steps for the costs. Up to 600 nodes the figures rest on 2,000 runs, and up to 50 steps in 100 nodes the costs too.
 */
import type { Game } from '../../game/model.ts';
import { lastOf } from '../../last-of.ts';
import type { Network } from '../network.ts';
import { reach } from '../reach.ts';
import { Batch, RUNS } from './batch.ts';
import { type Clock, clockOf } from './clock.ts';
import { allCosts, type StepCosts } from './costs.ts';
import type { Simulated } from './model.ts';
import { PLAIN } from './rules.ts';

const BATCH_BUDGET = 1_200_000;
const COST_BUDGET = 10_000_000;
/** With fewer runs a figure says little; then it is left out. */
const FEWEST_RUNS = 100;

export interface PlainFigures {
  readonly clock: Clock;
  readonly simulated: Simulated;
  /** Undefined where the costs are left out. */
  readonly costs: StepCosts | undefined;
  /** Runs that the costs rest on; 0 where they are left out. */
  readonly costRuns: number;
}

/** Only of a game that can be won. */
export function plainFigures(game: Game, network: Network): PlainFigures {
  const clock = clockOf(game, network);
  const batch = new Batch(clock, PLAIN);
  batch.run(Math.max(FEWEST_RUNS, affordable(BATCH_BUDGET, network.size)));
  const simulated = batch.result();
  const reached = reach(network);
  const steps = network.isStep.reduce((sum, isStep, node) => sum + isStep * (reached[node] ?? 0), 0);
  const costRuns = Math.min(simulated.runs, affordable(COST_BUDGET, steps * network.size));
  if (costRuns < FEWEST_RUNS) return { clock, simulated, costs: undefined, costRuns: 0 };
  return { clock, simulated, costs: lastOf(allCosts(clock, PLAIN, costRuns)), costRuns };
}

function affordable(budget: number, work: number): number {
  return Math.min(RUNS, Math.floor(budget / Math.max(1, work)));
}
