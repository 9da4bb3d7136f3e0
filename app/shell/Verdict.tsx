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
import { useView } from '../store/view.ts';
import { HeadNews, useHeadNews } from './HeadNews.tsx';
import { useLiftAnswer } from './lift-answer.ts';
import { Refusal, useRefusalWords } from './Refusal.tsx';
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
/** Letters that fit three lines when they are set smaller: on that screen, and on a narrow one. */
const THREE_LINES = 200;
const THREE_SHORT_LINES = 160;

export function Verdict() {
  const assessment = useAssessment();
  const fewest = useFewest();
  const { figures: results, findings, isOld } = useSimulation();
  const simulated = results?.simulated;
  const lifted = useView((state) => state.lifted);
  const own = useMemo(
    () => verdictOf(assessment, fewest, { simulated, findings }),
    [assessment, fewest, simulated, findings],
  );
  const verdict: Words = useLiftAnswer(assessment, lifted) ?? own;
  const aside = plain(useHeadNews()).length + plain(useRefusalWords()).length;
  const { sign, className } = SIGNS[verdict.tone];
  const length = plain(verdict.first).length + plain(verdict.second).length + aside;
  // Beside long news the answer and what is to be looked at: the figures stand in the panel.
  const figures = aside > 0 && length > THREE_LINES ? [] : verdict.first.slice(1);
  return (
    <section className="head-verdict" aria-label={PAGE.verdict}>
      <span className={className}>
        <Sign name={sign} />
      </span>
      <div className={length > TWO_LINES ? 'head-sentences head-sentences-long' : 'head-sentences'}>
        {/* What rests on old figures is pale, and not read out, until the new ones are there. */}
        <div aria-live="polite" aria-atomic="true" aria-busy={isOld} data-verdict={verdict.tone}>
          <p>
            <SentenceText sentence={verdict.first.slice(0, 1)} leads />
            <span className={aside > 0 && length > THREE_SHORT_LINES ? 'head-figures' : undefined}>
              <SentenceText sentence={figures} leads />
            </span>{' '}
          </p>
          {plain(verdict.second) !== '' && (
            <p className="head-second">
              <SentenceText sentence={verdict.second} leads />{' '}
            </p>
          )}
        </div>
        <HeadNews />
        <Refusal />
      </div>
    </section>
  );
}
