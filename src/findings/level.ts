/**
 * The one rule for the level of a finding about a single node: it stops the game when, with that node never reached, a prize falls;
 * else it is worth a look. In a game that has other faults as well the question is put as blame.ts puts it, so that
 * a harmless box does not stop the game because something else does.
 */
import type { Index } from '../engine/measures.ts';
import type { NodeId } from '../game/model.ts';
import type { Context } from './context.ts';
import type { Level } from './finding.ts';

/** The prizes that fall when any one of these nodes is never reached, by id. */
export function prizesLost(context: Context, nodes: readonly Index[]): NodeId[] {
  const { network, measures } = context;
  const lost = new Set<Index>();
  for (const node of nodes) {
    for (const prize of context.prizesOn(node)) lost.add(prize);
    if (measures.reached[node] !== 1) continue;
    // With the game won, the engine has told for each step already.
    if (measures.solvable && network.isStep[node] === 1 && measures.mustDo[node] !== 1) continue;
    const left = context.without(node);
    for (const prize of network.prizes) {
      if (measures.reached[prize] === 1 && left[prize] !== 1) lost.add(prize);
    }
  }
  return Array.from(network.prizes)
    .filter((prize) => lost.has(prize))
    .map(context.idOf);
}

export function levelOf(prizes: readonly NodeId[]): Level {
  return prizes.length > 0 ? 'stops' : 'look';
}
