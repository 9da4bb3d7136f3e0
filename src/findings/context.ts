/** What the rules look at: the game and what the engine says of it, the costly parts only when a rule asks for them. */

import { Blockages } from '../engine/blockage.ts';
import { codesOf, type FastenerCode, isUnsettable } from '../engine/codes.ts';
import { type Guesses, guessesOf } from '../engine/guess/guess.ts';
import { isLeftOut } from '../engine/left-out.ts';
import { type Blockage, type Index, type Measures, measure } from '../engine/measures.ts';
import { compile, type Network } from '../engine/network.ts';
import { EarliestProofs } from '../engine/proof.ts';
import { only, reach } from '../engine/reach.ts';
import type { WordList } from '../fasteners/word-list/index.ts';
import { byCodePoint } from '../game/compare.ts';
import { type Game, type GameLink, KINDS, type Kind, type NodeId } from '../game/model.ts';
import { prizesOn } from './blame.ts';
import { blockedNodes, type Root, rootsOf } from './roots.ts';

/** The game with everything used that is left out today. */
export interface Whole {
  readonly game: Game;
  readonly network: Network;
  readonly measures: Measures;
}

export interface Context {
  readonly game: Game;
  readonly network: Network;
  readonly measures: Measures;
  /** For locks with letters; undefined where it is not at hand. */
  readonly words: WordList | undefined;
  /** For each fastener what its links give, and whether that is right. */
  codes(): readonly FastenerCode[];
  /** What could be had by guessing or by chance. */
  guesses(): Guesses;
  /** Every root of what is never reached, once. */
  roots(): readonly Root[];
  /** The root of why a node is not reached; undefined when it is. */
  blockage(node: Index): Blockage | undefined;
  proofs(): EarliestProofs;
  /** Unreached prizes that hang on a node: one at the root of what is never reached, or a lock whose code is wrong or cannot be set. */
  prizesOn(node: Index): readonly Index[];
  /** 1 for each node that is still reached when this one never is. */
  without(node: Index): Uint8Array;
  /** 1 for each node that is reached though no step ever is. */
  withoutSteps(): Uint8Array;
  /** Undefined when nothing is left out. */
  whole(): Whole | undefined;
  /** Links that lead to a node, those from left-out nodes included. */
  linksTo(id: NodeId): readonly GameLink[];
  linksFrom(id: NodeId): readonly GameLink[];
  /** What is left out and would lead to this one: for a lock that goes with its box, the box. */
  leftOutBefore(id: NodeId): readonly NodeId[];
  leftOutAfter(id: NodeId): readonly NodeId[];
  idOf(node: Index): NodeId;
  kindOf(node: Index): Kind;
}

function lazily<T>(make: () => T): () => T {
  let made: { readonly value: T } | undefined;
  return () => {
    made ??= { value: make() };
    return made.value;
  };
}

function grouped(links: Iterable<GameLink>, end: 'from' | 'to'): ReadonlyMap<NodeId, readonly GameLink[]> {
  const groups = new Map<NodeId, GameLink[]>();
  for (const link of links) {
    const group = groups.get(link[end]);
    if (group) group.push(link);
    else groups.set(link[end], [link]);
  }
  for (const group of groups.values()) group.sort((a, b) => byCodePoint(a.id, b.id));
  return groups;
}

function withAllUsed(game: Game): Game | undefined {
  let isPart = false;
  const nodes = new Map(game.nodes);
  for (const [id, node] of game.nodes) {
    if (node.leftOut !== true) continue;
    const { leftOut: _, ...used } = node;
    nodes.set(id, used);
    isPart = true;
  }
  return isPart ? { ...game, nodes } : undefined;
}

function causes(game: Game, ids: readonly NodeId[]): NodeId[] {
  const left = ids.flatMap((id): NodeId[] => {
    const node = game.nodes.get(id);
    if (!node || !isLeftOut(game, id)) return [];
    return [node.kind === 'fastener' && node.leftOut !== true ? node.on : id];
  });
  return [...new Set(left)];
}

export function contextOf(game: Game, network: Network, measures: Measures, words?: WordList): Context {
  const into = lazily(() => grouped(game.links.values(), 'to'));
  const outOf = lazily(() => grouped(game.links.values(), 'from'));
  const codes = lazily(() => codesOf(game, network));
  const blocked = lazily(() =>
    measures.reached.every((reached) => reached === 1) ? undefined : new Blockages(network),
  );
  const blockages = lazily(() => blocked()?.all() ?? []);
  const blame = lazily(() => {
    if (measures.solvable || network.prizes.length === 0) return new Map<Index, readonly Index[]>();
    const nodes = new Set(blockages().flatMap((blockage) => blockedNodes(network, blockage)));
    for (const code of codes()) if (code.state === 'wrong' || isUnsettable(code)) nodes.add(code.node);
    const list = [...nodes];
    const prizes = prizesOn(network, measures.reached, list);
    return new Map(list.map((node, i) => [node, prizes[i] ?? []]));
  });
  const known = new Map<Index, Uint8Array>();
  const context: Context = {
    game,
    network,
    measures,
    words,
    codes,
    guesses: lazily(() => guessesOf(game, network, measures, codes(), words)),
    roots: lazily(() => rootsOf(context, blockages())),
    blockage: (node) => blocked()?.of(node),
    proofs: lazily(() => new EarliestProofs(network)),
    prizesOn: (node) => blame().get(node) ?? [],
    without(node) {
      let left = known.get(node);
      if (!left) {
        left = reach(network, { never: only(network, node) });
        known.set(node, left);
      }
      return left;
    },
    withoutSteps: lazily(() => reach(network, { never: network.isStep })),
    whole: lazily(() => {
      const used = withAllUsed(game);
      if (!used) return undefined;
      const whole = compile(used);
      return { game: used, network: whole, measures: measure(whole) };
    }),
    linksTo: (id) => into().get(id) ?? [],
    linksFrom: (id) => outOf().get(id) ?? [],
    leftOutBefore: (id) =>
      causes(
        game,
        (into().get(id) ?? []).map((link) => link.from),
      ),
    leftOutAfter: (id) =>
      causes(
        game,
        (outOf().get(id) ?? []).map((link) => link.to),
      ),
    idOf: (node) => network.ids[node] ?? '',
    kindOf: (node) => KINDS[network.kinds[node] ?? 0] ?? 'clue',
  };
  return context;
}
