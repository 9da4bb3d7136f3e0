/** Where everything is on the map: derived from the game, from what tidying shows of it already, and from what is opened. */
import type { MapLayout } from '../../src/map/layout.ts';
import { useGame } from './game.ts';
import { layoutOf } from './layout-of.ts';
import { shownGame, useTidying } from './tidying.ts';
import { useView } from './view.ts';

export function useLayout(): MapLayout {
  const opened = useView((view) => view.opened);
  const shown = useTidying((state) => state.shown);
  return useGame(({ game }) => layoutOf({ game: shownGame(game, shown), opened }));
}

/** For what happens outside of drawing: a paste, a command. */
export function currentLayout(): MapLayout {
  const { game } = useGame.getState();
  const { opened } = useView.getState();
  return layoutOf({ game: shownGame(game, useTidying.getState().shown), opened });
}
