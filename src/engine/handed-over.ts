/** What the teacher hands over when a puzzle is solved. Cost: linear in the links of the things that it leads to. */
import { KINDS, type Kind } from '../game/model.ts';
import type { Index, Measures } from './measures.ts';
import type { Network } from './network.ts';
import { rowOf } from './rows.ts';

const NEVER_HANDED: readonly Kind[] = ['place', 'puzzle', 'fastener'];

/** It may lie in something and does not. */
export function isLoose({ parent, kinds }: Network, node: Index): boolean {
  const kind = KINDS[kinds[node] ?? 0];
  return (parent[node] ?? -1) < 0 && kind !== undefined && !NEVER_HANDED.includes(kind);
}

/** Puzzles that lead to a thing that lies in nothing. */
export function giversOf(network: Network, thing: Index): Index[] {
  if (!isLoose(network, thing)) return [];
  return Array.from(rowOf(network.needs, thing)).filter(
    (need) => KINDS[network.kinds[need] ?? 0] === 'puzzle',
  );
}

/**
 * Things handed over at this puzzle, by index. Where several puzzles lead to a thing, that is the one with which as many as it
 * needs are solved, those that finish first counted first.
 */
export function handedOverAt(network: Network, measures: Measures, puzzle: Index): Index[] {
  const finish = (node: Index) => measures.finish[node] ?? Number.POSITIVE_INFINITY;
  return Array.from(rowOf(network.outs, puzzle)).filter((thing) => {
    const givers = giversOf(network, thing).sort(
      (a, b) => finish(a) - finish(b) || (measures.number[a] ?? 0) - (measures.number[b] ?? 0) || a - b,
    );
    return givers[Math.min(network.k[thing] ?? 0, givers.length) - 1] === puzzle;
  });
}
