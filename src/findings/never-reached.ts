/** What is never reached because of something that another finding tells. One finding for all of it. */
import { byCodePoint } from '../game/compare.ts';
import type { NodeId } from '../game/model.ts';
import type { Context } from './context.ts';
import type { Rule } from './finding.ts';
import { goesNowhere } from './leads-nowhere.ts';
import { defineRule } from './rule.ts';

export interface NeverReached {
  /** By name. Locks of a box and contents of a box that are never reached either go without saying. */
  readonly nodes: readonly NodeId[];
  /** What blocks the first of them, as far as a sentence names them; each has a finding of its own. */
  readonly causes: readonly NodeId[];
}

/** So many of the nodes are named, and so for so many the cause is looked for. */
const NAMED = 5;

/** Told as a root, or as what a root costs. */
function told(context: Context): Set<number> {
  const known = new Set<number>(context.network.prizes);
  for (const root of context.roots()) {
    for (const node of root.cause === 'ring' ? root.nodes : [root.node]) known.add(node);
    if (root.cause === 'closed') known.add(context.network.parent[root.node] ?? -1);
  }
  return known;
}

function causeOf(context: Context, node: number): NodeId[] {
  const root = context.blockage(node);
  if (!root) return [];
  return [context.idOf((root.cause === 'ring' ? root.nodes[0] : root.node) ?? -1)];
}

export const neverReached: Rule<'neverReached', NeverReached> = defineRule({
  code: 'neverReached',
  find(context) {
    const { network, measures } = context;
    if (context.roots().length === 0) return [];
    const known = told(context);
    const nodes: number[] = [];
    for (let node = 0; node < network.size; node++) {
      if (measures.reached[node] === 1 || known.has(node) || goesNowhere(context, node)) continue;
      const parent = network.parent[node] ?? -1;
      if (parent >= 0 && measures.reached[parent] !== 1) continue;
      nodes.push(node);
    }
    if (nodes.length === 0) return [];
    nodes.sort((a, b) => byCodePoint(network.names[a] ?? '', network.names[b] ?? '') || a - b);
    const ids = nodes.map(context.idOf);
    const causes = new Set(nodes.slice(0, NAMED).flatMap((node) => causeOf(context, node)));
    const values = { nodes: ids, causes: [...causes] };
    return [{ code: 'neverReached', level: 'look', nodes: ids, links: [], values }];
  },
});
