/**
 * A prize that no single fault keeps out of reach: every way to it is blocked, each by faults of its own. Where one fault is the
 * cause, the finding of that fault names the prize, and this one is silent.
 */
import type { NodeId } from '../game/model.ts';
import type { Rule } from './finding.ts';
import { defineRule } from './rule.ts';

export interface PrizeOutOfReach {
  readonly prize: NodeId;
  /** What blocks the ways to it: one node for each root. */
  readonly causes: readonly NodeId[];
}

export const prizeOutOfReach: Rule<'prizeOutOfReach', PrizeOutOfReach> = defineRule({
  code: 'prizeOutOfReach',
  find(context) {
    const { network, measures } = context;
    const named = new Set(context.roots().flatMap(({ prizes }) => prizes));
    const causes = context
      .roots()
      .map((root) => (root.cause === 'ring' ? root.nodes[0] : root.node) ?? -1)
      .sort((a, b) => a - b)
      .map(context.idOf);
    return Array.from(network.prizes)
      .filter((prize) => measures.reached[prize] !== 1)
      .map(context.idOf)
      .filter((prize) => !named.has(prize))
      .map((prize) => ({
        code: 'prizeOutOfReach',
        level: 'stops',
        nodes: [prize, ...causes],
        links: [],
        values: { prize, causes },
      }));
  },
});
