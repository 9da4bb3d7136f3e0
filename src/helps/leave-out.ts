/**
 * A step is left out, and with it what led to nothing else and what lay in it for nothing. What is still used does without only where fewer were asked
 * for than led to it: a puzzle that asks for all would have to be worked without its clue.
 */
import { compile } from '../engine/network.ts';
import type { Assessment } from '../findings/assess.ts';
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

/**
 * What is left out with a node: all that then leads to no prize and led to one before or lies in it. Undefined where that is too much, or where
 * something that is still used would have to do without.
 */
export function leftOutWith({ game, network, context }: Assessment, node: NodeId): NodeId[] | undefined {
  const led = leadsToPrize(network);
  const rest = compile(without(game, node));
  const leads = leadsToPrize(rest);
  const inside = withContents(game, [node]);
  const others = rest.ids.filter((id, i) => {
    if (leads[i] === 1) return false;
    return led[network.index.get(id) ?? -1] === 1 || inside.has(id);
  });
  const steps = others.filter((id) => network.isStep[network.index.get(id) ?? -1] === 1).length;
  const gone = new Set([node, ...others]);
  const isMissed = [...gone]
    .flatMap((id) => context.linksFrom(id))
    .some(
      ({ to }) =>
        !gone.has(to) && network.index.has(to) && typeof (game.nodes.get(to)?.need ?? 'all') !== 'number',
    );
  return steps >= MOST_STEPS || isMissed ? undefined : others;
}

export const leaveOut: HelpKind<'leaveOut'> = {
  code: 'leaveOut',
  tries: (assessment) =>
    stepsOf(assessment).flatMap(({ id: step }) => {
      const others = leftOutWith(assessment, step);
      if (!others) return [];
      return [
        {
          code: 'leaveOut',
          values: { step, others },
          edits: [{ type: 'leaveOut', ids: [step, ...others], leftOut: true }],
        },
      ];
    }),
};
