/**
 * Can it be won? A sentence that follows every edit, and whose underlined words lead to what they count.
 * While something is lifted it answers what happens without it; when a change was refused, why. What works it out is a part; until it
 * is there it says so.
 */
import { useMemo } from 'react';
import { PARTS } from '../../src/words/parts.ts';
import { PAGE } from '../../src/words/screen.ts';
import { plain, type Sentence } from '../../src/words/sentence.ts';
import type { Verdict as Words } from '../../src/words/verdict.ts';
import { useFewest } from '../engine/fewest.ts';
import { useSimulation } from '../engine/simulation.ts';
import { JUDGING, useAssessmentWhenThere } from '../judged/judged.ts';
import { Lost } from '../parts/PartView.tsx';
import { usePart } from '../parts/usePart.ts';
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
/** Letters that fit three lines on a narrow screen beside what is said of the file. */
const BESIDE_THE_FILE = 105;

function classOf(length: number): string {
  if (length > TWO_LINES) return 'head-sentences head-sentences-full head-sentences-long';
  return length > BESIDE_THE_FILE ? 'head-sentences head-sentences-full' : 'head-sentences';
}

/** Until what works it out is there. */
const UNKNOWN: Words = { tone: 'open', first: [PAGE.unknown], second: [] };

export function Verdict() {
  const { module: judging, lost, fetch } = usePart(JUDGING);
  const assessment = useAssessmentWhenThere();
  const fewest = useFewest(assessment?.network);
  const { figures: results, findings, isOld } = useSimulation();
  const simulated = results?.simulated;
  const lifted = useView((state) => state.lifted);
  const own = useMemo(
    () => (judging && assessment ? judging.verdictOf(assessment, fewest, { simulated, findings }) : UNKNOWN),
    [judging, assessment, fewest, simulated, findings],
  );
  const verdict: Words = useLiftAnswer(assessment, lifted) ?? own;
  const aside = plain(useHeadNews()).length + plain(useRefusalWords()).length;
  // News is told first: what is lost today stands in the panel too.
  const today = aside > 0 ? [] : (verdict.today ?? []);
  const { sign, className } = SIGNS[verdict.tone];
  const length = plain(verdict.first).length + plain(verdict.second).length + plain(today).length + aside;
  // Beside long news the answer and what is to be looked at: the figures stand in the panel.
  const figures = aside > 0 && length > THREE_LINES ? [] : verdict.first.slice(1);
  return (
    <section className="head-verdict" aria-label={PAGE.verdict}>
      <span className={className}>
        <Sign name={sign} />
      </span>
      <div className={classOf(length)}>
        {judging === undefined && lost ? (
          <Lost sentence={PARTS.lost} again={() => void fetch()} />
        ) : (
          <Told
            verdict={verdict}
            isOld={isOld || judging === undefined}
            areShort={aside > 0 && length > THREE_SHORT_LINES}
            figures={figures}
            today={today}
          />
        )}
        <HeadNews />
        <Refusal />
      </div>
    </section>
  );
}

interface ToldProps {
  readonly verdict: Words;
  /** What is told of the figures. */
  readonly figures: Sentence;
  readonly today: Sentence;
  /** These go where the screen is narrow. */
  readonly areShort: boolean;
  /** What rests on old figures is pale, and not read out, until the new ones are there. */
  readonly isOld: boolean;
}

function Told({ verdict, figures, today, areShort, isOld }: ToldProps) {
  return (
    <div aria-live="polite" aria-atomic="true" aria-busy={isOld} data-verdict={verdict.tone}>
      <p>
        <SentenceText sentence={verdict.first.slice(0, 1)} leads />
        <span className={areShort ? 'head-figures' : undefined}>
          <SentenceText sentence={figures} leads />
        </span>{' '}
      </p>
      {plain(verdict.second) !== '' && (
        <p className="head-second">
          <SentenceText sentence={verdict.second} leads />{' '}
        </p>
      )}
      {today.length > 0 && (
        <p className="head-second head-figures">
          <SentenceText sentence={today} leads />{' '}
        </p>
      )}
    </div>
  );
}
