/** The fewest steps of the open game, once they are known. What asks for them is seek-fewest.ts. */
import { create } from 'zustand';
import type { Fewest, Measures } from '../../src/engine/measures.ts';
import type { Network } from '../../src/engine/network.ts';

export interface FewestQuestion {
  readonly ticket: number;
  readonly network: Network;
  readonly measures: Pick<Measures, 'longestChain' | 'mustDo'>;
}

export interface FewestAnswer {
  readonly ticket: number;
  readonly fewest: Fewest;
}

interface Known {
  readonly network: Network | undefined;
  readonly fewest: Fewest | undefined;
}

export const useKnown = create<Known>()(() => ({ network: undefined, fewest: undefined }));

/** The fewest steps of this network, or undefined while that is being worked out. */
export function useFewest(network: Network | undefined): Fewest | undefined {
  return useKnown((known) => (known.network === network ? known.fewest : undefined));
}
