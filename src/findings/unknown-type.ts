/** Locks of a type that this version does not know: they count as opened by whatever leads to them. One finding for each type. */
import { isKnownType } from '../fasteners/index.ts';
import type { NodeId } from '../game/model.ts';
import type { Rule } from './finding.ts';
import { defineRule } from './rule.ts';

export interface UnknownType {
  readonly type: string;
  readonly fasteners: readonly NodeId[];
}

export const unknownType: Rule<'unknownType', UnknownType> = defineRule({
  code: 'unknownType',
  find({ network, game }) {
    const byType = new Map<string, NodeId[]>();
    for (const id of network.ids) {
      const node = game.nodes.get(id);
      if (node?.kind !== 'fastener' || node.type === undefined || isKnownType(node.type)) continue;
      const group = byType.get(node.type);
      if (group) group.push(id);
      else byType.set(node.type, [id]);
    }
    return Array.from(byType, ([type, fasteners]) => ({
      code: 'unknownType',
      level: 'look',
      nodes: fasteners,
      links: [],
      values: { type, fasteners },
    }));
  },
});
