/** What opens a lock. */
import { FASTENER_TYPES, fastenerType, isKnownType } from '../../../src/fasteners/index.ts';
import type { NodeOf } from '../../../src/game/model.ts';
import { FORM, lockTypeName } from '../../../src/words/screen-form.ts';
import { useGame } from '../../store/game.ts';
import { Section } from '../Section.tsx';
import { Segments } from '../Segments.tsx';

export function OpensWith({ node }: { node: NodeOf<'fastener'> }) {
  const current = node.type;
  const unknown = current !== undefined && !isKnownType(current);
  const types = [...FASTENER_TYPES.map(({ type }): string => type), ...(unknown ? [current] : [])];

  return (
    <Section title={FORM.opensWith}>
      <Segments
        label={FORM.opensWith}
        options={types.map((id) => ({ id, name: lockTypeName(id) }))}
        chosen={current}
        onChoose={(type) => chooseType(node, type)}
      />
      {unknown && <p className="hint">{FORM.unknownType}</p>}
      {fastenerType(current).opensWith === 'nothing' && <p className="hint">{FORM.latch}</p>}
    </Section>
  );
}

/** Words that name directions become directions with the type. */
function chooseType(node: NodeOf<'fastener'>, type: string): void {
  const { directions, read } = fastenerType(type);
  const reading = directions ? read(node.code ?? '') : undefined;
  const code = reading?.ok ? reading.code || undefined : node.code;
  useGame.getState().apply([{ type: 'setFields', id: node.id, fields: { type, code } }]);
}
