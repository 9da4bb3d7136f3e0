/**
 * Padlocks whose keys are alike: when one of them lets pupils in too soon.
 * The key to lock a comes to hand when what a needs is had (the k-th smallest finish of its needs), lock b is at hand when its box is. The key to a
 * opens b too soon when both have come before b could be opened as it is meant to: max(key of a, b at hand) < start of b, by more than
 * 1e-6 minutes. Times are the quickest of the engine (times.ts); what is never reached is at infinity.
 * Cost: that of compiling the game, once; then a comparison for each pair.
 */
import { isLonger } from '../../engine/compare.ts';
import { flowOf } from '../../engine/flow.ts';
import { compile } from '../../engine/network.ts';
import { rowOf } from '../../engine/rows.ts';
import { timesOf } from '../../engine/times.ts';
import type { Game, NodeId } from '../../game/model.ts';

interface Moments {
  readonly key: number;
  readonly atHand: number;
  readonly start: number;
}

export type TooSoon = (key: NodeId, lock: NodeId) => boolean;

/** Whether the key to the one fastener opens the other too soon, if one key opens both. */
export function tooSoonIn(game: Game): TooSoon {
  const network = compile(game);
  const flow = flowOf(network);
  const times = timesOf(flow);
  const at = (of: Float64Array, event: number) => {
    const position = flow.position[event] ?? -1;
    return position < 0 ? Number.POSITIVE_INFINITY : (of[position] ?? 0);
  };
  const moments = (id: NodeId): Moments | undefined => {
    const node = network.index.get(id);
    if (node === undefined) return undefined;
    const finishes = Array.from(rowOf(network.needs, node), (need) => at(times.finish, need)).sort(
      (a, b) => a - b,
    );
    const k = network.k[node] ?? 0;
    const hand = network.events.atHand[network.parent[node] ?? -1] ?? -1;
    return {
      key: k === 0 ? 0 : (finishes[k - 1] ?? Number.POSITIVE_INFINITY),
      atHand: hand < 0 ? 0 : at(times.finish, hand),
      start: at(times.start, node),
    };
  };
  const known = new Map<NodeId, Moments | undefined>();
  const momentsOf = (id: NodeId) => {
    if (!known.has(id)) known.set(id, moments(id));
    return known.get(id);
  };
  return (key, lock) => {
    const a = momentsOf(key);
    const b = momentsOf(lock);
    return a !== undefined && b !== undefined && isLonger(b.start, Math.max(a.key, b.atHand));
  };
}
