/** Things that wait for each other, so that none is ever reached: a key locked in the box that it opens, and longer rings. */
import type { NodeId } from '../game/model.ts';
import type { Context } from './context.ts';
import type { Rule } from './finding.ts';
import { levelOf } from './level.ts';
import { bringBack, holdersFor, putIn } from './mends.ts';
import { rootsBy } from './roots.ts';
import { defineRule } from './rule.ts';

export interface RingOfThings {
  /** Each waits for the next, the last for the first. Where a thing lies in one of them, it comes first and its holder second. */
  readonly ring: readonly NodeId[];
  /** A thing shut in this box, which a lock on it needs at once. */
  readonly ownBox: NodeId | undefined;
  readonly prizes: readonly NodeId[];
}

const THINGS: ReadonlySet<string> = new Set(['key', 'clue', 'tool', 'container']);

/** The same ring, begun at the smallest thing that lies in what comes next. */
function fromCulprit(context: Context, ring: readonly number[]): readonly number[] {
  const lies = (i: number) => {
    const node = ring[i] ?? -1;
    return context.network.parent[node] === ring[(i + 1) % ring.length] && THINGS.has(context.kindOf(node));
  };
  const starts = [...ring.keys()].filter(lies);
  const isBox = (i: number) => (context.kindOf(ring[i] ?? 0) === 'container' ? 1 : 0);
  starts.sort((a, b) => isBox(a) - isBox(b) || (ring[a] ?? 0) - (ring[b] ?? 0));
  const [start = 0] = starts;
  return [...ring.slice(start), ...ring.slice(0, start)];
}

function linksAlong(context: Context, ring: readonly NodeId[]): string[] {
  return ring.flatMap((id, i) => {
    const needed = ring[(i + 1) % ring.length];
    return context
      .linksTo(id)
      .filter((link) => link.from === needed)
      .map((link) => link.id);
  });
}

export const ring: Rule<'ring', RingOfThings> = defineRule({
  code: 'ring',
  find(context) {
    const { network } = context;
    return rootsBy(context, 'ring').map((root) => {
      const { prizes } = root;
      const nodes = fromCulprit(context, root.nodes);
      const [first = -1, second = -1, third = -1] = nodes;
      const isOwnBox =
        nodes.length === 3 &&
        network.parent[first] === second &&
        network.parent[third] === second &&
        context.kindOf(third) === 'fastener';
      const ids = nodes.map(context.idOf);
      return {
        code: 'ring',
        level: levelOf(prizes),
        nodes: ids,
        links: linksAlong(context, ids),
        values: { ring: ids, ownBox: isOwnBox ? ids[1] : undefined, prizes },
      };
    });
  },
  *mends(context, { values, links }) {
    const { game } = context;
    const around = new Set(values.ring);
    for (const id of values.ring) {
      const node = game.nodes.get(id);
      if (node?.in === undefined || !around.has(node.in)) continue;
      for (const holder of holdersFor(context, around)) yield putIn(id, holder);
      yield {
        code: 'putInHand',
        values: { thing: id },
        edits: [{ type: 'place', ids: [id], holder: null }],
      };
    }
    const leftOut = values.ring.flatMap((id) => context.leftOutBefore(id));
    if (leftOut.length > 0) yield bringBack(leftOut);
    for (const id of links) {
      const link = game.links.get(id);
      if (!link) continue;
      yield {
        code: 'unlink',
        values: { from: link.from, to: link.to },
        edits: [{ type: 'unlink', ids: [id] }],
      };
    }
  },
});
