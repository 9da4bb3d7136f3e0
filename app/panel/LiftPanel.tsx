/** What if nobody finds this? What falls, what the teacher does in class, and what can still be done. Nothing is changed. */
import { useMemo } from 'react';
import type { NodeId } from '../../src/game/model.ts';
import { liftAnswer } from '../../src/words/lift.ts';
import { sayer } from '../../src/words/say.ts';
import { LIFT } from '../../src/words/screen.ts';
import { plain } from '../../src/words/sentence.ts';
import { SentenceText } from '../shell/SentenceText.tsx';
import { useAssessment } from '../store/assessment.ts';
import { useView } from '../store/view.ts';
import { OrderOfPlay } from './OrderOfPlay.tsx';

export default function LiftPanel({ lifted }: { lifted: NodeId }) {
  const assessment = useAssessment();
  const answer = useMemo(() => liftAnswer(assessment, lifted), [assessment, lifted]);
  const node = assessment.game.nodes.get(lifted);
  if (!node) return null;
  return (
    <div className="panel-overview">
      <section className="panel-section">
        <header className="panel-head">
          <h2>{LIFT.heading(plain(sayer(assessment.game).name(lifted)))}</h2>
          <button type="button" className="button" onClick={() => useView.getState().lift(undefined)}>
            {LIFT.putBack}
          </button>
        </header>
        {answer ? (
          <div className={answer.isLost ? 'finding finding-stops' : 'finding finding-look'}>
            <p>
              <SentenceText sentence={answer.first} />
              {plain(answer.falls) !== '' && ' '}
              <SentenceText sentence={answer.falls} />
            </p>
          </div>
        ) : (
          <p className="quiet">{LIFT.notUsed}</p>
        )}
      </section>
      {answer && plain(answer.rescue) !== '' && (
        <section className="panel-section">
          <header className="panel-head">
            <h2>{LIFT.inClass}</h2>
          </header>
          <p>
            <SentenceText sentence={answer.rescue} leads />
          </p>
        </section>
      )}
      {answer && <OrderOfPlay without={new Set([lifted, ...answer.fallen])} />}
    </div>
  );
}
