/** What lies in what, box by box, in the order of packing. */
import type { Index } from '../../engine/measures.ts';
import { rowOf } from '../../engine/rows.ts';
import type { Assessment } from '../../findings/assess.ts';
import type { FindingWith } from '../../findings/finding.ts';
import type { NodeId } from '../../game/model.ts';
import { byFirstUse } from '../first-use.ts';

export interface BoxEntry {
  readonly box: NodeId;
  /** By first use. */
  readonly things: readonly NodeId[];
  readonly boxes: readonly NodeId[];
  /** In the order of play. */
  readonly locks: readonly NodeId[];
  /** A thing that lies in the box that it opens. */
  readonly shutIn: readonly FindingWith<'ring'>[];
}

/**
 * Every box that is used. What opens last is packed first: so every box comes before the one that it lies in, and every key
 * lies at hand until its lock is shut, as far as the game has such an order. Boxes that never open come first, inner before outer.
 */
export function boxEntries(assessment: Assessment): BoxEntry[] {
  const { network, measures, context, findings } = assessment;
  const rings = new Map<NodeId, FindingWith<'ring'>[]>();
  for (const finding of findings) {
    if (finding.code !== 'ring' || finding.values.ownBox === undefined) continue;
    const list = rings.get(finding.values.ownBox);
    if (list) list.push(finding);
    else rings.set(finding.values.ownBox, [finding]);
  }
  const depthOf = depths(network.parent);
  const used = byFirstUse(assessment);
  const boxes: Index[] = [];
  for (let node = 0; node < network.size; node++) if (context.kindOf(node) === 'container') boxes.push(node);
  const opens = (box: Index) => measures.finish[box] ?? Number.POSITIVE_INFINITY;
  boxes.sort((a, b) => {
    const [first, second] = [opens(a), opens(b)];
    if (first !== second) return first < second ? 1 : -1;
    return depthOf(b) - depthOf(a) || used(b, a);
  });
  return boxes.map((box) => {
    const inside = Array.from(rowOf(network.contents, box)).sort(used);
    const isBox = (node: Index) => context.kindOf(node) === 'container';
    return {
      box: context.idOf(box),
      things: inside.filter((node) => !isBox(node)).map(context.idOf),
      boxes: inside.filter(isBox).map(context.idOf),
      locks: Array.from(rowOf(network.fasteners, box)).sort(used).map(context.idOf),
      shutIn: rings.get(context.idOf(box)) ?? [],
    };
  });
}

/** How many holders each node lies in. */
function depths(parent: Int32Array): (node: Index) => number {
  const known = new Map<Index, number>();
  return (node) => {
    const path: Index[] = [];
    let at = node;
    while (at >= 0 && !known.has(at)) {
      path.push(at);
      at = parent[at] ?? -1;
    }
    let depth = at < 0 ? -1 : (known.get(at) ?? 0);
    for (const step of path.reverse()) known.set(step, ++depth);
    return known.get(node) ?? 0;
  };
}
