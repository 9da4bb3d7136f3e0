/** What opens a lock. */
import { FASTENER_TYPES, fastenerType, isKnownType } from '../../../src/fasteners/index.ts';
import type { NodeOf } from '../../../src/game/model.ts';
import { FORM, lockTypeName } from '../../../src/words/screen-form.ts';
import { useGame } from '../../store/game.ts';
import { readDirections } from '../directions.ts';
import { Section } from '../Section.tsx';
import './opens-with.css';

export function OpensWith({ node }: { node: NodeOf<'fastener'> }) {
  const current = node.type;
  const unknown = current !== undefined && !isKnownType(current);

  return (
    <Section title={FORM.opensWith}>
      <div className="opens-with" role="radiogroup" aria-label={FORM.opensWith}>
        {FASTENER_TYPES.map(({ type }) => (
          <Option key={type} node={node} type={type} />
        ))}
        {unknown && <Option node={node} type={current} />}
      </div>
      {unknown && <p className="hint">{FORM.unknownType}</p>}
      {fastenerType(current).opensWith === 'nothing' && <p className="hint">{FORM.latch}</p>}
    </Section>
  );
}

/** Words that name directions become directions with the type. */
function chooseType(node: NodeOf<'fastener'>, type: string): void {
  const reading = fastenerType(type).directions ? readDirections(node.code ?? '') : undefined;
  const code = reading && 'value' in reading ? reading.value : node.code;
  useGame.getState().apply([{ type: 'setFields', id: node.id, fields: { type, code } }]);
}

function Option({ node, type }: { node: NodeOf<'fastener'>; type: string }) {
  return (
    <label className="opens-with-option">
      <input
        type="radio"
        className="aloud"
        name={`opens-with-${node.id}`}
        checked={node.type === type}
        onChange={() => chooseType(node, type)}
      />
      {lockTypeName(type)}
    </label>
  );
}
