/** The code of a lock, where it comes from, and what is to be said of it, each in its place. */
import { fastenerType } from '../../../src/fasteners/index.ts';
import type { NodeOf } from '../../../src/game/model.ts';
import { FORM } from '../../../src/words/screen-form.ts';
import { Section } from '../Section.tsx';
import { CodeField } from './CodeField.tsx';
import { CodeFlow } from './CodeFlow.tsx';
import { DrawCode } from './DrawCode.tsx';
import { FindingsHere } from './FindingsHere.tsx';

export function LockCode({ node }: { node: NodeOf<'fastener'> }) {
  return (
    <Section title={FORM.code}>
      <CodeField
        id={node.id}
        field="code"
        label={FORM.code}
        raw={node.code}
        empty={FORM.noCode}
        type={fastenerType(node.type)}
        hardware={node.hardware}
      />
      <CodeFlow id={node.id} />
      <DrawCode node={node} />
      <FindingsHere ids={[node.id]} of="code" />
    </Section>
  );
}
