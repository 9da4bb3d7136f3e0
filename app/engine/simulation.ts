/**
 * How lessons with the open game go, as simulated: one result that verdict, panel, map and forms read. What asks for it is simulating.ts,
 * which is loaded once the page stands. The last figures stand until new ones come; of a game that cannot be won there are none.
 */
import { create } from 'zustand';
import type { Figures } from '../../src/engine/simulation/figures.ts';
import type { TimedFinding } from '../../src/findings/timed/timed-finding.ts';

export interface SimulationState {
  /** The newest that has been worked out so far. */
  readonly figures: Figures | undefined;
  /** The last of which everything was worked out: the costs stand until new ones come. */
  readonly complete: Figures | undefined;
  /** They are of an earlier state of the game; new ones are being worked out. */
  readonly isOld: boolean;
  /** They cannot be worked out: a fault of the program. */
  readonly failed: boolean;
  readonly findings: readonly TimedFinding[];
}

export const NOTHING_SIMULATED: SimulationState = {
  figures: undefined,
  complete: undefined,
  isOld: false,
  failed: false,
  findings: [],
};

export const useSimulated = create<SimulationState>()(() => NOTHING_SIMULATED);

export function useSimulation(): SimulationState {
  return useSimulated();
}

/** The figures with costs that are to be shown, and whether they are of an earlier state of the game. */
export function figuresWithCosts({
  figures,
  complete,
  isOld,
}: SimulationState): { readonly figures: Figures; readonly isOld: boolean } | undefined {
  if (figures?.costs) return { figures, isOld };
  return complete && { figures: complete, isOld: true };
}
