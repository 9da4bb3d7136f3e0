/** What leaving something out has put into the pupils' hands sooner: what it held, what it handed over, or what it kept shut. */

import { isLonger } from '../engine/compare.ts';
import { isLeftOut, parentInUse } from '../engine/left-out.ts';
import { byCodePoint } from '../game/compare.ts';
import type { NodeId } from '../game/model.ts';
import type { Context } from './context.ts';
import type { Rule } from './finding.ts';
import { bringBack } from './mends.ts';
import { isGivenAway } from './prize-given-away.ts';
import { defineRule } from './rule.ts';

export interface GivenAway {
  /** What is not used today. */
  readonly cause: NodeId;
  readonly things: readonly NodeId[];
  /** Where the things lie now; undefined: in the pupils' hands. */
  readonly holder: NodeId | undefined;
}

/** Left-out nodes that kept this one from being had: holders, puzzles that hand it over, locks on it. */
function keptBy(context: Context, id: NodeId, locks: ReadonlyMap<NodeId, readonly NodeId[]>): NodeId[] {
  const { game } = context;
  const causes: NodeId[] = [];
  const inUse = parentInUse(game, id);
  const holder = game.nodes.get(id)?.in;
  if (holder !== inUse && holder !== undefined) causes.push(holder);
  if (inUse === undefined && holder === undefined) {
    causes.push(...context.leftOutBefore(id).filter((from) => game.nodes.get(from)?.kind === 'puzzle'));
  }
  causes.push(...(locks.get(id) ?? []));
  return causes;
}

/** Left-out locks on boxes that are used. */
function leftOutLocks({ game }: Context): Map<NodeId, NodeId[]> {
  const locks = new Map<NodeId, NodeId[]>();
  for (const node of game.nodes.values()) {
    if (node.kind !== 'fastener' || node.leftOut !== true || isLeftOut(game, node.on)) continue;
    locks.set(node.on, [...(locks.get(node.on) ?? []), node.id]);
  }
  return locks;
}

export const givenAway: Rule<'givenAway', GivenAway> = defineRule({
  code: 'givenAway',
  find(context) {
    const whole = context.whole();
    if (!whole) return [];
    const { network, measures, game } = context;
    const locks = leftOutLocks(context);
    const byCause = new Map<NodeId, NodeId[]>();
    for (const [node, id] of network.ids.entries()) {
      if (measures.reached[node] !== 1 || game.nodes.get(id)?.kind === 'fastener') continue;
      const before = whole.measures.start[whole.network.index.get(id) ?? -1] ?? 0;
      if (!isLonger(before, measures.start[node] ?? 0)) continue;
      if (context.kindOf(node) === 'prize' && isGivenAway(context, node)) continue;
      for (const cause of keptBy(context, id, locks)) {
        byCause.set(cause, [...(byCause.get(cause) ?? []), id]);
      }
    }
    return [...byCause.keys()].sort(byCodePoint).map((cause) => {
      const things = byCause.get(cause) ?? [];
      const holder = things[0] === undefined ? undefined : parentInUse(game, things[0]);
      const values = { cause, things, holder };
      return { code: 'givenAway', level: 'look', nodes: [cause, ...things], links: [], values };
    });
  },
  *mends(_context, { values }) {
    yield bringBack([values.cause]);
  },
});
