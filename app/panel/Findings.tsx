/** What stops the game, or what is worth a look: a heading that counts, and a card for each. */
import { useId } from 'react';
import type { Finding, Level } from '../../src/findings/finding.ts';
import { identityOf } from '../../src/findings/finding.ts';
import type { TimedFinding } from '../../src/findings/timed/timed-finding.ts';
import { PANEL } from '../../src/words/screen.ts';
import { PartView } from '../parts/PartView.tsx';
import { part } from '../parts/part.ts';
import { FindingCard } from './FindingCard.tsx';

const TIMED_CARD = part(() => import('./TimedFindingCard.tsx'));

interface Props {
  readonly level: Level;
  readonly findings: readonly Finding[];
  /** From simulated lessons: they come later, and so stand below the others. */
  readonly timed?: readonly TimedFinding[];
}

export function Findings({ level, findings, timed = [] }: Props) {
  const id = useId();
  const these = findings.filter((finding) => finding.level === level);
  const count = these.length + timed.length;
  if (count === 0) return null;
  return (
    <section className="panel-section" aria-labelledby={id} data-topic={level}>
      <header className="panel-head">
        <h2 id={id} tabIndex={-1}>
          {level === 'stops' ? PANEL.stops : PANEL.look}
        </h2>
        <span className="panel-count">{count}</span>
      </header>
      <ul>
        {these.map((finding) => (
          <FindingCard key={identityOf(finding)} finding={finding} />
        ))}
        {timed.length > 0 && (
          <PartView of={TIMED_CARD} silent>
            {({ default: TimedFindingCard }) =>
              timed.map((finding) => <TimedFindingCard key={identityOf(finding)} finding={finding} />)
            }
          </PartView>
        )}
      </ul>
    </section>
  );
}
