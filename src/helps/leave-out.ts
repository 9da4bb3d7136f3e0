/** A step is left out, and with it what led to nothing else and what lay in it for nothing. */
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
    const { game, network } = assessment;
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
      if (steps >= MOST_STEPS) return [];
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
