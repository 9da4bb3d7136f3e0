/** A step when each takes its expected minutes and nothing is waited for but what it needs: when it is begun and done, what it adds to the end or with which others it is tied, and how much longer it may take. */
import { useMemo } from 'react';
import { floatOf } from '../../../src/engine/float.ts';
import { onlyWith } from '../../../src/engine/ties.ts';
import type { GameNode } from '../../../src/game/model.ts';
import { addsToEnd, earliest, FORM, mayTakeLonger } from '../../../src/words/screen-form.ts';
import { useAssessment } from '../../store/assessment.ts';
import { Section } from '../Section.tsx';

export function Quickest({ node }: { node: GameNode }) {
  const { network, measures } = useAssessment();
  const i = network.index.get(node.id) ?? -1;
  const partners = useMemo(
    () => (measures.tied[i] === 1 ? onlyWith(network, measures, i) : []),
    [network, measures, i],
  );
  const float = useMemo(() => floatOf(network, measures, i), [network, measures, i]);
  if (!measures.solvable || network.isStep[i] !== 1 || measures.reached[i] !== 1) return null;
  const numbers = partners.map((partner) => measures.number[partner] ?? 0).sort((a, b) => a - b);
  const later = mayTakeLonger(float ?? 0);
  return (
    <Section title={FORM.withoutAHitch}>
      <p>{earliest(measures.start[i] ?? 0, measures.finish[i] ?? 0)}</p>
      <p>{addsToEnd(measures.drag[i] ?? 0, measures.tied[i] === 1, numbers)}</p>
      {later !== undefined && <p>{later}</p>}
      {measures.mustDo[i] === 1 && <p>{FORM.cannotSkip}</p>}
    </Section>
  );
}
