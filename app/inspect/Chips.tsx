/** Several of a few: each a word to press, ticked where it holds. */
import { Sign } from '../shell/signs.tsx';
import './chips.css';

export interface ChipsProps<Id extends string> {
  readonly label: string;
  readonly chips: readonly { readonly id: Id; readonly name: string }[];
  readonly pressed: ReadonlySet<string>;
  readonly onPress: (id: Id, pressed: boolean) => void;
}

export function Chips<Id extends string>({ label, chips, pressed, onPress }: ChipsProps<Id>) {
  return (
    <fieldset className="chips" aria-label={label}>
      {chips.map(({ id, name }) => (
        <label key={id} className="chip">
          <input
            type="checkbox"
            className="aloud"
            checked={pressed.has(id)}
            onChange={(event) => onPress(id, event.target.checked)}
          />
          {pressed.has(id) && <Sign name="tick" />}
          {name}
        </label>
      ))}
    </fieldset>
  );
}
