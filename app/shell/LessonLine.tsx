/** For whom the game is and how long the lesson lasts, in a line that opens the form of the lesson. */
import { useState } from 'react';
import { lessonOf, sharesAnything } from '../../src/game/defaults.ts';
import { LESSON_OPEN, lessonLine } from '../../src/words/screen.ts';
import { PartView } from '../parts/PartView.tsx';
import { part } from '../parts/part.ts';
import { useGame } from '../store/game.ts';

const LESSON_FORM = part(() => import('./LessonForm.tsx'));

export function LessonLine() {
  const game = useGame((state) => state.game);
  const [open, setOpen] = useState(false);
  const [who, sets, time] = lessonLine(lessonOf(game), sharesAnything(game));
  return (
    <>
      <button type="button" className="head-lesson" title={LESSON_OPEN} onClick={() => setOpen(true)}>
        {who}
        <span className="head-lesson-sets">{sets}</span>
        {time}
      </button>
      {open && (
        <PartView of={LESSON_FORM} onLost={() => setOpen(false)}>
          {({ default: LessonForm }) => <LessonForm onClose={() => setOpen(false)} />}
        </PartView>
      )}
    </>
  );
}
