/** One finding: what is, why it matters, what can be done about it at a press, and the way there. */
import { type ReactNode, useMemo } from 'react';
import type { Finding } from '../../src/findings/finding.ts';
import type { Proposal } from '../../src/findings/proposal.ts';
import { proposalsFor } from '../../src/findings/propose.ts';
import { newName } from '../../src/words/canvas.ts';
import { findingSentence } from '../../src/words/findings/index.ts';
import { proposalLabel } from '../../src/words/proposals.ts';
import { PANEL } from '../../src/words/screen.ts';
import type { Sentence } from '../../src/words/sentence.ts';
import { SentenceText } from '../shell/SentenceText.tsx';
import { type Assessment, useAssessment } from '../store/assessment.ts';
import { useGame } from '../store/game.ts';
import { freshId } from '../store/ids.ts';
import { useView } from '../store/view.ts';
import './finding-card.css';

export function FindingCard({ finding }: { finding: Finding }) {
  const assessment = useAssessment();
  const game = useGame((state) => state.game);
  const stops = finding.level === 'stops';
  return (
    <Told finding={finding} sentence={findingSentence(game, finding)}>
      <Mends assessment={assessment} finding={finding} main={stops} />
    </Told>
  );
}

interface ToldProps {
  readonly finding: Pick<Finding, 'level' | 'nodes' | 'links'>;
  readonly sentence: Sentence;
  /** What can be done about it at a press. */
  readonly children?: ReactNode;
}

export function Told({ finding: { level, nodes, links }, sentence, children }: ToldProps) {
  return (
    <li className={level === 'stops' ? 'finding finding-stops' : 'finding finding-look'}>
      <p>
        <SentenceText sentence={sentence} />
      </p>
      <div className="finding-acts">
        {children}
        {nodes.length + links.length > 0 && (
          <button type="button" className="button" onClick={() => useView.getState().show(nodes, links)}>
            {PANEL.show}
          </button>
        )}
      </div>
    </li>
  );
}

const FRESH = { newId: freshId, nameOf: newName };

interface MendsProps {
  readonly assessment: Assessment;
  readonly finding: Finding;
  readonly main: boolean;
}

/** Each was tried on the game before it is offered. */
function Mends({ assessment, finding, main }: MendsProps) {
  const game = useGame((state) => state.game);
  const readOnly = useGame((state) => state.readOnly);
  const proposals = useMemo(() => proposalsFor(assessment, finding, FRESH), [assessment, finding]);
  const apply = (proposal: Proposal) => {
    useGame.getState().apply(proposal.edits);
  };
  return proposals.map((proposal, i) => (
    <button
      key={JSON.stringify([proposal.code, proposal.values])}
      type="button"
      className={main && i === 0 ? 'button button-main' : 'button'}
      disabled={readOnly}
      onClick={() => apply(proposal)}
    >
      {proposalLabel(game, proposal)}
    </button>
  ));
}
