/** What is hidden where, place by place; then what stands on the tables, is handed out at the start, or is kept by the teacher. */
import type { Index } from '../../engine/measures.ts';
import { rowOf } from '../../engine/rows.ts';
import type { Assessment } from '../../findings/assess.ts';
import type { NodeId } from '../../game/model.ts';
import type { Caption } from '../../map/layout.ts';
import { byFirstUse } from '../first-use.ts';
import { whereaboutsOf } from './whereabouts.ts';

export interface SpotEntry {
  /** Told apart, because a node may have the id of a caption. */
  readonly spot: { readonly place: NodeId } | { readonly caption: Caption };
  /** What has to be done or had before the place can be searched. */
  readonly openers: readonly NodeId[];
  /** How many of them are enough; undefined: all are needed. */
  readonly need: number | undefined;
  /** By first use, things before boxes. */
  readonly things: readonly NodeId[];
}

const CAPTIONS: readonly Caption[] = ['hand', 'tables', 'given'];

/** Places by first use, then those of the captions that something has. */
export function spotEntries(assessment: Assessment): SpotEntry[] {
  const { network, context } = assessment;
  const used = byFirstUse(assessment);
  const isBox = (node: Index) => (context.kindOf(node) === 'container' ? 1 : 0);
  const inOrder = (nodes: Index[]) =>
    nodes.sort((a, b) => isBox(a) - isBox(b) || used(a, b)).map(context.idOf);

  const places: Index[] = [];
  const loose = new Map<Caption, Index[]>(CAPTIONS.map((caption) => [caption, []]));
  for (let node = 0; node < network.size; node++) {
    if (context.kindOf(node) === 'place') places.push(node);
    if (network.parent[node] !== -1) continue;
    const { caption } = whereaboutsOf(assessment, context.idOf(node));
    if (caption !== undefined) loose.get(caption)?.push(node);
  }
  const spots = places.sort(firstSearch(assessment, used)).map((place): SpotEntry => {
    const openers = Array.from(rowOf(network.needs, place));
    const need = network.k[place] ?? 0;
    return {
      spot: { place: context.idOf(place) },
      openers: openers.map(context.idOf),
      need: need < openers.length ? need : undefined,
      things: inOrder(Array.from(rowOf(network.contents, place))),
    };
  });
  for (const [caption, nodes] of loose) {
    if (nodes.length === 0) continue;
    spots.push({ spot: { caption }, openers: [], need: undefined, things: inOrder(nodes) });
  }
  return spots;
}

/** By the number of the search; a place without one by first use. */
function firstSearch({ measures }: Assessment, used: (a: Index, b: Index) => number) {
  const numberOf = (place: Index) => measures.number[place] || Number.POSITIVE_INFINITY;
  return (a: Index, b: Index) => {
    const [first, second] = [numberOf(a), numberOf(b)];
    if (first !== second) return first - second;
    return used(a, b);
  };
}
