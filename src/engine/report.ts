/** The numbers of a game by id, in the shape of the headless report: everything but the file and the findings. */
import type { WordList } from '../fasteners/word-list/index.ts';
import type { Game, NodeId } from '../game/model.ts';
import { codesOf } from './codes.ts';
import { fewestSteps } from './fewest.ts';
import { type Guesses, guessesOf, minutesOfTrying } from './guess/guess.ts';
import { type Fewest, type Measures, measure } from './measures.ts';
import { compile, type Network } from './network.ts';
import { RUNS } from './simulation/batch.ts';
import { type PlainFigures, plainFigures } from './simulation/in-report.ts';

/**
 * How well a lock keeps what is in it from those who guess, at the stage at which guessing is worst (`worst` in guess/guess.ts): codes of the
 * lock, how many of them are left to try, the minutes that trying takes on average, and the steps that it makes needless. `codes`
 * and `left` count key locks where a key opens it, and `left` words where its code is one. null: more than can be counted, or the length of
 * the code is not known.
 */
export interface ReportedGuess {
  readonly codes: number | null;
  readonly left: number | null;
  readonly minutes: number | null;
  readonly skips: readonly NodeId[];
}

/** Ids are sorted by code point. Minutes are expected minutes of play. All but the first five only when the game is solvable. */
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
  /** For every used fastener that opens with a code or a key. In a game that is not solvable nothing is skipped. */
  readonly guess: Readonly<Record<NodeId, ReportedGuess>>;
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

/** `words`: what pupils would try at a word lock; without it all its codes count. */
export function reportOf(game: Game, words?: WordList): Report {
  const network = compile(game);
  const measures = measure(network);
  const guesses = guessesOf(game, network, measures, codesOf(game, network), words);
  const fewest = measures.solvable ? fewestSteps(network, measures) : undefined;
  return reportFrom(game, network, measures, guesses, fewest);
}

/** From what is known already; `fewest` is left out of the report when it is not given, `figures` are worked out. */
export function reportFrom(
  game: Game,
  network: Network,
  measures: Measures,
  guesses: Guesses,
  fewest: Fewest | undefined,
  figures?: PlainFigures,
): Report {
  const marked = (marks: Uint8Array) => network.ids.filter((_, node) => marks[node] === 1);
  const { solvable, reached, drag } = measures;
  const base = { title: game.head.title ?? '', solvable, reached: marked(reached) };
  const guess = guessReport(network, guesses);
  if (!solvable) return { ...base, steps: { total: measures.steps }, guess };
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
    guess,
    minutes: { shortest: measures.shortest, median, p10, p90, chanceInTime: inTime },
    waiting: { total: idle, byStep: byStep(idleWhile) },
    ...(costs && { cost: byStep(costs.minutes) }),
    ...((runs < RUNS || costRuns < RUNS) && { runs: { minutes: runs, cost: costRuns } }),
    drag: byStep(drag),
    mustDo: marked(measures.mustDo),
    tied: marked(measures.tied),
  };
}

function guessReport(network: Network, { locks }: Guesses): Report['guess'] {
  const finite = (value: number) => (Number.isFinite(value) ? value : null);
  return Object.fromEntries(
    [...locks].map(([node, { codes, trySeconds, worst }]): [NodeId, ReportedGuess] => {
      // What never comes to hand has no stage, and all its codes are left.
      const left = worst?.left ?? codes;
      const minutes = worst?.minutes ?? minutesOfTrying(codes, trySeconds);
      const skips = (worst?.skips ?? []).map((step) => network.ids[step] ?? '');
      return [
        network.ids[node] ?? '',
        { codes: finite(codes), left: finite(left), minutes: finite(minutes), skips },
      ];
    }),
  );
}
