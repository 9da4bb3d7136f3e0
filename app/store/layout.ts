/** Where everything is on the map: derived from the game and from what is opened. */
import type { MapLayout } from '../../src/map/layout.ts';
import { useGame } from './game.ts';
import { layoutOf } from './layout-of.ts';
import { useView } from './view.ts';

export function useLayout(): MapLayout {
  const opened = useView((view) => view.opened);
  return useGame(({ game }) => layoutOf({ game, opened }));
}

/** For what happens outside of drawing: a paste, a command. */
export function currentLayout(): MapLayout {
  return layoutOf({ game: useGame.getState().game, opened: useView.getState().opened });
}
