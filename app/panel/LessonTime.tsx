/** How long it takes: the chance to end in time, the range, what hints do, how a team's ways differ, who waits, and how this was worked out. */
import { useId } from 'react';
import type { Figures } from '../../src/engine/simulation/figures.ts';
import {
  chanceSentence,
  choosingSentence,
  hintsAlike,
  hintsCell,
  LESSON_TIME,
  methodSentence,
  rangeSentence,
  waitingSentence,
} from '../../src/words/lesson-time.ts';
import { hintsAsked } from '../engine/hints-asked.ts';
import { useSimulation } from '../engine/simulation.ts';
import { SentenceText } from '../shell/SentenceText.tsx';
import { useAssessment } from '../store/assessment.ts';
import { PaceCard } from './PaceCard.tsx';
import { WhatHelps } from './WhatHelps.tsx';
import './lesson-time.css';

export default function LessonTime() {
  const id = useId();
  const { figures, isOld, failed } = useSimulation();
  return (
    <section className="lesson-time" aria-labelledby={id} data-topic="chance">
      <header className="panel-head">
        <h2 id={id} tabIndex={-1}>
          {LESSON_TIME.title}
        </h2>
        {figures && <span className="panel-count">{LESSON_TIME.lesson(figures.clock.lesson.minutes)}</span>}
      </header>
      {figures ? (
        <Told figures={figures} isOld={isOld} />
      ) : (
        <p className="quiet">{failed ? LESSON_TIME.failed : LESSON_TIME.working}</p>
      )}
      {figures && <WhatHelps />}
      {figures && <PaceCard />}
    </section>
  );
}

function Told({ figures, isOld }: { figures: Figures; isOld: boolean }) {
  const { game } = useAssessment();
  return (
    <div className={isOld ? 'lesson-time-old' : undefined}>
      <p>
        <strong>{chanceSentence(figures)}</strong> {rangeSentence(figures)}
      </p>
      <ByHints figures={figures} />
      <p className="lesson-time-ways">
        {figures.byChoosing ? choosingSentence(figures.byChoosing) : LESSON_TIME.pending}
      </p>
      <p>
        <SentenceText sentence={waitingSentence(game, figures)} leads />
      </p>
      <p className="quiet">{isOld ? LESSON_TIME.old : methodSentence(game, figures)}</p>
    </div>
  );
}

function ByHints({ figures: { clock, byHints } }: { figures: Figures }) {
  const columns = Array.from({ length: hintsAsked(clock) + 1 }, (_, hints) => hints);
  const alike = byHints && hintsAlike(byHints);
  if (alike !== undefined) return <p>{alike}</p>;
  return (
    <table className="lesson-time-hints">
      <caption>{LESSON_TIME.byHints}</caption>
      <tbody>
        {columns.map((hints) => {
          const share = byHints?.[hints];
          return (
            <tr key={hints}>
              <th scope="row">
                {LESSON_TIME.hints(hints)}
                {hints === clock.lesson.hints && <span className="quiet"> {LESSON_TIME.asSet}</span>}
              </th>
              <td>{share === undefined ? LESSON_TIME.pending : hintsCell(share)}</td>
            </tr>
          );
        })}
      </tbody>
    </table>
  );
}
