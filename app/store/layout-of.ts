/** The map's layout for a game and what is opened on it, slot by slot the same objects while nothing changed. */
import type { Game, NodeId } from '../../src/game/model.ts';
import { layOut } from '../../src/map/lay-out.ts';
import type { MapLayout } from '../../src/map/layout.ts';
import { memoLast } from './memo.ts';

interface Seen {
  readonly game: Game;
  readonly opened: ReadonlySet<NodeId>;
}

export const layoutOf = memoLast<Seen, MapLayout>(
  ({ game, opened }) => [game.nodes, game.links, game.positions, opened],
  ({ game, opened }, previous) => layOut(game, { opened }, previous),
);
