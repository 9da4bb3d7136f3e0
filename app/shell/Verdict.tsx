/**
 * Can it be won? A sentence that follows every edit, and whose underlined words lead to what they count.
 * While something is lifted it answers what happens without it; when a change was refused, why.
 */
import { useMemo } from 'react';

import { PAGE } from '../../src/words/screen.ts';
import { plain } from '../../src/words/sentence.ts';
import { verdictOf, type Verdict as Words } from '../../src/words/verdict.ts';
import { useFewest } from '../engine/fewest.ts';
import { useSimulation } from '../engine/simulation.ts';
import { useAssessment } from '../store/assessment.ts';
import { useGame } from '../store/game.ts';
import { useView } from '../store/view.ts';
import { HeadNews, useHeadNews } from './HeadNews.tsx';
import { useLiftAnswer } from './lift-answer.ts';
import { Refusal } from './Refusal.tsx';
import { SentenceText } from './SentenceText.tsx';
import { Sign, type SignName } from './signs.tsx';

const SIGNS: Readonly<Record<Words['tone'], { readonly sign: SignName; readonly className: string }>> = {
  ok: { sign: 'tick', className: 'head-sign head-sign-ok' },
  look: { sign: 'look', className: 'head-sign head-sign-look' },
  stops: { sign: 'cross', className: 'head-sign head-sign-stop' },
  open: { sign: 'right', className: 'head-sign' },
};

/** Letters that fit two lines of the head on a screen of 1366 pixels; longer sentences are set smaller. */
const TWO_LINES = 130;

export function Verdict() {
  const assessment = useAssessment();
  const fewest = useFewest();
  const { figures, findings } = useSimulation();
  const simulated = figures?.simulated;
  const lifted = useView((state) => state.lifted);
  const own = useMemo(
    () => verdictOf(assessment, fewest, { simulated, findings }),
    [assessment, fewest, simulated, findings],
  );
  const verdict: Words = useLiftAnswer(assessment, lifted) ?? own;
  const refused = useGame((state) => state.refusal !== undefined);
  const news = useHeadNews().length > 0;
  const { sign, className } = SIGNS[verdict.tone];
  const length = news ? 0 : plain(verdict.first).length + plain(verdict.second).length;
  return (
    <section className="head-verdict" aria-label={PAGE.verdict}>
      <span className={className}>
        <Sign name={sign} />
      </span>
      <div className={length > TWO_LINES ? 'head-sentences head-sentences-long' : 'head-sentences'}>
        <div aria-live="polite" aria-atomic="true" data-verdict={verdict.tone}>
          <p>
            {/* Beside news, the answer alone: the rest stands in the panel. */}
            <SentenceText sentence={news ? verdict.first.slice(0, 1) : verdict.first} leads />{' '}
          </p>
          {!refused && !news && plain(verdict.second) !== '' && (
            <p className="head-second">
              <SentenceText sentence={verdict.second} leads />
            </p>
          )}
        </div>
        <HeadNews />
        <Refusal />
      </div>
    </section>
  );
}
