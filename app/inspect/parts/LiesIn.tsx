/** Where a thing lies, or which box a lock is on; and the way to put it elsewhere without dragging. */
import { useState } from 'react';
import { type GameNode, isHolder, type NodeId, parentOf } from '../../../src/game/model.ts';
import type { Caption } from '../../../src/map/layout.ts';
import { FORM } from '../../../src/words/screen-form.ts';
import { NodeLink } from '../../shell/NodeLink.tsx';
import { useGame } from '../../store/game.ts';
import { Picker } from '../Picker.tsx';
import { Section } from '../Section.tsx';
import { holderChoices, shownName, withoutHolder } from './holders.ts';

const NONE = '';

const NO_HOLDER: Readonly<Record<Caption, string>> = {
  tables: FORM.onTables,
  hand: FORM.inHand,
  given: FORM.givenByTeacher,
};

export function LiesIn({ node }: { node: GameNode }) {
  const game = useGame((state) => state.game);
  const [choosing, setChoosing] = useState(false);
  const lock = node.kind === 'fastener';
  const title = lock ? FORM.on : FORM.liesIn;
  const current = parentOf(node);
  const holder = current === undefined ? undefined : game.nodes.get(current);
  const nothing = NO_HOLDER[withoutHolder(game, node)];

  const choices = () => {
    const fits = lock ? (each: GameNode) => each.kind === 'container' : isHolder;
    const holders = holderChoices(game, [node.id], fits, current);
    return lock ? holders : [{ id: NONE, name: nothing, current: current === undefined }, ...holders];
  };
  const pick = (id: NodeId) => {
    setChoosing(false);
    const { apply } = useGame.getState();
    if (lock) apply([{ type: 'fasten', ids: [node.id], on: id, before: null }]);
    else apply([{ type: 'place', ids: [node.id], holder: id === NONE ? null : id, before: null }]);
  };

  return (
    <Section title={title}>
      <div className="form-line">
        <span>{holder ? <NodeLink id={holder.id}>{shownName(game, holder)}</NodeLink> : nothing}</span>
        <button
          type="button"
          className="button"
          aria-expanded={choosing}
          onClick={() => setChoosing(!choosing)}
        >
          {lock ? FORM.putOn : FORM.putIn}
        </button>
      </div>
      {choosing && (
        <Picker label={title} choices={choices()} onPick={pick} onClose={() => setChoosing(false)} />
      )}
    </Section>
  );
}
