/** What stops the game, or what is worth a look: a heading that counts, and a card for each. */
import { useId } from 'react';
import type { Finding, Level } from '../../src/findings/finding.ts';
import { identityOf } from '../../src/findings/finding.ts';
import { PANEL } from '../../src/words/screen.ts';
import { FindingCard } from './FindingCard.tsx';

export function Findings({ level, findings }: { level: Level; findings: readonly Finding[] }) {
  const id = useId();
  const these = findings.filter((finding) => finding.level === level);
  if (these.length === 0) return null;
  return (
    <section className="panel-section" aria-labelledby={id} data-topic={level}>
      <header className="panel-head">
        <h2 id={id} tabIndex={-1}>
          {level === 'stops' ? PANEL.stops : PANEL.look}
        </h2>
        <span className="panel-count">{these.length}</span>
      </header>
      <ul>
        {these.map((finding) => (
          <FindingCard key={identityOf(finding)} finding={finding} />
        ))}
      </ul>
    </section>
  );
}
