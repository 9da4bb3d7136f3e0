/** What is to be said of the things in the form, with its mends at hand. */
import { type Finding, identityOf } from '../../../src/findings/finding.ts';
import type { NodeId } from '../../../src/game/model.ts';
import { useSimulation } from '../../engine/simulation.ts';
import { FindingCard } from '../../panel/FindingCard.tsx';
import TimedFindingCard from '../../panel/TimedFindingCard.tsx';
import { useAssessment } from '../../store/assessment.ts';
import { type Subject, subjectOf } from '../about.ts';

export interface FindingsHereProps {
  /** Findings that concern every one of them. */
  readonly ids: readonly NodeId[];
  /** Only what is about this. */
  readonly of?: Subject;
  /** What is told elsewhere in the form. */
  readonly elsewhere?: readonly Subject[];
}

const concerning =
  (ids: readonly NodeId[]) =>
  ({ nodes }: { readonly nodes: readonly NodeId[] }) =>
    ids.every((id) => nodes.includes(id));

/** Those that need no simulation. */
export function useFindingsHere({ ids, of, elsewhere = [] }: FindingsHereProps): readonly Finding[] {
  const concerns = concerning(ids);
  return useAssessment().findings.filter((finding) => {
    const subject = subjectOf(finding);
    const isTold = of === undefined ? subject === undefined || !elsewhere.includes(subject) : subject === of;
    return isTold && concerns(finding);
  });
}

export function FindingsHere(props: FindingsHereProps) {
  const here = useFindingsHere(props);
  const { findings: timed } = useSimulation();
  const later = props.of === undefined ? timed.filter(concerning(props.ids)) : [];
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
