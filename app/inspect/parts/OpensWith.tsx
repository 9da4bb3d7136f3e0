/** What opens a lock: the common types in one row, the others one press away. */
import { useState } from 'react';
import { FASTENER_TYPES, isKnownType } from '../../../src/fasteners/index.ts';
import type { NodeOf } from '../../../src/game/model.ts';
import { FORM, lockTypeName } from '../../../src/words/screen-form.ts';
import { Section } from '../Section.tsx';
import { chooseField } from '../write.ts';
import './opens-with.css';

const COMMON = 4;

export function OpensWith({ node }: { node: NodeOf<'fastener'> }) {
  const types = FASTENER_TYPES.map(({ type }) => type);
  const current = node.type;
  const unknown = current !== undefined && !isKnownType(current);
  const [asked, setAsked] = useState(false);
  const more = asked || unknown || types.indexOf(current ?? '') >= COMMON;
  const shown = more ? types : types.slice(0, COMMON);

  return (
    <Section title={FORM.opensWith}>
      <div className="opens-with" role="radiogroup" aria-label={FORM.opensWith}>
        {shown.map((type) => (
          <Option key={type} node={node} type={type} />
        ))}
        {unknown && <Option node={node} type={current} />}
        {!more && (
          <button type="button" className="opens-with-option" onClick={() => setAsked(true)}>
            {FORM.moreTypes}
          </button>
        )}
      </div>
      {unknown && <p className="hint">{FORM.unknownType}</p>}
      {current === 'latch' && <p className="hint">{FORM.latch}</p>}
    </Section>
  );
}

function Option({ node, type }: { node: NodeOf<'fastener'>; type: string }) {
  return (
    <label className="opens-with-option">
      <input
        type="radio"
        className="aloud"
        name={`opens-with-${node.id}`}
        checked={node.type === type}
        onChange={() => chooseField(node.id, 'type', type)}
      />
      {lockTypeName(type)}
    </label>
  );
}
