/** The numbers of a game by id, in the shape of the headless report: everything but the file and the findings. */
import type { Game, NodeId } from '../game/model.ts';
import { fewestSteps } from './fewest.ts';
import { type Fewest, type Measures, measure } from './measures.ts';
import { compile, type Network } from './network.ts';

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
  readonly minutes?: { readonly shortest: number };
  /** For every reached step. Made entry by entry, so that any id is safe as a key. */
  readonly drag?: Readonly<Record<NodeId, number>>;
  readonly mustDo?: readonly NodeId[];
  readonly tied?: readonly NodeId[];
}

export function reportOf(game: Game): Report {
  const network = compile(game);
  const measures = measure(network);
  return reportFrom(
    game.head.title ?? '',
    network,
    measures,
    measures.solvable ? fewestSteps(network, measures) : undefined,
  );
}

/** From what is known already; `fewest` is left out of the report when it is not given. */
export function reportFrom(
  title: string,
  network: Network,
  measures: Measures,
  fewest: Fewest | undefined,
): Report {
  const marked = (marks: Uint8Array) => network.ids.filter((_, node) => marks[node] === 1);
  const { solvable, reached, drag } = measures;
  const base = { title, solvable, reached: marked(reached) };
  if (!solvable) return { ...base, steps: { total: measures.steps } };
  const dragById = network.ids.flatMap((id, node): [NodeId, number][] =>
    reached[node] === 1 && network.isStep[node] === 1 ? [[id, drag[node] ?? 0]] : [],
  );
  return {
    ...base,
    steps: {
      total: measures.steps,
      ...(fewest && { fewest: fewest.steps, fewestExact: fewest.exact }),
      longestChain: measures.longestChain,
    },
    minutes: { shortest: measures.shortest },
    drag: Object.fromEntries(dragById),
    mustDo: marked(measures.mustDo),
    tied: marked(measures.tied),
  };
}
