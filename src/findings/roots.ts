/** The roots of what is never reached, each with the prizes that it costs. */
import type { Blockage } from '../engine/measures.ts';
import type { Network } from '../engine/network.ts';
import { rowOf } from '../engine/rows.ts';
import type { NodeId } from '../game/model.ts';
import type { Context } from './context.ts';
import { prizesLost } from './level.ts';

type Of<C extends Blockage['cause']> = Extract<Blockage, { readonly cause: C }>;

export type Root<C extends Blockage['cause'] = Blockage['cause']> = Of<C> & {
  readonly prizes: readonly NodeId[];
};

/** The nodes of a root. A box that more is needed for than there is, is not at hand, and so neither are its locks. */
export function blockedNodes(network: Network, blockage: Blockage): readonly number[] {
  switch (blockage.cause) {
    case 'ring':
      return blockage.nodes;
    case 'closed':
      return [blockage.node];
    case 'missing':
      return [blockage.node, ...rowOf(network.fasteners, blockage.node)];
  }
}

export function rootsOf(context: Context, blockages: readonly Blockage[]): Root[] {
  return blockages.map((blockage) => ({
    ...blockage,
    prizes: prizesLost(context, blockedNodes(context.network, blockage)),
  }));
}

export function rootsBy<C extends Blockage['cause']>(context: Context, cause: C): Root<C>[] {
  const isCause = (root: Root): root is Root<C> => root.cause === cause;
  return context.roots().filter(isCause);
}
