/** A lock that nothing opens. */
import type { NodeId } from '../game/model.ts';
import type { Rule } from './finding.ts';
import { levelOf } from './level.ts';
import { bringBack, isMatch, linkUp } from './mends.ts';
import { rootsBy } from './roots.ts';
import { defineRule } from './rule.ts';

export interface NothingOpens {
  readonly fastener: NodeId;
  readonly container: NodeId;
  /** What would open it, and is not used today. */
  readonly leftOut: readonly NodeId[];
  readonly prizes: readonly NodeId[];
}

export const nothingOpens: Rule<'nothingOpens', NothingOpens> = defineRule({
  code: 'nothingOpens',
  find(context) {
    return rootsBy(context, 'closed').map(({ node, prizes }) => {
      const fastener = context.idOf(node);
      const container = context.idOf(context.network.parent[node] ?? -1);
      const leftOut = context.leftOutBefore(fastener);
      return {
        code: 'nothingOpens',
        level: levelOf(prizes),
        nodes: [fastener, container],
        links: [],
        values: { fastener, container, leftOut, prizes },
      };
    });
  },
  *mends(context, { values }, fresh) {
    const { game, network } = context;
    for (const source of values.leftOut) yield bringBack([source]);
    const lock = game.nodes.get(values.fastener);
    if (!lock) return;
    const leadsNowhere = (node: number) => network.outs.starts[node] === network.outs.starts[node + 1];
    const matches = [...network.ids.keys()].filter((node) => {
      const source = game.nodes.get(context.idOf(node));
      return source !== undefined && isMatch(context, source, lock);
    });
    matches.sort((a, b) => Number(leadsNowhere(b)) - Number(leadsNowhere(a)) || a - b);
    for (const source of matches) yield linkUp(fresh, context.idOf(source), values.fastener);
  },
});
