/**
 * What is true of the game, for what stands before that is known. The engine, the findings and their words grow with all that there is
 * to find, so that they are a part: fetched at once, while the map and the head stand without. Whatever is a part itself imports
 * store/assessment.ts, which then comes with it.
 */
import { useSyncExternalStore } from 'react';
import { part } from '../parts/part.ts';
import type { Assessment } from '../store/assessment.ts';
import { useGame } from '../store/game.ts';
import { startWordList, useWordList } from '../word-list/word-list.ts';

export const JUDGING = part(() => import('./judging.ts'));

export type Judging = NonNullable<ReturnType<typeof JUDGING.now>>;

/** Undefined until it is there. */
export function useJudging(): Judging | undefined {
  return useSyncExternalStore(JUDGING.whenThere, JUDGING.now);
}

/** Undefined until it can be known. */
export function useAssessmentWhenThere(): Assessment | undefined {
  const judging = useJudging();
  useWordList();
  return useGame(({ game }) => judging?.assessmentOf(game));
}

/** Fetches it; the search for the fewest steps begins with it. Called once when the page starts. */
export function startJudging(): void {
  JUDGING.whenThere(() => JUDGING.now()?.startFewest());
  void JUDGING.load();
  startWordList();
}
