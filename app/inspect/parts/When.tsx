/** What sets a thing apart in the lesson: given out later, or leading nowhere on purpose. */
import type { GameNode } from '../../../src/game/model.ts';
import { FORM, WRONG } from '../../../src/words/screen-form.ts';
import type { Reading } from '../draft.ts';
import { parseMinutes, typedMinutes } from '../minutes.ts';
import { TextField } from '../TextField.tsx';
import { chooseField, typeField } from '../write.ts';

function readMinuteOfPlay(raw: string): Reading<number | undefined> {
  if (raw.trim() === '') return { value: undefined };
  const minute = parseMinutes(raw);
  return minute === undefined ? { wrong: WRONG.minuteOfPlay } : { value: minute };
}

export function When({ node }: { node: GameNode }) {
  const given = node.kind !== 'place' && node.kind !== 'puzzle' && node.kind !== 'fastener';
  return (
    <section className="form-section form-stack">
      {given && (
        <div className="form-short">
          <TextField
            field={`atMinute ${node.id}`}
            label={FORM.atMinute}
            shown={node.atMinute === undefined ? '' : typedMinutes(node.atMinute).replace(/ min$/, '')}
            read={readMinuteOfPlay}
            write={(minute) => typeField(node.id, 'atMinute', minute)}
            hint={FORM.atMinuteHint}
          />
        </div>
      )}
      {node.kind !== 'prize' && (
        <label className="form-check">
          <input
            type="checkbox"
            checked={node.decoy === true}
            onChange={(event) => chooseField(node.id, 'decoy', event.target.checked || undefined)}
          />
          {FORM.decoy}
        </label>
      )}
    </section>
  );
}
