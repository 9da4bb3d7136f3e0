/** The answer to what is lifted, in the form of a verdict. Its words are loaded when something is lifted for the first time. */
import { useEffect, useMemo } from 'react';
import { create } from 'zustand';
import type { NodeId } from '../../src/game/model.ts';
import type { LiftAnswer, liftAnswer } from '../../src/words/lift.ts';
import type { Assessment } from '../store/assessment.ts';

const useWords = create<{ readonly answer: typeof liftAnswer | undefined }>()(() => ({ answer: undefined }));

/** Undefined while nothing is lifted, and until the words are there. */
export function useLiftAnswer(assessment: Assessment, lifted: NodeId | undefined): LiftAnswer | undefined {
  const answer = useWords((state) => state.answer);
  const isWanted = lifted !== undefined && !answer;
  useEffect(() => {
    if (isWanted) {
      void import('../../src/words/lift.ts').then(({ liftAnswer }) =>
        useWords.setState({ answer: liftAnswer }),
      );
    }
  }, [isWanted]);
  return useMemo(
    () => (lifted === undefined ? undefined : answer?.(assessment, lifted)),
    [answer, assessment, lifted],
  );
}
