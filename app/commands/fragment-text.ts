/**
 * A copied part of a game as text for the system's clipboard: a small document of the file's own format, so that the reader judges
 * what comes back and nothing of it is trusted. What was copied is listed in `copied`; the containers of copied locks come along unlisted.
 */
import { copyOf, type Fragment } from '../../src/game/edits/copies.ts';
import { type Game, type GameNode, type NodeId, parentOf } from '../../src/game/model.ts';
import { readGame } from '../../src/game/read.ts';
import { writeGame } from '../../src/game/write.ts';
import { freshId } from '../store/ids.ts';

export function fragmentText(game: Game, fragment: Fragment): string {
  const taken = new Set(fragment.nodes.map((node) => node.id));
  const positions = new Map(fragment.positions);
  const nodes = new Map<NodeId, GameNode>();
  const copied: NodeId[] = [];
  for (const node of fragment.nodes) {
    const parent = parentOf(node);
    if (parent !== undefined && taken.has(parent)) {
      nodes.set(node.id, node);
      continue;
    }
    copied.push(node.id);
    // A row's number in a tray that stays behind means nothing.
    if (parent !== undefined) positions.delete(node.id);
    const carrier = node.kind === 'fastener' ? game.nodes.get(node.on) : undefined;
    if (carrier) nodes.set(carrier.id, withoutHolder(carrier));
    nodes.set(node.id, withoutHolder(node));
  }
  const links = new Map(fragment.links.map((link) => [link.id, link]));
  return writeGame({
    provenance: { id: freshId(), revision: 0 },
    game: { head: { copied }, nodes, links, positions },
  });
}

function withoutHolder(node: GameNode): GameNode {
  if (node.kind === 'place' || node.kind === 'puzzle' || node.kind === 'fastener') return node;
  const { in: _, ...loose } = node;
  return loose;
}

/** Undefined when the text is no copied part, or not a legal one. A whole game's file can be pasted too. */
export function readFragment(text: string): Fragment | undefined {
  const read = readGame(text, { newId: freshId });
  if (!read.ok) return undefined;
  const { game } = read.document;
  const { copied } = game.head as { copied?: unknown };
  const ids = Array.isArray(copied) ? copied.filter((id) => typeof id === 'string') : [...game.nodes.keys()];
  return copyOf(game, ids);
}
