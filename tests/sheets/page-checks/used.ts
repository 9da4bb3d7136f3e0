/** What of a game is used this time: what its pages have to show. Taken from the engine, not from what lays out the pages. */
import { isLeftOut, parentInUse } from '../../../src/engine/left-out.ts';
import type { Assessment } from '../../../src/findings/assess.ts';
import { lessonOf } from '../../../src/game/defaults.ts';
import type { GameLink, GameNode, LinkId, NodeId } from '../../../src/game/model.ts';

export interface Used {
  readonly nodes: ReadonlyMap<NodeId, GameNode>;
  readonly links: ReadonlyMap<LinkId, GameLink>;
  /** Number in the order of play of each step that has one. */
  readonly numbers: ReadonlyMap<NodeId, number>;
  readonly teams: number;
  readonly canBeWon: boolean;
  /** The node itself, and what it lies in or is fastened to, innermost first. */
  chain(id: NodeId): readonly NodeId[];
  /** Lies in nothing: on the tables, in hand, or given. */
  isLoose(id: NodeId): boolean;
}

export function usedOf({ game, network, measures, canBeWon }: Assessment): Used {
  const nodes = new Map([...game.nodes].filter(([id]) => !isLeftOut(game, id)));
  const links = new Map([...game.links].filter(([, { from, to }]) => nodes.has(from) && nodes.has(to)));
  const numbers = new Map<NodeId, number>();
  for (const [index, id] of network.ids.entries()) {
    const number = measures.number[index] ?? 0;
    if (number > 0) numbers.set(id, number);
  }
  const chain = (id: NodeId) => {
    const found = [id];
    for (let up = parentInUse(game, id); up !== undefined; up = parentInUse(game, up)) found.push(up);
    return found;
  };
  const isLoose = (id: NodeId) => {
    const root = nodes.get(chain(id).at(-1) ?? id);
    return root !== undefined && root.kind !== 'place' && root.kind !== 'puzzle';
  };
  return { nodes, links, numbers, teams: Math.max(1, lessonOf(game).teams), canBeWon, chain, isLoose };
}

/** For reports: kind and the beginning of the name. */
export function called(used: Used, id: NodeId | undefined): string {
  if (id === undefined) return 'nothing';
  const node = used.nodes.get(id);
  return node ? `${node.kind} ${id} '${node.name.slice(0, 24)}'` : `unused ${id}`;
}
