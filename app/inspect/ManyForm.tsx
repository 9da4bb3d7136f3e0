/** A short form for several things at once. */
import { useState } from 'react';
import type { Edit } from '../../src/game/edits/edit.ts';
import { type GameLink, type GameNode, isHolder } from '../../src/game/model.ts';
import { FORM, MANY } from '../../src/words/screen-form.ts';
import { NodeLink } from '../shell/NodeLink.tsx';
import { useGame } from '../store/game.ts';
import { FormHead, FormPage } from './FormPage.tsx';
import { Picker } from './Picker.tsx';
import { Actions } from './parts/Actions.tsx';
import { FindingsHere } from './parts/FindingsHere.tsx';
import { readHands } from './parts/Hands.tsx';
import { holderChoices, shownName } from './parts/holders.ts';
import { Section } from './Section.tsx';
import { TextField } from './TextField.tsx';

const NONE = '';

export function ManyForm({ nodes, links }: { nodes: readonly GameNode[]; links: readonly GameLink[] }) {
  const game = useGame((state) => state.game);
  const things = nodes.length > 0 && nodes.every(isLoose);
  return (
    <FormPage head={<FormHead title={MANY.selected(nodes.length, links.length)} />}>
      {nodes.length > 0 && <FindingsHere ids={nodes.map((node) => node.id)} />}
      {nodes.length > 0 && (
        <section className="form-section">
          <ul className="form-names">
            {nodes.map((node) => (
              <li key={node.id}>
                <NodeLink id={node.id}>{shownName(game, node)}</NodeLink>
              </li>
            ))}
          </ul>
        </section>
      )}
      {things && <PutAllIn nodes={nodes} />}
      {nodes.length > 0 && <HandsOfAll nodes={nodes} />}
      <Actions />
    </FormPage>
  );
}

function isLoose(node: GameNode): boolean {
  return node.kind !== 'place' && node.kind !== 'puzzle' && node.kind !== 'fastener';
}

function PutAllIn({ nodes }: { nodes: readonly GameNode[] }) {
  const game = useGame((state) => state.game);
  const [choosing, setChoosing] = useState(false);
  const ids = nodes.map((node) => node.id);
  const pick = (id: string) => {
    setChoosing(false);
    useGame.getState().apply([{ type: 'place', ids, holder: id === NONE ? null : id, before: null }]);
  };
  return (
    <Section title={FORM.liesIn}>
      <button
        type="button"
        className="button"
        aria-expanded={choosing}
        onClick={() => setChoosing(!choosing)}
      >
        {MANY.putIn}
      </button>
      {choosing && (
        <Picker
          label={MANY.putIn}
          choices={[{ id: NONE, name: FORM.inHand }, ...holderChoices(game, ids, isHolder, undefined)]}
          onPick={pick}
          onClose={() => setChoosing(false)}
        />
      )}
    </Section>
  );
}

function HandsOfAll({ nodes }: { nodes: readonly GameNode[] }) {
  const values = new Set(nodes.map((node) => node.hands));
  const [only] = values;
  const field = `hands ${nodes.map((node) => node.id).join(' ')}`;
  const write = (hands: number | undefined) => {
    const edits = nodes.map((node): Edit => ({ type: 'setFields', id: node.id, fields: { hands } }));
    useGame.getState().apply(edits, field);
  };
  return (
    <section className="form-section form-short">
      <TextField
        field={field}
        label={MANY.hands}
        shown={values.size === 1 && only !== undefined ? String(only) : ''}
        read={readHands}
        write={write}
        placeholder={values.size === 1 ? MANY.usual : MANY.mixed}
        numeric
      />
    </section>
  );
}
