/** One of a few, side by side in one frame. */
import { useId } from 'react';
import './segments.css';

export interface SegmentsProps<Id extends string> {
  readonly label: string;
  readonly options: readonly { readonly id: Id; readonly name: string }[];
  readonly chosen: Id | undefined;
  readonly onChoose: (id: Id) => void;
}

export function Segments<Id extends string>({ label, options, chosen, onChoose }: SegmentsProps<Id>) {
  const group = useId();
  return (
    <div
      className={options.length < 4 ? 'segments segments-few' : 'segments'}
      role="radiogroup"
      aria-label={label}
    >
      {options.map(({ id, name }) => (
        <label key={id} className="segment">
          <input
            type="radio"
            className="aloud"
            name={group}
            checked={chosen === id}
            onChange={() => onChoose(id)}
          />
          {name}
        </label>
      ))}
    </div>
  );
}
