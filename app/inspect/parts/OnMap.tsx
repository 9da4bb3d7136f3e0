/** Whether tidying leaves it where it is: asked of what stands on the mat itself. */
import { isPinned, type NodeId, parentOf } from '../../../src/game/model.ts';
import { FORM } from '../../../src/words/screen-form.ts';
import { CommandButton } from '../../commands/CommandButton.tsx';
import { useGame } from '../../store/game.ts';
import { Section } from '../Section.tsx';

export function OnMap({ id }: { id: NodeId }) {
  const pinned = useGame(({ game }) => isPinned(game, id));
  const stands = useGame(({ game }) => {
    const node = game.nodes.get(id);
    return node !== undefined && parentOf(node) === undefined;
  });
  if (!stands) return null;
  return (
    <Section title={FORM.onMap}>
      <div className="form-line">
        <p>{pinned ? FORM.pinned : FORM.notPinned}</p>
        <CommandButton name="pin" sign="pin" />
      </div>
    </Section>
  );
}
