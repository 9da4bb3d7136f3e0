/** The numbers of a game by id, in the shape of the headless report: everything but the file and the findings. */
import type { Game, NodeId } from '../game/model.ts';
import { fewestSteps } from './fewest.ts';
import { type Fewest, type Measures, measure } from './measures.ts';
import { compile, type Network } from './network.ts';
import { RUNS } from './simulation/batch.ts';
import { type PlainFigures, plainFigures } from './simulation/in-report.ts';

/** Ids are sorted by code point. Minutes are expected minutes of play. All but the first four only when the game is solvable. */
export interface Report {
  readonly title: string;
  readonly solvable: boolean;
  readonly reached: readonly NodeId[];
  readonly steps: {
    readonly total: number;
    readonly fewest?: number;
    readonly fewestExact?: boolean;
    readonly longestChain?: number;
  };
  /** All but the shortest from simulated lessons by the plain model: the end, and the chance that it comes within the lesson's minutes, 0 to 1. */
  readonly minutes?: {
    readonly shortest: number;
    readonly median: number;
    readonly p10: number;
    readonly p90: number;
    readonly chanceInTime: number;
  };
  /** Pupil-minutes of one team, mean over the runs: in all, and for every reached step how much of it fell while that was being worked. */
  readonly waiting?: { readonly total: number; readonly byStep: Readonly<Record<NodeId, number>> };
  /** For every reached step, in minutes; left out where the game is too large for it. */
  readonly cost?: Readonly<Record<NodeId, number>>;
  /** Runs that these rest on, where it is fewer than 2,000. */
  readonly runs?: { readonly minutes: number; readonly cost: number };
  /** For every reached step. Made entry by entry, so that any id is safe as a key. */
  readonly drag?: Readonly<Record<NodeId, number>>;
  readonly mustDo?: readonly NodeId[];
  readonly tied?: readonly NodeId[];
}

export function reportOf(game: Game): Report {
  const network = compile(game);
  const measures = measure(network);
  return reportFrom(game, network, measures, measures.solvable ? fewestSteps(network, measures) : undefined);
}

/** From what is known already; `fewest` is left out of the report when it is not given, `figures` are worked out. */
export function reportFrom(
  game: Game,
  network: Network,
  measures: Measures,
  fewest: Fewest | undefined,
  figures?: PlainFigures,
): Report {
  const marked = (marks: Uint8Array) => network.ids.filter((_, node) => marks[node] === 1);
  const { solvable, reached, drag } = measures;
  const base = { title: game.head.title ?? '', solvable, reached: marked(reached) };
  if (!solvable) return { ...base, steps: { total: measures.steps } };
  const byStep = (minutes: Float64Array) =>
    Object.fromEntries(
      network.ids.flatMap((id, node): [NodeId, number][] =>
        reached[node] === 1 && network.isStep[node] === 1 ? [[id, minutes[node] ?? 0]] : [],
      ),
    );
  const { simulated, costs, costRuns } = figures ?? plainFigures(game, network);
  const { runs, median, p10, p90, inTime, idle, idleWhile } = simulated;
  return {
    ...base,
    steps: {
      total: measures.steps,
      ...(fewest && { fewest: fewest.steps, fewestExact: fewest.exact }),
      longestChain: measures.longestChain,
    },
    minutes: { shortest: measures.shortest, median, p10, p90, chanceInTime: inTime },
    waiting: { total: idle, byStep: byStep(idleWhile) },
    ...(costs && { cost: byStep(costs.minutes) }),
    ...((runs < RUNS || costRuns < RUNS) && { runs: { minutes: runs, cost: costRuns } }),
    drag: byStep(drag),
    mustDo: marked(measures.mustDo),
    tied: marked(measures.tied),
  };
}
