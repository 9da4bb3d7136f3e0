import type { Game } from '../../../src/game/model.ts';
import { gameOf, LINKS, NODES } from '../open-game.ts';

/** Small, and yet with something for every sheet and every choice. */
export function smallGame(): Game {
  return gameOf(
    NODES.map((node) =>
      node.id === 'sum'
        ? { ...node, minutes: { low: 5, likely: 7, high: 10 }, rescue: 'Begin with the tens.' }
        : node,
    ),
    LINKS,
  );
}
