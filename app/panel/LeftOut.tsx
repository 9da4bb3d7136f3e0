/** What is left out today, what the game loses by it, and the way back. */
import { useId } from 'react';
import { lossOf } from '../../src/findings/loss.ts';
import { LEFT_OUT, lossSentence } from '../../src/words/left-out.ts';
import { useSimulation } from '../engine/simulation.ts';
import { SentenceText } from '../shell/SentenceText.tsx';
import { useAssessment } from '../store/assessment.ts';
import { useGame } from '../store/game.ts';

export function LeftOut() {
  const id = useId();
  const assessment = useAssessment();
  const { figures, isOld } = useSimulation();
  const readOnly = useGame((state) => state.readOnly);
  const loss = lossOf(assessment);
  if (!loss) return null;
  const { things } = loss;
  const chances =
    figures?.whole && !isOld ? { now: figures.simulated.inTime, whole: figures.whole.inTime } : undefined;
  return (
    <section className="panel-section" aria-labelledby={id} data-topic="leftOut">
      <header className="panel-head">
        <h2 id={id} tabIndex={-1}>
          {LEFT_OUT.title}
        </h2>
        <span className="panel-count">{things.length}</span>
      </header>
      <p className="left-out-said">
        <SentenceText sentence={lossSentence(assessment.game, loss, chances)} leads />
      </p>
      <button
        type="button"
        className="button"
        disabled={readOnly}
        onClick={() => useGame.getState().apply([{ type: 'leaveOut', ids: things, leftOut: false }])}
      >
        {LEFT_OUT.again(things.length)}
      </button>
    </section>
  );
}
