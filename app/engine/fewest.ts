/**
 * Asks the worker for the fewest steps after each edit. One question is under way at a time and only the newest waits
 * behind it, so that fast typing never queues up work for games that are gone.
 */
import { create } from 'zustand';
import type { Fewest, Measures } from '../../src/engine/measures.ts';
import type { Network } from '../../src/engine/network.ts';
import { currentAssessment, useAssessment } from '../store/assessment.ts';
import { useGame } from '../store/game.ts';

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

const useKnown = create<Known>()(() => ({ network: undefined, fewest: undefined }));

/** The fewest steps of the game as it stands, or undefined while that is being worked out. */
export function useFewest(): Fewest | undefined {
  const { network } = useAssessment();
  return useKnown((known) => (known.network === network ? known.fewest : undefined));
}

/** Starts the worker; called once when the page starts. */
export function startFewest(): void {
  const worker = new Worker(new URL('./fewest.worker.ts', import.meta.url), { type: 'module' });
  let tickets = 0;
  let underWay: { readonly ticket: number; readonly network: Network } | undefined;

  const ask = () => {
    const { network, measures } = currentAssessment();
    if (underWay || !measures.solvable || useKnown.getState().network === network) return;
    tickets += 1;
    underWay = { ticket: tickets, network };
    const { longestChain, mustDo } = measures;
    const question: FewestQuestion = { ticket: tickets, network, measures: { longestChain, mustDo } };
    worker.postMessage(question);
  };

  worker.onmessage = ({ data }: MessageEvent<FewestAnswer>) => {
    if (data.ticket !== underWay?.ticket) return;
    useKnown.setState({ network: underWay.network, fewest: data.fewest });
    underWay = undefined;
    ask();
  };
  useGame.subscribe((state, before) => {
    if (state.game !== before.game) ask();
  });
  ask();
}
