import type { GameNode } from '../../../src/game/model.ts';
import { newName } from '../../../src/words/canvas.ts';
import { FORM } from '../../../src/words/screen-form.ts';
import { useGame } from '../../store/game.ts';
import { TextField } from '../TextField.tsx';

export function NameField({ node }: { node: GameNode }) {
  return (
    <section className="form-section">
      <TextField
        field={`name ${node.id}`}
        label={FORM.name}
        shown={node.name}
        replaced={node.name === newName(node.kind)}
        read={(raw) => ({ value: raw })}
        write={(name) => useGame.getState().apply([{ type: 'rename', id: node.id, name }], `name ${node.id}`)}
        {...(node.name.trim() === '' ? { hint: FORM.nameMissing } : {})}
      />
    </section>
  );
}
