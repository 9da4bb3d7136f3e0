/**
 * Codes: what the links into a fastener give, against the code that is set on it.
 * A fastener that is no latch and takes no key (it is no key lock, and no key leads to it) has a right code when what its links
 * give agrees with it: if all are needed, every whole answer equals it, partial answers (a link with `at`) fit their positions, none
 * contradicts another, and where no answer is whole no position is missing; if fewer are needed, each source that carries an answer
 * gives it whole. No code, or no answer before it, is not yet known, and not wrong. Own rule; whole texts are compared as
 * src/game/codes.ts normalises them, parts by the symbols of the lock's type.
 * Whether a game is solvable never depends on it. Cost: linear in links and symbols.
 */
import { type FastenerType, fastenerType, type Misfit } from '../fasteners/index.ts';
import { type WrittenCode, writtenCode } from '../game/codes.ts';
import { type Game, type GameLink, KINDS, type LinkId, type NodeOf } from '../game/model.ts';
import type { Index } from './measures.ts';
import type { Network } from './network.ts';
import { rowOf } from './rows.ts';

/** What one link gives. */
export interface CodeSource {
  readonly link: LinkId;
  readonly node: Index;
  /** Normalised. */
  readonly answer: string;
  /** The answer as a sentence says it. */
  readonly said: string;
  /** Symbols of the lock's type: a number of a dial is one. */
  readonly symbols: readonly string[];
  /** The symbols as they are stored. */
  readonly written: string;
  /** Which positions of the code the symbols fill, from 1; undefined: the answer is the whole code. */
  readonly at: readonly number[] | undefined;
}

export type CodeProblem =
  /** A whole answer that is not the code. */
  | { readonly problem: 'differs'; readonly source: CodeSource }
  /** Two whole answers that are not the same. */
  | { readonly problem: 'sourcesDiffer'; readonly sources: readonly [CodeSource, CodeSource] }
  /** A partial answer with more or fewer symbols than positions. */
  | { readonly problem: 'length'; readonly source: CodeSource }
  /** A position that the code does not have. */
  | { readonly problem: 'beyond'; readonly source: CodeSource; readonly position: number }
  /** A symbol that is not the one that the code has there. */
  | {
      readonly problem: 'symbol';
      readonly source: CodeSource;
      readonly position: number;
      readonly given: string;
      readonly wanted: string;
    }
  /** Two sources give different symbols for one position. */
  | {
      readonly problem: 'contradiction';
      readonly position: number;
      readonly sources: readonly [CodeSource, CodeSource];
    }
  /** Two partial answers give the same symbol for one position: right, and worth a look. */
  | {
      readonly problem: 'overlap';
      readonly position: number;
      readonly sources: readonly [CodeSource, CodeSource];
    }
  /** No answer is whole, and these positions are given by none. */
  | { readonly problem: 'gap'; readonly positions: readonly number[] }
  /** Not all sources are needed, and this one does not give the whole code. */
  | { readonly problem: 'notWhole'; readonly source: CodeSource };

export interface FastenerCode {
  readonly node: Index;
  readonly state: 'latch' | 'key' | 'right' | 'wrong' | 'notYetKnown';
  /** Normalised; undefined when none is set. */
  readonly code: string | undefined;
  /** As a sentence says it, and as it is stored; empty when none is set. */
  readonly said: string;
  readonly symbols: readonly string[];
  readonly written: string;
  /** Those that carry an answer, by node. */
  readonly sources: readonly CodeSource[];
  /** For each symbol of the code the sources that give this position, rightly or not. */
  readonly origins: readonly (readonly CodeSource[])[];
  readonly problems: readonly CodeProblem[];
  /** Why the lock cannot be set to its code; it says nothing of whether the code is right. */
  readonly misfits: readonly Misfit[];
}

/** Whether a lock that takes a code is known not to be able to show the one that it has. */
export function isUnsettable({ state, misfits }: FastenerCode): boolean {
  return state !== 'latch' && state !== 'key' && misfits.some(({ assumed }) => !assumed);
}

/** One for each fastener that is used, by index. The network is the game's own. */
export function codesOf(game: Game, network: Network): FastenerCode[] {
  const linksTo = new Map<string, GameLink[]>();
  for (const link of game.links.values()) {
    if (!network.index.has(link.from)) continue;
    const list = linksTo.get(link.to);
    if (list) list.push(link);
    else linksTo.set(link.to, [link]);
  }
  const codes: FastenerCode[] = [];
  for (const [node, id] of network.ids.entries()) {
    const fastener = game.nodes.get(id);
    if (fastener?.kind !== 'fastener') continue;
    codes.push(fastenerCode(game, network, node, fastener, linksTo.get(id) ?? []));
  }
  return codes;
}

