/**
 * The one rule for the level of a finding about a single node: it stops the game when, with that node never reached, a prize falls;
 * else it is worth a look. How it is asked in a game that has other faults as well is told in the engine (stops.ts).
 */
import type { Index } from '../engine/measures.ts';
import { stopsTheGame } from '../engine/stops.ts';
import type { NodeId } from '../game/model.ts';
import type { Context } from './context.ts';
import type { Level } from './finding.ts';

/** The prizes that fall when any one of these nodes is never reached, by id. */
export function prizesLost(context: Context, nodes: readonly Index[]): NodeId[] {
  const { network, measures } = context;
  const lost = Array.from(network.prizes).filter((prize) =>
    nodes.some((node) => {
      if (measures.solvable) return measures.reached[node] === 1 && context.without(node)[prize] !== 1;
      return stopsTheGame({ ...network, prizes: Int32Array.of(prize) }, node);
    }),
  );
  return lost.map(context.idOf);
}

export function levelOf(prizes: readonly NodeId[]): Level {
  return prizes.length > 0 ? 'stops' : 'look';
}
