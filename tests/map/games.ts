/** Games for the tests of the map: small ones made by hand, and what is measured on a layout. */

import { measure } from '../../src/engine/measures.ts';
import { compile } from '../../src/engine/network.ts';
import type { Game, GameLink, GameNode, NodeId, Point } from '../../src/game/model.ts';
import { playNumbers } from '../../src/map/place-missing.ts';

export function gameOf(
  nodes: readonly GameNode[],
  pairs: readonly (readonly [NodeId, NodeId])[] = [],
  positions: Readonly<Record<string, Point>> = {},
): Game {
  const links = pairs.map(([from, to], i): GameLink => ({ id: `l${i}`, from, to }));
  return {
    head: {},
    nodes: new Map(nodes.map((node) => [node.id, node])),
    links: new Map(links.map((link) => [link.id, link])),
    positions: new Map(Object.entries(positions)),
  };
}

/** The order of play. */
export function numbersOf(game: Game): ReadonlyMap<NodeId, number> {
  const network = compile(game);
  return playNumbers(network, measure(network));
}
