/**
 * What each step costs: the mean over the runs of the end less the end of the same run with that step's time 0, all other draws alike. It counts
 * what drag cannot: few hands, ties, spread. Below 0 where a step that takes longer lets pupils choose better (Graham 1969).
 * Method: all runs are played once, and for each step once more those in which it was begun: any other ends as it did. Cost: steps times runs.
 */
import type { Index } from '../measures.ts';
import { reach } from '../reach.ts';
import { RUNS, STREAM } from './batch.ts';
import type { Clock } from './clock.ts';
import { Decision } from './decision.ts';
import { Player } from './play.ts';
import { PLAIN, type Rules } from './rules.ts';

export interface StepCost {
  readonly step: Index;
  /** Minutes. */
  readonly cost: number;
  /** Share of runs in which it stands on the chain that decides the end, 0 to 1. */
  readonly decides: number;
}

/** Gathered; arrays have one entry for each node of the network. */
export interface StepCosts {
  /** Minutes by which the game ends sooner when the step takes no time, mean over the runs; may be below 0. */
  readonly minutes: Float64Array;
  /** Share of the runs in which the step is on the chain that decides the end. */
  readonly decides: Float64Array;
}

/** Nodes that are played before the generator lets its caller breathe. */
const NODES_AT_A_TIME = 20_000;

/**
 * One reached step after the other, by index, and undefined in between, when the caller may look for something else to do. Only of a game that can
 * be won. Where several teams are played, the mean over them.
 */
export function* costsOf(
  clock: Clock,
  rules: Rules = PLAIN,
  runs = RUNS,
  stream = STREAM,
): Generator<StepCost | undefined, void> {
  const { network } = clock;
  const { size } = network;
  const isReached = reach(network);
  const player = new Player(clock, rules, stream);
  const { teams } = player;
  const decision = new Decision(clock);
  /** By run: the sum of the ends of all teams. */
  const ends = new Float64Array(runs);
  /** By step and run: 1 where some team began it. */
  const isBegun = new Uint8Array(size * runs);
  const decides = new Int32Array(size);
  const atATime = Math.max(1, Math.floor(NODES_AT_A_TIME / (size * teams + 1)));
  let played = 0;
  for (let run = 0; run < runs; run++) {
    player.play(run);
    ends[run] = sum(player.ends);
    for (let team = 0; team < teams; team++) {
      for (let step = 0; step < size; step++) {
        if ((player.begin[team * size + step] ?? 0) < Number.POSITIVE_INFINITY)
          isBegun[step * runs + run] = 1;
      }
      decision.of(player, team, decides);
    }
    if (++played % atATime === 0) yield undefined;
  }
  for (let step = 0; step < size; step++) {
    if (network.isStep[step] !== 1 || isReached[step] !== 1) continue;
    let saved = 0;
    for (let run = 0; run < runs; run++) {
      if (isBegun[step * runs + run] !== 1) continue;
      player.play(run, step);
      saved += (ends[run] ?? 0) - sum(player.ends);
      if (++played % atATime === 0) yield undefined;
    }
    yield { step, cost: saved / (runs * teams), decides: (decides[step] ?? 0) / (runs * teams) };
  }
}

function sum(values: Float64Array): number {
  let total = 0;
  for (let i = 0; i < values.length; i++) total += values[i] ?? 0;
  return total;
}

/** The costs of all reached steps; undefined in between, as costsOf has it. */
export function* allCosts(clock: Clock, rules: Rules, runs: number): Generator<undefined, StepCosts> {
  const { size } = clock.network;
  const costs = { minutes: new Float64Array(size), decides: new Float64Array(size) };
  for (const each of costsOf(clock, rules, runs)) {
    if (each) {
      costs.minutes[each.step] = each.cost;
      costs.decides[each.step] = each.decides;
    }
    yield undefined;
  }
  return costs;
}
