import type { GameNode } from '../../../src/game/model.ts';
import { FORM } from '../../../src/words/screen-form.ts';
import { readText, TextField } from '../TextField.tsx';
import { typeField } from '../write.ts';

export function PupilsRead({ node }: { node: GameNode }) {
  return (
    <section className="form-section">
      <TextField
        field={`text ${node.id}`}
        label={FORM.pupilsRead}
        shown={node.text ?? ''}
        read={readText}
        write={(text) => typeField(node.id, 'text', text)}
        placeholder={FORM.pupilsReadHint}
        lines={node.text && node.text.length > 70 ? 4 : 2}
      />
    </section>
  );
}

export function ForTeacher({ node }: { node: GameNode }) {
  return (
    <section className="form-section">
      <TextField
        field={`note ${node.id}`}
        label={FORM.forTeacher}
        shown={node.note ?? ''}
        read={readText}
        write={(note) => typeField(node.id, 'note', note)}
        placeholder={FORM.forTeacherHint}
        lines={2}
      />
    </section>
  );
}
