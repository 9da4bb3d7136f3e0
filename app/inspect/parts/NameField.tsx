import type { GameNode } from '../../../src/game/model.ts';
import { newName } from '../../../src/words/canvas.ts';
import { FORM } from '../../../src/words/screen-form.ts';
import { useGame } from '../../store/game.ts';
import { useView } from '../../store/view.ts';
import { TextField } from '../TextField.tsx';

/** Longer is no name, and fills the map. A longer one out of a file stays as it is. */
const LONGEST = 200;

function nameTakenUp(): void {
  useView.getState().askName(undefined);
}

export function NameField({ node }: { node: GameNode }) {
  const asked = useView((view) => view.naming === node.id);
  return (
    <section className="form-section">
      <TextField
        field={`name ${node.id}`}
        label={FORM.name}
        shown={node.name}
        asked={asked}
        onAsked={nameTakenUp}
        maxLength={LONGEST}
        replaced={node.name === newName(node.kind)}
        read={(raw) => ({ value: raw })}
        write={(name) => useGame.getState().apply([{ type: 'rename', id: node.id, name }], `name ${node.id}`)}
        {...(node.name.trim() === '' ? { hint: FORM.nameMissing } : {})}
      />
    </section>
  );
}
