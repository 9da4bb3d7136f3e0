/**
 * What is true of the open game: one result that verdict, panels, forms and map all read, so that no two figures on a
 * screen can come from different moments. Positions take no part in it: moving a thing computes nothing here.
 */
import { type Measures, measure } from '../../src/engine/measures.ts';
import { compile, type Network } from '../../src/engine/network.ts';
import type { Game } from '../../src/game/model.ts';
import { useGame } from './game.ts';
import { memoLast } from './memo.ts';

export interface Assessment {
  readonly game: Game;
  readonly network: Network;
  readonly measures: Measures;
}

function assess(game: Game): Assessment {
  const network = compile(game);
  return { game, network, measures: measure(network) };
}

const assessmentOf = memoLast<Game, Assessment>((game) => [game.nodes, game.links, game.head.lesson], assess);

export function useAssessment(): Assessment {
  return useGame(({ game }) => assessmentOf(game));
}

/** For what happens outside of drawing: a command, the worker's next question. */
export function currentAssessment(): Assessment {
  return assessmentOf(useGame.getState().game);
}
