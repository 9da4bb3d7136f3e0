/** Positions for a game that came without them, all or some. No edit: it says nothing that the file did not say. */

import type { Measures } from '../engine/measures.ts';
import type { Network } from '../engine/network.ts';
import { byCodePoint } from '../game/compare.ts';
import { type Game, type NodeId, type Point, parentOf } from '../game/model.ts';
import { arrange } from './arrange.ts';
import { freeSpot } from './free-spot.ts';
import { layOut } from './lay-out.ts';
import { absolute, type MapLayout, type MapView, plainView, shownAs } from './layout.ts';

/** The order of play as a map: the number, from 1, of each reached step. */
export function playNumbers(network: Network, measures: Measures): ReadonlyMap<NodeId, number> {
  const numbers = new Map<NodeId, number>();
  for (const [place, node] of measures.order.entries()) {
    const id = network.ids[node];
    if (id !== undefined) numbers.set(id, place + 1);
  }
  return numbers;
}

/** As much of the mat round a spot as is first searched for a free one. */
const NEAR = { width: 900, height: 600 };

/** The middle of all that the node is linked with and has a place already; else of the whole map. */
function middleOfLinks(game: Game, layout: MapLayout, id: NodeId, missing: ReadonlySet<NodeId>): Point {
  const partners = new Set<NodeId>();
  for (const { from, to } of game.links.values()) {
    if (from === id) partners.add(to);
    if (to === id) partners.add(from);
  }
  const known = (ids: Iterable<NodeId>) =>
    [...ids].filter((other) => !missing.has(other) && shownAs(layout, other) === other);
  const near = known(partners);
  const points = (near.length > 0 ? near : known(layout.slots.keys())).map((other) => {
    const { x, y, width, height } = absolute(layout, other);
    return { x: x + width / 2, y: y + height / 2 };
  });
  const mean = (values: readonly number[]) =>
    values.reduce((sum, value) => sum + value, 0) / Math.max(1, values.length);
  return { x: mean(points.map((point) => point.x)), y: mean(points.map((point) => point.y)) };
}

/**
 * The game with a position for everything that stands on the mat. Without any there the whole is arranged; else what has one keeps it,
 * and each of the others gets the free spot nearest to what it is linked with. The same object when nothing is missing.
 */
export function placeMissing(
  game: Game,
  numbers: ReadonlyMap<NodeId, number>,
  options: { readonly view?: MapView } = {},
): Game {
  const roots = [...game.nodes.values()].filter((node) => parentOf(node) === undefined);
  const missing = new Set(roots.filter((node) => !game.positions.has(node.id)).map((node) => node.id));
  if (missing.size === 0) return game;
  if (missing.size === roots.length) return { ...game, positions: arrange(game, numbers, options) };
  const positions = new Map(game.positions);
  for (const id of [...missing].sort(byCodePoint)) {
    const placed = {
      ...game,
      nodes: new Map([...game.nodes].filter(([other]) => !missing.has(other))),
      positions,
    };
    const layout = layOut(placed, options.view ?? plainView);
    const whole = layOut({ ...game, positions }, options.view ?? plainView);
    const middle = middleOfLinks(game, layout, id, missing);
    const view = { x: middle.x - NEAR.width / 2, y: middle.y - NEAR.height / 2, ...NEAR };
    positions.set(id, freeSpot(layout, view, absolute(whole, id)));
    missing.delete(id);
  }
  return { ...game, positions };
}
