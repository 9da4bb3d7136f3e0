/**
 * A prize that is had without doing anything: its earliest proof holds no step. A prize that is a step itself takes time to be
 * had, so its own step counts as part of its proof.
 */
import type { NodeId } from '../game/model.ts';
import type { Context } from './context.ts';
import type { Rule } from './finding.ts';
import { bringBack, holdersFor, putIn } from './mends.ts';
import { defineRule } from './rule.ts';

export interface PrizeGivenAway {
  readonly prize: NodeId;
  /** What held it or handed it over, and is not used today. */
  readonly leftOut: readonly NodeId[];
}

export function isGivenAway(context: Context, prize: number): boolean {
  // The proofs cost more, and are asked only for a prize that can be reached without any step at all.
  return context.withoutSteps()[prize] === 1 && context.proofs().steps(prize).length === 0;
}

function leftOutAround(context: Context, prize: NodeId): NodeId[] {
  const { game } = context;
  const around: NodeId[] = [...context.leftOutBefore(prize)];
  for (let holder = game.nodes.get(prize)?.in; holder !== undefined; holder = game.nodes.get(holder)?.in) {
    if (game.nodes.get(holder)?.leftOut === true) around.push(holder);
  }
  return around;
}

export const prizeGivenAway: Rule<'prizeGivenAway', PrizeGivenAway> = defineRule({
  code: 'prizeGivenAway',
  find(context) {
    return Array.from(context.network.prizes)
      .filter((prize) => isGivenAway(context, prize))
      .map((node) => {
        const prize = context.idOf(node);
        const values = { prize, leftOut: leftOutAround(context, prize) };
        return { code: 'prizeGivenAway', level: 'stops', nodes: [prize], links: [], values };
      });
  },
  *mends(context, { values }) {
    if (values.leftOut.length > 0) yield bringBack(values.leftOut);
    for (const holder of holdersFor(context, new Set([values.prize]))) yield putIn(values.prize, holder);
  },
});
