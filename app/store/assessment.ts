/**
 * What is true of the open game: one result that verdict, panels, forms and map all read, so that no two figures on a
 * screen can come from different moments. Positions take no part in it: moving a thing computes nothing here.
 */
import { type Assessment, assess } from '../../src/findings/assess.ts';
import type { Game } from '../../src/game/model.ts';
import { currentWordList, useWordList } from '../word-list/word-list.ts';
import { useGame } from './game.ts';
import { memoLast } from './memo.ts';

export type { Assessment };

/** The same object for as long as nothing changes but positions. */
export const assessmentOf = memoLast<Game, Assessment>(
  (game) => [game.nodes, game.links, game.head, currentWordList()],
  (game) => assess(game, currentWordList()),
);

export function useAssessment(): Assessment {
  useWordList();
  return useGame(({ game }) => assessmentOf(game));
}

/** For what happens outside of drawing: a command, the worker's next question. */
export function currentAssessment(): Assessment {
  return assessmentOf(useGame.getState().game);
}
