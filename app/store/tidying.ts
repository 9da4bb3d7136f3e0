/** Tidying under way: what is being worked out, and what of it is shown on the map before it is in the game. */
import { create } from 'zustand';
import type { Game, LinkId, NodeId, Point } from '../../src/game/model.ts';
import type { Route } from '../../src/map/layout.ts';

/** `asked`: by command, and one edit when it is done. `opening`: of a game that came without positions; no edit. */
export type TidyWork = 'asked' | 'opening';

export interface TidyingState {
  readonly work: TidyWork | undefined;
  /** Ends it without a trace. */
  readonly stop: (() => void) | undefined;
  /** It has taken long enough to be spoken of. */
  readonly slow: boolean;
  /** Positions that the map shows in place of the game's. */
  readonly shown: ReadonlyMap<NodeId, Point> | undefined;
  /** The newest routes that came from the worker; the map begins with them, so that it need not find them itself. */
  readonly routes: ReadonlyMap<LinkId, Route> | undefined;
  /** The game in which nothing was left to be tidied: said for a few seconds, if it stays the open one. */
  readonly tidyAlready: Game | undefined;
}

export const useTidying = create<TidyingState>()(() => ({
  work: undefined,
  stop: undefined,
  slow: false,
  shown: undefined,
  routes: undefined,
  tidyAlready: undefined,
}));

/** The game as the map shows it. */
export function shownGame(game: Game, shown: ReadonlyMap<NodeId, Point> | undefined): Game {
  return shown ? { ...game, positions: shown } : game;
}
