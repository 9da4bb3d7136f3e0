/** Games for the tests of the map: small ones made by hand, and what is measured on a layout. */

import { measure } from '../../src/engine/measures.ts';
import { compile } from '../../src/engine/network.ts';
import type { Game, GameLink, GameNode, NodeId, Point } from '../../src/game/model.ts';
import { arrange } from '../../src/map/arrange.ts';
import { layOut } from '../../src/map/lay-out.ts';
import { plainView, type Rect } from '../../src/map/layout.ts';
import { outline, overlaps } from '../../src/map/outline.ts';
import { playNumbers } from '../../src/map/place-missing.ts';
import { CAPTION_HEIGHT } from '../../src/map/sizes.ts';

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

/** The same game with the positions of an arrangement from scratch. */
export const arranged = (game: Game): Game => ({ ...game, positions: arrange(game, numbersOf(game)) });

/** What stands on the mat. */
export const rootsOf = (game: Game): NodeId[] =>
  [...layOut(game, plainView).slots].filter(([, slot]) => slot.parent === undefined).map(([id]) => id);

/** A hundred boxes and clues that lie in nothing. */
export const hundredLoose = (): Game =>
  gameOf(
    Array.from(
      { length: 100 },
      (_, i): GameNode =>
        i % 3 === 0
          ? { id: `n${i}`, kind: 'container', name: `Box ${i}` }
          : { id: `n${i}`, kind: 'clue', name: `Clue ${i}` },
    ),
  );

/**
 * Pairs on the mat of which one covers the other, its caption, or a field that it is not in, each pair compared with no short cut.
 * With `moves` only those in which something moves: what stands fast may cover what does so too.
 */
export function coveredIn(game: Game, moves: (id: NodeId) => boolean = () => true): string[] {
  const layout = layOut(game, plainView);
  const claims: { readonly ids: readonly NodeId[]; readonly rect: Rect }[] = layout.fields.map((field) => ({
    ids: field.ids,
    rect: field,
  }));
  for (const [id, { parent, caption }] of layout.slots) {
    if (parent !== undefined) continue;
    const { x, y, width, height } = outline(layout, id);
    const above = caption ? CAPTION_HEIGHT : 0;
    claims.push({ ids: [id], rect: { x, y: y - above, width, height: height + above } });
  }
  return claims.flatMap((a, i) =>
    claims.slice(i + 1).flatMap((b) => {
      if (!overlaps(a.rect, b.rect)) return [];
      const isMember = a.ids.some((id) => b.ids.includes(id));
      const concerns = [...a.ids, ...b.ids].some(moves);
      return concerns && !isMember ? [`${a.ids} and ${b.ids}`] : [];
    }),
  );
}
