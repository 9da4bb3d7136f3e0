/** The steps of a game, for the kinds of change that ask each of them. */
import type { Assessment } from '../findings/assess.ts';
import { isForFun } from '../game/defaults.ts';
import type { GameNode } from '../game/model.ts';

/** Reached steps, in the order of play. What is there for fun is to stay as it is. */
export function stepsOf({ game, network, measures }: Assessment): GameNode[] {
  return Array.from(measures.order).flatMap((step) => {
    const node = game.nodes.get(network.ids[step] ?? '');
    return node && !isForFun(node) ? [node] : [];
  });
}
