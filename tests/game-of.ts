/** Small games for tests, written down in one line each. */
import * as z from 'zod/mini';
import type { Game, Kind, NodeId } from '../src/game/model.ts';
import { FORMAT, gameFile, VERSION } from '../src/game/schema.ts';

/** A node; without a name it is named like its id. The schema judges the rest. */
export interface NodeDraft {
  readonly id: NodeId;
  readonly kind: Kind;
  readonly in?: NodeId;
  readonly on?: NodeId;
  readonly [field: string]: unknown;
}

/** `fixed` minutes for a step that takes always the same. */
export function fixed(minutes: number) {
  return { minutes: { low: minutes, likely: minutes, high: minutes } };
}

/** A game of these nodes, and links as 'from>to', or 'from>to@1,3' for a partial answer; a link's id is its text. Shapes are checked. */
export function gameOf(nodes: readonly NodeDraft[], links: readonly string[] = []): Game {
  const file = z.parse(gameFile, {
    format: FORMAT,
    version: VERSION,
    nodes: nodes.map((node) => ({ ...node, name: node['name'] ?? node.id })),
    links: links.map((text) => {
      const [ends = '', at] = text.split('@');
      const [from = '', to = ''] = ends.split('>');
      return { id: text, from, to, ...(at && { at: at.split(',').map(Number) }) };
    }),
  });
  return {
    head: {},
    nodes: new Map(file.nodes.map((node) => [node.id, node])),
    links: new Map(file.links.map((link) => [link.id, link])),
    positions: new Map(),
  };
}
