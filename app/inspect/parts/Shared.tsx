/** One for each team, or so many for all teams together. */
import { useId } from 'react';
import { sharedOf } from '../../../src/game/defaults.ts';
import type { GameNode } from '../../../src/game/model.ts';
import { FORM } from '../../../src/words/screen-form.ts';
import { useDraft } from '../draft.ts';
import { chooseField, typeField } from '../write.ts';
import { readHands } from './Hands.tsx';

export function Shared({ node }: { node: GameNode }) {
  const id = useId();
  const shared = sharedOf(node);
  const draft = useDraft(
    `shared ${node.id}`,
    shared === undefined ? '' : String(shared),
    readHands,
    (count) => typeField(node.id, 'shared', count),
  );
  const together = shared !== undefined || draft.value !== '';
  return (
    <fieldset>
      <legend className="label form-legend">{FORM.howManyThere}</legend>
      <label className="form-check">
        <input
          type="radio"
          name={id}
          checked={!together}
          onChange={() => {
            draft.change('');
            draft.leave();
          }}
        />
        {FORM.eachTeam}
      </label>
      <div className="form-check form-count-row">
        <input
          id={`${id}-all`}
          type="radio"
          name={id}
          checked={together}
          onChange={() => chooseField(node.id, 'shared', 1)}
        />
        {together && (
          <input
            className="field form-count"
            aria-label={FORM.howManyTogether}
            value={draft.value}
            inputMode="numeric"
            autoComplete="off"
            aria-invalid={draft.wrong !== undefined}
            aria-describedby={draft.wrong && `${id}-wrong`}
            onChange={(event) => draft.change(event.target.value)}
            onBlur={draft.leave}
          />
        )}
        <label htmlFor={`${id}-all`}>{together ? FORM.forAllTeams : FORM.sharedByTeams}</label>
      </div>
      {draft.wrong && (
        <p className="field-error" id={`${id}-wrong`}>
          {draft.wrong}
        </p>
      )}
    </fieldset>
  );
}
