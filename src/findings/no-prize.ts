/** Nothing to win. */
import { byCodePoint } from '../game/compare.ts';
import type { Context } from './context.ts';
import type { Rule } from './finding.ts';
import { bringBack } from './mends.ts';
import { defineRule } from './rule.ts';

export interface NoPrize {
  /** Prizes that are not used today. */
  readonly leftOut: readonly string[];
}

function leftOutPrizes({ game }: Context): string[] {
  return [...game.nodes.values()]
    .filter((node) => node.kind === 'prize' && node.leftOut === true)
    .map((node) => node.id)
    .sort(byCodePoint);
}

export const noPrize: Rule<'noPrize', NoPrize> = defineRule({
  code: 'noPrize',
  find(context) {
    if (context.network.prizes.length > 0) return [];
    return [
      { code: 'noPrize', level: 'stops', nodes: [], links: [], values: { leftOut: leftOutPrizes(context) } },
    ];
  },
  *mends(context, { values }, fresh) {
    for (const prize of values.leftOut) yield bringBack([prize]);
    const { measures, network } = context;
    const boxes = Array.from(network.prizes.length === 0 ? measures.reached.keys() : []).filter(
      (node) => measures.reached[node] === 1 && context.kindOf(node) === 'container',
    );
    boxes.sort((a, b) => (measures.finish[b] ?? 0) - (measures.finish[a] ?? 0) || a - b);
    for (const box of boxes) {
      const holder = context.idOf(box);
      yield {
        code: 'addPrize',
        values: { holder },
        edits: [
          {
            type: 'add',
            nodes: [{ id: fresh.newId(), kind: 'prize', name: fresh.nameOf('prize'), in: holder }],
            links: [],
            positions: [],
          },
        ],
      };
    }
  },
});
