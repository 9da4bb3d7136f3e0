/** What a teacher calls a lock, where that says more than its type, its box and its key do. */
import type { Game, NodeId, NodeOf } from '../game/model.ts';
import { newName } from './canvas.ts';
import { kindOf } from './kinds.ts';

/** What goes without saying of any lock. */
const PLAIN = ['a', 'an', 'the', 'of', 'on', 'for', 'code', newName('fastener')];

/**
 * "Small red padlock"; undefined for a lock that is called by the words of its type, its box or its keys alone: "Word lock",
 * "Tin lock" on Biscuit tin, "Red key lock" for Red key.
 */
export function ownLockName(game: Game, node: NodeOf<'fastener'>): string | undefined {
  const known = [kindOf(node), game.nodes.get(node.on)?.name ?? '', ...PLAIN];
  for (const source of sourcesInto(game.links).get(node.id) ?? []) {
    const other = game.nodes.get(source);
    if (other?.kind === 'key') known.push(other.name);
  }
  const words = new Set(known.flatMap(wordsOf));
  return wordsOf(node.name).every((word) => words.has(word)) ? undefined : node.name.trim();
}

const knownSources = new WeakMap<Game['links'], ReadonlyMap<NodeId, readonly NodeId[]>>();

/** What each thing is linked from. Made once for a game: a long list names every lock. */
function sourcesInto(links: Game['links']): ReadonlyMap<NodeId, readonly NodeId[]> {
  const known = knownSources.get(links);
  if (known) return known;
  const sources = new Map<NodeId, NodeId[]>();
  for (const { from, to } of links.values()) {
    const list = sources.get(to);
    if (list) list.push(from);
    else sources.set(to, [from]);
  }
  knownSources.set(links, sources);
  return sources;
}

function wordsOf(text: string): string[] {
  return text.toLowerCase().match(/[\p{L}\p{N}]+/gu) ?? [];
}
