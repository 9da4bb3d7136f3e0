/** For which type of lock a code or an answer is written: its symbols are those of that type. */
import type { Game, NodeId } from '../game/model.ts';
import { type FastenerType, fastenerType } from './index.ts';

/** Where an answer opens several locks: moves, then names and numbers, then the rest, each by name. */
function rank({ directions, apart, type }: FastenerType): string {
  return `${directions ? 0 : apart ? 1 : 2} ${type}`;
}

interface Known {
  readonly links: Game['links'];
  readonly types: ReadonlyMap<NodeId, FastenerType>;
}
const known = new WeakMap<Game['nodes'], Known>();

/** Of each lock its own type; of each puzzle and clue that leads to locks that of one of them. Made once for a game. */
export function writtenFor({
  nodes,
  links,
}: Pick<Game, 'nodes' | 'links'>): ReadonlyMap<NodeId, FastenerType> {
  const last = known.get(nodes);
  if (last?.links === links) return last.types;
  const types = new Map<NodeId, FastenerType>();
  for (const node of nodes.values()) {
    if (node.kind === 'fastener') types.set(node.id, fastenerType(node.type));
  }
  for (const { from, to } of links.values()) {
    const lock = nodes.get(to);
    const kind = nodes.get(from)?.kind;
    if (lock?.kind !== 'fastener' || (kind !== 'puzzle' && kind !== 'clue')) continue;
    const type = fastenerType(lock.type);
    const other = types.get(from);
    if (!other || rank(type) < rank(other)) types.set(from, type);
  }
  known.set(nodes, { links, types });
  return types;
}
