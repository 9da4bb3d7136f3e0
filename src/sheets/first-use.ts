/** In which order things are first used. */
import type { Index } from '../engine/measures.ts';
import { rowOf } from '../engine/rows.ts';
import type { Assessment } from '../findings/assess.ts';
import { byCodePoint } from '../game/compare.ts';

/**
 * Compares by first use: the number of the step that a thing is, of a lock on it, or of the first that it is needed for.
 * What has none comes last; then by name, then id.
 */
export function byFirstUse({ network, measures }: Assessment): (a: Index, b: Index) => number {
  const numberOf = (node: Index) => measures.number[node] || Number.POSITIVE_INFINITY;
  const use = network.ids.map((_, node) => {
    let first = numberOf(node);
    for (const lock of rowOf(network.fasteners, node)) first = Math.min(first, numberOf(lock));
    for (const target of rowOf(network.outs, node)) first = Math.min(first, numberOf(target));
    return first;
  });
  return (a, b) => {
    const [first = 0, second = 0] = [use[a], use[b]];
    if (first !== second) return first - second;
    return byCodePoint(network.names[a] ?? '', network.names[b] ?? '') || a - b;
  };
}
