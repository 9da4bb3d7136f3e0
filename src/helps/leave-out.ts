/**
 * A step is left out, and with it what led to nothing else and what lay in it for nothing. What is still used does without only where fewer were asked
 * for than led to it: a puzzle that asks for all would have to be worked without its clue.
 */
import { compile } from '../engine/network.ts';
import { leadsToPrize } from '../findings/timed/needless-step.ts';
import { type Game, type NodeId, withContents } from '../game/model.ts';
import type { HelpKind } from './help.ts';
import { stepsOf } from './steps.ts';

/** With more steps gone it is another game. */
const MOST_STEPS = 3;

function without(game: Game, id: NodeId): Game {
  const node = game.nodes.get(id);
  return node ? { ...game, nodes: new Map(game.nodes).set(id, { ...node, leftOut: true }) } : game;
}

export const leaveOut: HelpKind<'leaveOut'> = {
  code: 'leaveOut',
  tries(assessment) {
    const { game, network, context } = assessment;
    const isMissed = (ids: readonly NodeId[]) => {
      const gone = new Set(ids);
      const targets = ids.flatMap((id) => context.linksFrom(id).map(({ to }) => to));
      return targets.some(
        (id) =>
          !gone.has(id) && network.index.has(id) && typeof (game.nodes.get(id)?.need ?? 'all') !== 'number',
      );
    };
    const led = leadsToPrize(network);
    return stepsOf(assessment).flatMap(({ id: step }) => {
      const rest = compile(without(game, step));
      const leads = leadsToPrize(rest);
      const inside = withContents(game, [step]);
      const others = rest.ids.filter((id, i) => {
        if (leads[i] === 1) return false;
        return led[network.index.get(id) ?? -1] === 1 || inside.has(id);
      });
      const steps = others.filter((id) => network.isStep[network.index.get(id) ?? -1] === 1).length;
      if (steps >= MOST_STEPS || isMissed([step, ...others])) return [];
      return [
        {
          code: 'leaveOut',
          values: { step, others },
          edits: [{ type: 'leaveOut', ids: [step, ...others], leftOut: true }],
        },
      ];
    });
  },
};
