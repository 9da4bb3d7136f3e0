/** The answer to what is lifted, in the form of a verdict. Its words are a part that is loaded when something is lifted for the first time. */
import { useEffect, useMemo, useSyncExternalStore } from 'react';
import type { NodeId } from '../../src/game/model.ts';
import type { LiftAnswer } from '../../src/words/lift.ts';
import { part } from '../parts/part.ts';
import type { Assessment } from '../store/assessment.ts';

const LIFT = part(() => import('../../src/words/lift.ts'));

/** Undefined while nothing is lifted, and until the words are there. */
export function useLiftAnswer(
  assessment: Assessment | undefined,
  lifted: NodeId | undefined,
): LiftAnswer | undefined {
  const words = useSyncExternalStore(LIFT.whenThere, LIFT.now);
  const isWanted = lifted !== undefined && !words;
  useEffect(() => {
    if (isWanted) void LIFT.load();
  }, [isWanted]);
  return useMemo(
    () => (assessment && lifted !== undefined ? words?.liftAnswer(assessment, lifted) : undefined),
    [words, assessment, lifted],
  );
}
