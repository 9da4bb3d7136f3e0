/** What tidying computes, in the worker or, where none runs, on the page: positions, and the routes of the arrows for them. */
import type { Game, NodeId, Point } from '../../../src/game/model.ts';
import { tidy } from '../../../src/map/arrange.ts';
import { layOut } from '../../../src/map/lay-out.ts';
import { type SentRoutes, sendRoutes } from '../../../src/map/route/sent.ts';
import { routes } from '../../../src/map/route.ts';

export interface TidyQuestion {
  readonly game: Game;
  /** The order of play, from 1. */
  readonly numbers: ReadonlyMap<NodeId, number>;
  /** Boxes that are opened on the map: they take more room. */
  readonly opened: ReadonlySet<NodeId>;
  /** What of the map is tidied; undefined: all of it. */
  readonly only: ReadonlySet<NodeId> | undefined;
  /** Where it starts: from where things stand, or as if they stood nowhere. */
  readonly from: 'document' | 'scratch';
}

export interface TidyAnswer {
  readonly positions: ReadonlyMap<NodeId, Point>;
  readonly routes: SentRoutes | undefined;
  /** No better one comes. */
  readonly final: boolean;
}

/** Up to this many arrows come with the positions. */
const ROUTED_WITH = 400;

/** Two answers: the first positions at once, then the last, which may be the same. Undefined: the search goes on, and the page may breathe. */
export function* tidyAnswers(question: TidyQuestion): Generator<TidyAnswer | undefined> {
  const { game, numbers, opened, only, from } = question;
  const view = { opened };
  const answer = (positions: ReadonlyMap<NodeId, Point>): TidyAnswer => {
    // Very many would take longer than the positions; the map finds them afterwards.
    if (game.links.size > ROUTED_WITH) return { positions, routes: undefined, final: false };
    const layout = layOut({ ...game, positions }, view);
    return { positions, routes: sendRoutes(routes(layout, game.links.values())), final: false };
  };
  const search = tidy(game, numbers, { view, from, ...(only && { only }) });
  let shown: TidyAnswer | undefined;
  for (;;) {
    const { done, value } = search.next();
    // The first at once and the last; in between they would only make the map restless.
    const wanted = shown === undefined || (done && shown.positions !== value);
    if (wanted) shown = answer(value);
    if (done) break;
    yield wanted ? shown : undefined;
  }
  if (shown) yield { ...shown, final: true };
}
