/** Why a thing can be reached, back to the start; or why it cannot. */
import { useMemo } from 'react';
import type { GameNode } from '../../../src/game/model.ts';
import { explanation } from '../../../src/words/explain.ts';
import { FORM } from '../../../src/words/screen-form.ts';
import { CommandButton } from '../../commands/CommandButton.tsx';
import { SentenceText } from '../../shell/SentenceText.tsx';
import { useAssessment } from '../../store/assessment.ts';
import { Section } from '../Section.tsx';

export function Why({ node }: { node: GameNode }) {
  const assessment = useAssessment();
  const sentences = useMemo(() => explanation(assessment, node.id), [assessment, node.id]);
  if (sentences.length === 0) return null;
  const { network, measures } = assessment;
  const reached = measures.reached[network.index.get(node.id) ?? -1] === 1;
  return (
    <Section title={reached ? FORM.why : FORM.whyNot}>
      {sentences.map((sentence, i) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: the sentences of one explanation have no other identity
        <p key={i}>
          <SentenceText sentence={sentence} leads />
        </p>
      ))}
      <div className="form-add">
        <CommandButton name="lift" />
      </div>
    </Section>
  );
}
