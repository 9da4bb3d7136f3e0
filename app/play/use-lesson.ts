/** The lesson to be shown, or why there is none. */
import { useMemo } from 'react';
import { PLAY } from '../../src/words/play.ts';
import { useSimulation } from '../engine/simulation.ts';
import { useAssessment } from '../store/assessment.ts';
import { type Lesson, lessonFrom } from './lesson.ts';

interface Shown {
  readonly lesson: Lesson | undefined;
  /** In its place. */
  readonly words: string;
  /** Of an earlier state of the game, until it has been worked out anew. */
  readonly isOld: boolean;
}

export function useLesson(): Shown {
  const { game, canBeWon } = useAssessment();
  const { figures, isOld } = useSimulation();
  const { clock, simulated } = figures ?? {};
  const lesson = useMemo(
    () => (canBeWon && clock && simulated ? lessonFrom(game, clock, simulated) : undefined),
    [game, canBeWon, clock, simulated],
  );
  if (!canBeWon) {
    return { lesson, words: game.nodes.size === 0 ? PLAY.empty : PLAY.unwinnable, isOld: false };
  }
  if (!lesson) return { lesson, words: PLAY.working, isOld: false };
  if (lesson.end === 0) return { lesson: undefined, words: PLAY.noSteps, isOld: false };
  return { lesson, words: '', isOld };
}
