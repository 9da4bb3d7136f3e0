/** What tidying computes, in the worker or, where none runs, on the page: positions, and the routes of the arrows for them. */
import type { Game, NodeId, Point } from '../../../src/game/model.ts';
import { arrange } from '../../../src/map/arrange.ts';
import { layOut } from '../../../src/map/lay-out.ts';
import { type SentRoutes, sendRoutes } from '../../../src/map/route/sent.ts';
import { routes } from '../../../src/map/route.ts';

export interface TidyQuestion {
  readonly game: Game;
  /** The order of play, from 1. */
  readonly numbers: ReadonlyMap<NodeId, number>;
  /** Boxes that are opened on the map: they take more room. */
  readonly opened: ReadonlySet<NodeId>;
  /** What may be moved of what stands on the mat; undefined: all of it. */
  readonly only: ReadonlySet<NodeId> | undefined;
}

export interface TidyAnswer {
  readonly positions: ReadonlyMap<NodeId, Point>;
  readonly routes: SentRoutes | undefined;
  /** No better one comes. */
  readonly final: boolean;
}

/** Positions for all of the game's nodes, better ones after worse. */
function* arranged({ game, numbers, opened }: TidyQuestion): Generator<ReadonlyMap<NodeId, Point>> {
  yield arrange(game, numbers, { view: { opened } });
}

/** Answers, better ones after worse. Undefined: nothing new to be shown, and the page may breathe. */
export function* tidyAnswers(question: TidyQuestion): Generator<TidyAnswer | undefined> {
  const { game, opened } = question;
  const answer = (positions: ReadonlyMap<NodeId, Point>): Omit<TidyAnswer, 'final'> => {
    const layout = layOut({ ...game, positions }, { opened });
    return { positions, routes: sendRoutes(routes(layout, game.links.values())) };
  };
  let first: Omit<TidyAnswer, 'final'> | undefined;
  let best: ReadonlyMap<NodeId, Point> | undefined;
  for (const positions of arranged(question)) {
    best = positions;
    if (first) yield undefined;
    else {
      first = answer(positions);
      yield { ...first, final: false };
    }
  }
  if (!first || !best) return;
  yield { ...(first.positions === best ? first : answer(best)), final: true };
}
