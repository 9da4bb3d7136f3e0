/** Every text of a game in which the name of another thing may be quoted, and the edits that change it. Codes and answers are none of them. */
import type { Edit } from '../../game/edits/edit.ts';
import type { Game, GameNode, NodeId } from '../../game/model.ts';

/** `null`: of the game itself. */
export type Spot =
  | { readonly of: NodeId; readonly field: 'name' | 'text' | 'note' | 'otherWay' }
  | { readonly of: null; readonly field: 'title' | 'summary' };

const FIELDS = ['name', 'text', 'note', 'otherWay'] as const;
const HEAD_FIELDS = ['title', 'summary'] as const;

export function spotKey({ of, field }: Spot): string {
  return JSON.stringify([of, field]);
}

export function spotsOf(node: Pick<GameNode, 'id'>): readonly Spot[] {
  return FIELDS.map((field) => ({ of: node.id, field }));
}

/** In the order of the map of nodes, the game's own last. */
export function allSpots(game: Game): readonly Spot[] {
  const ofHead = HEAD_FIELDS.map((field): Spot => ({ of: null, field }));
  return [...[...game.nodes.values()].flatMap(spotsOf), ...ofHead];
}

/** '' where there is none. */
export function textAt(game: Game, spot: Spot): string {
  if (spot.of === null) return game.head[spot.field] ?? '';
  return game.nodes.get(spot.of)?.[spot.field] ?? '';
}

export function setText(spot: Spot, text: string): Edit {
  if (spot.of === null) return { type: 'setHead', fields: { [spot.field]: text } };
  if (spot.field === 'name') return { type: 'rename', id: spot.of, name: text };
  return { type: 'setFields', id: spot.of, fields: { [spot.field]: text } };
}
