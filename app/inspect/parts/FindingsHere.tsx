/** What is to be said of the things in the form, with its mends at hand. */
import { identityOf } from '../../../src/findings/finding.ts';
import type { NodeId } from '../../../src/game/model.ts';
import { FindingCard } from '../../panel/FindingCard.tsx';
import { useAssessment } from '../../store/assessment.ts';

/** Findings that concern every one of them. */
export function FindingsHere({ ids }: { ids: readonly NodeId[] }) {
  const { findings } = useAssessment();
  const here = findings.filter(({ nodes }) => ids.every((id) => nodes.includes(id)));
  if (here.length === 0) return null;
  return (
    <ul className="form-findings">
      {here.map((finding) => (
        <FindingCard key={identityOf(finding)} finding={finding} />
      ))}
    </ul>
  );
}
