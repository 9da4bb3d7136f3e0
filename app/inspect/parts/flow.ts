/**
 * Where each symbol of a lock's code comes from, by what the engine found (src/engine/codes.ts): for each source the positions that
 * it fills and what it gives there, and for a puzzle what that is made of in turn.
 */
import type { CodeSource, FastenerCode } from '../../../src/engine/codes.ts';
import type { Index } from '../../../src/engine/measures.ts';
import { rowOf } from '../../../src/engine/rows.ts';
import type { Assessment } from '../../../src/findings/assess.ts';
import type { NodeId } from '../../../src/game/model.ts';
import { arrowsInto, fillsPlaces } from './arrows.ts';

export interface Slot {
  readonly symbol: string;
  /** It is not what the lock has there, or not what another source says. */
  readonly wrong: boolean;
}

export interface FlowRow {
  readonly node: NodeId;
  /** What it gives, by position from 0. */
  readonly slots: ReadonlyMap<number, Slot>;
  /** From 1, in the order of the answer's symbols; undefined: the whole code. */
  readonly positions: readonly number[] | undefined;
  /** What it is made of, the farthest first: levels of things, each needed for the next. */
  readonly chain: readonly (readonly NodeId[])[];
}

export interface CodeFlow {
  /** Of the code, or of what fills positions beyond it. */
  readonly length: number;
  /** By the first position. */
  readonly rows: readonly FlowRow[];
  /** Clues and puzzles that lead to the lock and have no answer. */
  readonly silent: readonly NodeId[];
  /** Positions from 0 that nothing gives. */
  readonly gaps: readonly number[];
}

/** Beyond this a chain would be the story of the game. */
const LEVELS = 2;

export function codeFlow(assessment: Assessment, id: NodeId): CodeFlow | undefined {
  const { game, network, context } = assessment;
  const index = network.index.get(id);
  const code = context.codes().find(({ node }) => node === index);
  if (!code) return undefined;
  const rows = code.sources.map(
    (source): FlowRow => ({
      node: context.idOf(source.node),
      slots: slotsOf(code, source),
      positions: source.at,
      chain: chainOf(assessment, source.node),
    }),
  );
  const first = ({ slots }: FlowRow) => Math.min(...slots.keys(), Number.POSITIVE_INFINITY);
  const silent = arrowsInto(game, id).filter(
    ({ other }) =>
      fillsPlaces(other, game.nodes.get(id)) &&
      network.index.has(other.id) &&
      !rows.some(({ node }) => node === other.id),
  );
  return {
    length: Math.max(
      code.symbols.length,
      ...rows.flatMap(({ slots }) => [...slots.keys()].map((at) => at + 1)),
    ),
    rows: rows.sort((a, b) => first(a) - first(b)),
    silent: silent.map(({ other }) => other.id),
    gaps: code.problems.flatMap((problem) =>
      problem.problem === 'gap' ? problem.positions.map((position) => position - 1) : [],
    ),
  };
}

function slotsOf(code: FastenerCode, source: CodeSource): Map<number, Slot> {
  const contradicted = new Set(
    code.problems.flatMap((problem) =>
      problem.problem === 'contradiction' && problem.sources.includes(source) ? [problem.position] : [],
    ),
  );
  const slots = new Map<number, Slot>();
  for (const [i, symbol] of source.symbols.entries()) {
    const position = source.at === undefined ? i + 1 : source.at[i];
    if (position === undefined) continue;
    const wanted = code.symbols[position - 1];
    const differs = code.code !== undefined && wanted !== symbol;
    slots.set(position - 1, { symbol, wrong: differs || contradicted.has(position) });
  }
  return slots;
}

/** Only papers and puzzles carry an answer on. */
function chainOf({ network, context }: Assessment, source: Index): NodeId[][] {
  const carries = (node: Index) => context.kindOf(node) === 'puzzle' || context.kindOf(node) === 'clue';
  const seen = new Set([source]);
  const levels: NodeId[][] = [];
  let level = [source];
  while (levels.length < LEVELS) {
    const puzzles = level.filter((node) => context.kindOf(node) === 'puzzle');
    level = [...new Set(puzzles.flatMap((node) => [...rowOf(network.needs, node)]))].filter(
      (node) => !seen.has(node) && carries(node),
    );
    if (level.length === 0) break;
    for (const node of level) seen.add(node);
    levels.unshift(level.map(context.idOf));
  }
  return levels;
}
