/** A thing that some puzzle hands over, but that can be had without it, because fewer are needed than lead to it. */
import type { NodeId } from '../game/model.ts';
import type { Rule } from './finding.ts';
import { needAll } from './mends.ts';
import { defineRule } from './rule.ts';

export interface HandOver {
  readonly thing: NodeId;
  readonly need: number;
  readonly links: number;
  /** Those that it can be had without. */
  readonly puzzles: readonly NodeId[];
}

export const handOver: Rule<'handOver', HandOver> = defineRule({
  code: 'handOver',
  find(context) {
    const { network, measures } = context;
    return [...network.ids.keys()].flatMap((node) => {
      const sources = Array.from(
        network.needs.items.subarray(network.needs.starts[node], network.needs.starts[node + 1]),
      );
      const need = network.k[node] ?? 0;
      const kind = context.kindOf(node);
      const isThing = kind !== 'place' && kind !== 'puzzle' && kind !== 'fastener';
      if (need >= sources.length || !isThing) return [];
      if ((network.parent[node] ?? -1) >= 0 || measures.reached[node] !== 1) return [];
      const puzzles = sources.filter(
        (source) => context.kindOf(source) === 'puzzle' && context.without(source)[node] === 1,
      );
      if (puzzles.length === 0) return [];
      const thing = context.idOf(node);
      const ids = puzzles.map(context.idOf);
      return [
        {
          code: 'handOver',
          level: 'look',
          nodes: [thing, ...ids],
          links: context
            .linksTo(thing)
            .filter((link) => ids.includes(link.from))
            .map((link) => link.id),
          values: { thing, need, links: sources.length, puzzles: ids },
        },
      ];
    });
  },
  *mends(_context, { values }) {
    yield needAll(values.thing, values.links);
  },
});
