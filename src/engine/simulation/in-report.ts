/**
 * What the headless report says of simulated lessons, by the plain model. What a large game may cost is counted, never timed: in nodes times runs
 * for the batch, and times steps for the costs. Up to 600 nodes the figures rest on 2,000 runs, and up to 50 steps in 100 nodes the costs too.
 */
import type { Game } from '../../game/model.ts';
import type { Network } from '../network.ts';
import { reach } from '../reach.ts';
import { Batch, RUNS } from './batch.ts';
import { clockOf } from './clock.ts';
import { costsOf } from './costs.ts';
import { PLAIN } from './rules.ts';

const BATCH_BUDGET = 1_200_000;
const COST_BUDGET = 10_000_000;
/** With fewer runs a figure says little; then it is left out. */
const FEWEST_RUNS = 100;

export interface SimulatedFigures {
  readonly runs: number;
  /** 0 where the costs are left out. */
  readonly costRuns: number;
  readonly ends: {
    readonly median: number;
    readonly p10: number;
    readonly p90: number;
    readonly chanceInTime: number;
  };
  /** Pupil-minutes of one team, mean over the runs; and while a step was being worked, by node. */
  readonly idle: number;
  readonly idleWhile: Float64Array;
  /** By node, in minutes. */
  readonly cost?: Float64Array;
}

/** Only of a game that can be won. */
export function simulatedFigures(game: Game, network: Network): SimulatedFigures {
  const clock = clockOf(game, network);
  const batch = new Batch(clock, PLAIN);
  batch.run(Math.max(FEWEST_RUNS, affordable(BATCH_BUDGET, network.size)));
  const { runs, median, p10, p90, inTime, idle, idleWhile } = batch.result();
  const reached = reach(network);
  const steps = network.isStep.reduce((sum, isStep, node) => sum + isStep * (reached[node] ?? 0), 0);
  const costRuns = Math.min(runs, affordable(COST_BUDGET, steps * network.size));
  const ends = { median, p10, p90, chanceInTime: inTime };
  if (costRuns < FEWEST_RUNS) return { runs, costRuns: 0, ends, idle, idleWhile };
  const cost = new Float64Array(network.size);
  for (const each of costsOf(clock, PLAIN, costRuns)) {
    if (each !== undefined) cost[each.step] = each.cost;
  }
  return { runs, costRuns, ends, idle, idleWhile, cost };
}

function affordable(budget: number, work: number): number {
  return Math.min(RUNS, Math.floor(budget / Math.max(1, work)));
}
