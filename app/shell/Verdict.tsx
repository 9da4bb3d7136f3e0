/**
 * Can it be won? A sentence that follows every edit, and whose underlined words lead to what they count.
 * While something is lifted it answers what happens without it; when a change was refused, why.
 */

import { PAGE } from '../../src/words/screen.ts';
import { plain } from '../../src/words/sentence.ts';
import { verdictOf, type Verdict as Words } from '../../src/words/verdict.ts';
import { useFewest } from '../engine/fewest.ts';
import { useAssessment } from '../store/assessment.ts';
import { useGame } from '../store/game.ts';
import { Refusal } from './Refusal.tsx';
import { SentenceText } from './SentenceText.tsx';
import { Sign, type SignName } from './signs.tsx';

const SIGNS: Readonly<Record<Words['tone'], { readonly sign: SignName; readonly className: string }>> = {
  ok: { sign: 'tick', className: 'head-sign head-sign-ok' },
  stops: { sign: 'cross', className: 'head-sign head-sign-stop' },
  empty: { sign: 'right', className: 'head-sign' },
};

export function Verdict() {
  const verdict = verdictOf(useAssessment(), useFewest());
  const refused = useGame((state) => state.refusal !== undefined);
  const { sign, className } = SIGNS[verdict.tone];
  return (
    <section className="head-verdict" aria-label={PAGE.verdict}>
      <span className={className}>
        <Sign name={sign} />
      </span>
      <div className="head-sentences">
        <div aria-live="polite" aria-atomic="true" data-verdict={verdict.tone}>
          <p>
            <SentenceText sentence={verdict.first} leads />{' '}
          </p>
          {!refused && plain(verdict.second) !== '' && (
            <p className="head-second">
              <SentenceText sentence={verdict.second} leads />
            </p>
          )}
        </div>
        <Refusal />
      </div>
    </section>
  );
}
