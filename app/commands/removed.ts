/** What the last removal did besides, said until something else is done. */
import { create } from 'zustand';
import type { Game } from '../../src/game/model.ts';
import { removedSentence } from '../../src/words/screen-removed.ts';
import type { Sentence } from '../../src/words/sentence.ts';
import { useGame } from '../store/game.ts';
import type { HistoryStep } from '../store/history.ts';

interface Removal {
  readonly said: Sentence;
  /** As long as this is the last step of the history, it is news. */
  readonly step: HistoryStep | undefined;
}

const useRemoval = create<Removal>()(() => ({ said: [], step: undefined }));

export function noteRemoval(before: Game): void {
  const { game, history } = useGame.getState();
  useRemoval.setState({ said: removedSentence(before, game), step: history.past.at(-1) });
}

/** Empty when there is nothing to be told. */
export function useRemovalNews(): Sentence {
  const { said, step } = useRemoval();
  const last = useGame((state) => state.history.past.at(-1));
  return step !== undefined && step === last ? said : [];
}
