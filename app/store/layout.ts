/** Where everything is on the map: derived from the game and from what is opened, slot by slot the same objects while nothing changed. */
import type { Game, NodeId } from '../../src/game/model.ts';
import { layOut } from '../../src/map/lay-out.ts';
import type { MapLayout } from '../../src/map/layout.ts';
import { useGame } from './game.ts';
import { memoLast } from './memo.ts';
import { useView } from './view.ts';

interface Seen {
  readonly game: Game;
  readonly opened: ReadonlySet<NodeId>;
}

const NONE: ReadonlySet<NodeId> = new Set();

const layoutOf = memoLast<Seen, MapLayout>(
  ({ game, opened }) => [game.nodes, game.links, game.positions, opened],
  ({ game, opened }, previous) => layOut(game, { folded: NONE, opened }, previous),
);

export function useLayout(): MapLayout {
  const opened = useView((view) => view.opened);
  return useGame(({ game }) => layoutOf({ game, opened }));
}

/** For what happens outside of drawing: a paste, a command. */
export function currentLayout(): MapLayout {
  return layoutOf({ game: useGame.getState().game, opened: useView.getState().opened });
}
