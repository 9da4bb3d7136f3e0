import { measure } from '../../src/engine/measures.ts';
import { compile } from '../../src/engine/network.ts';
import type { Game } from '../../src/game/model.ts';
import { placeMissing, playNumbers } from '../../src/map/place-missing.ts';

/** With a position for everything that stands on the mat, by the order of play. */
export function place(game: Game): Game {
  const network = compile(game);
  return placeMissing(game, playNumbers(network, measure(network)));
}
