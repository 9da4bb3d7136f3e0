/** What is to be said of the things in the form, with its mends at hand. */
import { identityOf } from '../../../src/findings/finding.ts';
import type { NodeId } from '../../../src/game/model.ts';
import { useSimulation } from '../../engine/simulation.ts';
import { FindingCard } from '../../panel/FindingCard.tsx';
import TimedFindingCard from '../../panel/TimedFindingCard.tsx';
import { useAssessment } from '../../store/assessment.ts';

/** Findings that concern every one of them. */
export function FindingsHere({ ids }: { ids: readonly NodeId[] }) {
  const { findings } = useAssessment();
  const { findings: timed } = useSimulation();
  const concerns = ({ nodes }: { readonly nodes: readonly NodeId[] }) =>
    ids.every((id) => nodes.includes(id));
  const here = findings.filter(concerns);
  const later = timed.filter(concerns);
  if (here.length + later.length === 0) return null;
  return (
    <ul className="form-findings">
      {here.map((finding) => (
        <FindingCard key={identityOf(finding)} finding={finding} />
      ))}
      {later.map((finding) => (
        <TimedFindingCard key={identityOf(finding)} finding={finding} />
      ))}
    </ul>
  );
}
