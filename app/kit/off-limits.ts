/** Hiding places of the open game that are off limits in my room. */
import { isLeftOut } from '../../src/engine/left-out.ts';
import type { Game, GameNode } from '../../src/game/model.ts';
import { sameWords } from '../../src/kit/fit/suits.ts';
import type { Kit } from '../../src/kit/model.ts';

export function offLimitsIn(game: Game, { places }: Kit): readonly GameNode[] {
  const closed = places.filter(({ offLimits }) => offLimits === true);
  if (closed.length === 0) return [];
  return [...game.nodes.values()].filter(
    (node) =>
      node.kind === 'place' &&
      !isLeftOut(game, node.id) &&
      closed.some(({ name }) => sameWords(name, node.name)),
  );
}