function fastenerCode(
  game: Game,
  network: Network,
  node: Index,
  fastener: NodeOf<'fastener'>,
  links: readonly GameLink[],
): FastenerCode {
  const type = fastenerType(fastener.type);
  const own = writtenCode(game, fastener.id);
  const code = own?.normalised;
  const { symbols, said, written } = spelled(type, own);
  const sources = links
    .flatMap((link): CodeSource[] => {
      const answer = writtenCode(game, link.from);
      const source = network.index.get(link.from);
      if (answer === undefined || source === undefined) return [];
      return [
        { link: link.id, node: source, answer: answer.normalised, ...spelled(type, answer), at: link.at },
      ];
    })
    .sort((a, b) => a.node - b.node);
  const origins = symbols.map((_, i) =>
    sources.filter((source) => source.at === undefined || source.at.includes(i + 1)),
  );
  const misfits = type.misfits(symbols, fastener.hardware);
  const base = { node, code, said, symbols, written, sources, origins, misfits };
  const { opensWith } = type;
  if (opensWith === 'nothing') return { ...base, state: 'latch', problems: [] };
  if (opensWith === 'key' || hasKey(network, node)) {
    return { ...base, state: 'key', problems: [] };
  }
  const allNeeded = (network.k[node] ?? 0) >= rowOf(network.needs, node).length;
  const problems = allNeeded
    ? problemsTogether(sources, code, symbols)
    : problemsAlone(sources, code, symbols);
  if (code === undefined || sources.length === 0) return { ...base, state: 'notYetKnown', problems };
  const isWrong = problems.some(({ problem }) => problem !== 'overlap');
  return { ...base, state: isWrong ? 'wrong' : 'right', problems };
}

/** A code or answer in the symbols of the lock that takes it. */
function spelled(
  type: FastenerType,
  code: WrittenCode | undefined,
): Pick<FastenerCode, 'symbols' | 'written' | 'said'> {
  if (!code) return { symbols: [], written: '', said: '' };
  const symbols = type.symbols(code.typed);
  const written = type.write(symbols);
  const said =
    written === code.normalised
      ? written
      : code.typed.trim().replace(/\s+/gu, ' ').toUpperCase().normalize('NFC');
  return { symbols, written, said };
}

function hasKey(network: Network, node: Index): boolean {
  return rowOf(network.needs, node).some((need) => network.kinds[need] === KINDS.indexOf('key'));
}

/** All sources are needed: together they have to give the code. Without a code they are held against each other only. */
function problemsTogether(
  sources: readonly CodeSource[],
  code: string | undefined,
  symbols: readonly string[],
): CodeProblem[] {
  const problems: CodeProblem[] = [];
  const whole = sources.filter(({ at }) => at === undefined);
  for (const [i, source] of whole.entries()) {
    if (code !== undefined && source.answer !== code) problems.push({ problem: 'differs', source });
    const first = whole[0];
    if (i > 0 && first && source.answer !== first.answer) {
      problems.push({ problem: 'sourcesDiffer', sources: [first, source] });
    }
  }
  const givenAt = new Map<number, { readonly symbol: string; readonly source: CodeSource }>();
  for (const source of sources) {
    if (source.at === undefined) continue;
    problems.push(...misfits(source, code, symbols));
    for (const [i, position] of source.at.entries()) {
      const symbol = source.symbols[i];
      const other = givenAt.get(position);
      if (symbol === undefined) continue;
      if (other === undefined) givenAt.set(position, { symbol, source });
      else {
        const problem = other.symbol === symbol ? 'overlap' : 'contradiction';
        problems.push({ problem, position, sources: [other.source, source] });
      }
    }
  }
  if (whole.length === 0 && sources.length > 0) {
    const gaps = symbols.map((_, i) => i + 1).filter((position) => !givenAt.has(position));
    if (gaps.length > 0) problems.push({ problem: 'gap', positions: gaps });
  }
  return problems;
}

/** Where a partial answer does not fit the code. */
function misfits(source: CodeSource, code: string | undefined, symbols: readonly string[]): CodeProblem[] {
  const problems: CodeProblem[] = [];
  const at = source.at ?? [];
  if (at.length !== source.symbols.length) problems.push({ problem: 'length', source });
  if (code === undefined) return problems;
  for (const [i, position] of at.entries()) {
    const wanted = symbols[position - 1];
    const given = source.symbols[i];
    if (wanted === undefined) problems.push({ problem: 'beyond', source, position });
    else if (given !== undefined && given !== wanted) {
      problems.push({ problem: 'symbol', source, position, given, wanted });
    }
  }
  return problems;
}

/** Not all sources are needed: each has to give the whole code. One whose positions are all of the code's gives it whole too. */
function problemsAlone(
  sources: readonly CodeSource[],
  code: string | undefined,
  symbols: readonly string[],
): CodeProblem[] {
  return sources.flatMap((source) => {
    const alone = problemsTogether([source], code, symbols);
    const isPartial = alone.some(({ problem }) => problem === 'gap');
    const others = alone.filter(({ problem }) => problem !== 'gap');
    return isPartial ? [...others, { problem: 'notWhole' as const, source }] : others;
  });
}
