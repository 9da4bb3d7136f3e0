/** More is needed than there is. */
import type { NodeId } from '../game/model.ts';
import type { Rule } from './finding.ts';
import { levelOf } from './level.ts';
import { bringBack, lowerNeed } from './mends.ts';
import { rootsBy } from './roots.ts';
import { defineRule } from './rule.ts';

export interface NeedTooLarge {
  readonly node: NodeId;
  readonly need: number;
  /** How many links there are. */
  readonly possible: number;
  /** What else would lead to it, and is not used today. */
  readonly leftOut: readonly NodeId[];
  readonly prizes: readonly NodeId[];
}

export const needTooLarge: Rule<'needTooLarge', NeedTooLarge> = defineRule({
  code: 'needTooLarge',
  find(context) {
    return rootsBy(context, 'missing').map(({ node: index, possible, prizes }) => {
      const node = context.idOf(index);
      const written = context.game.nodes.get(node)?.need;
      const need = typeof written === 'number' ? written : possible + 1;
      return {
        code: 'needTooLarge',
        level: levelOf(prizes),
        nodes: [node],
        links: context
          .linksTo(node)
          .filter((link) => context.network.index.has(link.from))
          .map((link) => link.id),
        values: { node, need, possible, leftOut: context.leftOutBefore(node), prizes },
      };
    });
  },
  *mends(_context, { values }) {
    if (values.leftOut.length > 0) yield bringBack(values.leftOut);
    yield lowerNeed(values.node, values.possible);
  },
});
