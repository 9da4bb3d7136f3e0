/**
 * A list to pick from, opened in place below its button: typing narrows it, arrow keys and Enter pick (WAI-ARIA combobox pattern).
 * `depth` indents an entry, so that what lies in what can be seen.
 */
import { useEffect, useId, useRef, useState } from 'react';
import { FORM } from '../../src/words/screen-form.ts';
import './picker.css';

export interface Choice {
  readonly id: string;
  readonly name: string;
  readonly group?: string;
  readonly depth?: number;
  readonly current?: boolean;
}

export interface PickerProps {
  readonly label: string;
  readonly choices: readonly Choice[];
  readonly onPick: (id: string) => void;
  readonly onClose: () => void;
}

export function Picker({ label, choices, onPick, onClose }: PickerProps) {
  const id = useId();
  const input = useRef<HTMLInputElement>(null);
  const list = useRef<HTMLDivElement>(null);
  const [typed, setTyped] = useState('');
  const [active, setActive] = useState(0);
  const fits = choices.filter((choice) => choice.name.toLowerCase().includes(typed.trim().toLowerCase()));
  const at = Math.min(active, fits.length - 1);
  const chosen = fits[at];

  useEffect(() => input.current?.focus(), []);
  useEffect(() => {
    list.current?.querySelector(`[data-at="${at}"]`)?.scrollIntoView({ block: 'nearest' });
  }, [at]);

  const onKeyDown = (event: React.KeyboardEvent) => {
    const step = event.key === 'ArrowDown' ? 1 : event.key === 'ArrowUp' ? -1 : 0;
    if (step !== 0) setActive((at + step + fits.length) % Math.max(fits.length, 1));
    else if (event.key === 'Enter' && chosen) onPick(chosen.id);
    else if (event.key === 'Escape') onClose();
    else return;
    event.preventDefault();
    event.stopPropagation();
  };

  return (
    <div className="picker">
      <input
        ref={input}
        className="field"
        role="combobox"
        aria-label={`${label} ${FORM.filter}`}
        aria-expanded="true"
        aria-controls={`${id}-list`}
        aria-activedescendant={chosen && `${id}-${at}`}
        placeholder={FORM.filter}
        autoComplete="off"
        value={typed}
        onChange={(event) => {
          setTyped(event.target.value);
          setActive(0);
        }}
        onKeyDown={onKeyDown}
      />
      <div className="picker-list" ref={list} role="listbox" id={`${id}-list`} aria-label={label}>
        {fits.map((choice, i) => (
          <div key={choice.id}>
            {choice.group !== undefined && choice.group !== fits[i - 1]?.group && (
              <div className="picker-group" aria-hidden="true">
                {choice.group}
              </div>
            )}
            {/* biome-ignore lint/a11y/useKeyWithClickEvents: the keys are those of the field above, which keeps the focus */}
            <div
              className="picker-choice"
              role="option"
              id={`${id}-${i}`}
              data-at={i}
              tabIndex={-1}
              aria-selected={i === at}
              style={{ paddingInlineStart: 8 + 14 * (choice.depth ?? 0) }}
              onPointerMove={() => setActive(i)}
              onClick={() => onPick(choice.id)}
            >
              {choice.name}
              {choice.current && <span className="picker-current">{FORM.now}</span>}
            </div>
          </div>
        ))}
        {fits.length === 0 && <p className="hint">{FORM.nothingFits}</p>}
      </div>
    </div>
  );
}
