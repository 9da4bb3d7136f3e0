/** A thing with nothing in it and nothing after it, that is not marked as leading nowhere on purpose. */
import { rowOf } from '../engine/rows.ts';
import { byCodePoint } from '../game/compare.ts';
import type { NodeId } from '../game/model.ts';
import type { Context } from './context.ts';
import type { Rule } from './finding.ts';
import { bringBack, isMatch, linkUp } from './mends.ts';
import { defineRule } from './rule.ts';

export interface LeadsNowhere {
  readonly node: NodeId;
  /** What it would lead to or hold, and is not used today. */
  readonly leftOut: readonly NodeId[];
}

/** A lock leads to its box, and the prize is the end. */
export function goesNowhere(context: Context, node: number): boolean {
  const { network, game } = context;
  const kind = context.kindOf(node);
  if (kind === 'fastener' || kind === 'prize') return false;
  if (network.outs.starts[node] !== network.outs.starts[node + 1]) return false;
  if (network.contents.starts[node] !== network.contents.starts[node + 1]) return false;
  if (kind === 'container' && isForFun(context, node)) return false;
  return game.nodes.get(context.idOf(node))?.decoy !== true;
}

/** A lock on it is there for the joy of opening, which is enough. */
function isForFun({ network, game, idOf }: Context, box: number): boolean {
  return [...rowOf(network.fasteners, box)].some((lock) => {
    const node = game.nodes.get(idOf(lock));
    return node?.kind === 'fastener' && node.forFun === true;
  });
}

export const leadsNowhere: Rule<'leadsNowhere', LeadsNowhere> = defineRule({
  code: 'leadsNowhere',
  find(context) {
    const nodes = [...context.network.ids.keys()].filter((node) => goesNowhere(context, node));
    if (nodes.length === 0) return [];
    const held = new Map<NodeId, NodeId[]>();
    for (const { id, in: holder, leftOut } of context.game.nodes.values()) {
      if (holder === undefined || leftOut !== true) continue;
      held.set(holder, [...(held.get(holder) ?? []), id]);
    }
    return nodes.map((index) => {
      const node = context.idOf(index);
      const leftOut = [...context.leftOutAfter(node), ...(held.get(node) ?? [])].sort(byCodePoint);
      return { code: 'leadsNowhere', level: 'look', nodes: [node], links: [], values: { node, leftOut } };
    });
  },
  *mends(context, { values }, fresh) {
    const { game, network } = context;
    const source = game.nodes.get(values.node);
    if (!source) return;
    for (const id of network.ids) {
      const target = game.nodes.get(id);
      if (target && isMatch(context, source, target)) yield linkUp(fresh, values.node, id);
    }
    for (const id of values.leftOut) yield bringBack([id]);
    yield {
      code: 'markDecoy',
      values: { node: values.node },
      edits: [{ type: 'setFields', id: values.node, fields: { decoy: true } }],
    };
  },
});
