/** What is chosen for printing: native fields, so that keys and readers know them. */
import type { ReactNode } from 'react';
import { SHEET_NAMES, type SheetName, type SheetOptions, sheetsOf } from '../../src/sheets/sheet.ts';
import { ORIENTATION_NAMES, PAPER_NAMES, PRINT, PRINT_OPTIONS } from '../../src/words/print.ts';
import { SHEET_TITLES } from '../../src/words/sheets.ts';

interface OptionsProps {
  readonly options: SheetOptions;
  readonly change: (changed: Partial<SheetOptions>) => void;
}

function Group({ legend, children }: { legend: string; children: ReactNode }) {
  return (
    <fieldset className="print-group">
      <legend>{legend}</legend>
      {children}
    </fieldset>
  );
}

interface ChoiceProps {
  readonly label: string;
  readonly checked: boolean;
  readonly disabled?: boolean;
  readonly onChange: (checked: boolean) => void;
}

function Choice({ label, checked, disabled = false, onChange }: ChoiceProps) {
  return (
    <label className="print-choice">
      <input
        type="checkbox"
        checked={checked}
        disabled={disabled}
        onChange={(event) => onChange(event.target.checked)}
      />
      {label}
    </label>
  );
}

interface OneOfProps<Value extends string> {
  readonly name: string;
  readonly values: Readonly<Record<Value, string>>;
  readonly chosen: Value;
  readonly onChoose: (value: Value) => void;
}

function OneOf<Value extends string>({ name, values, chosen, onChoose }: OneOfProps<Value>) {
  return (
    <div className="print-one-of">
      {(Object.keys(values) as Value[]).map((value) => (
        <label key={value} className="print-choice">
          <input type="radio" name={name} checked={value === chosen} onChange={() => onChoose(value)} />
          {values[value]}
        </label>
      ))}
    </div>
  );
}

const INKS = { colour: PRINT_OPTIONS.colour, grey: PRINT_OPTIONS.grey } as const;

export function Options({ options, change }: OptionsProps) {
  const { paper, orientation, codes, sheets } = options;
  const printed = sheetsOf(options);
  const possible = sheetsOf({ ...options, sheets: SHEET_NAMES });
  const choose = (name: SheetName, chosen: boolean) =>
    change({ sheets: SHEET_NAMES.filter((each) => (each === name ? chosen : sheets.includes(each))) });
  return (
    <form className="print-options" aria-label={PRINT.options} onSubmit={(event) => event.preventDefault()}>
      <Group legend={PRINT_OPTIONS.paper}>
        <OneOf name="paper" values={PAPER_NAMES} chosen={paper} onChoose={(paper) => change({ paper })} />
      </Group>
      <Group legend={PRINT_OPTIONS.map}>
        <OneOf
          name="orientation"
          values={ORIENTATION_NAMES}
          chosen={orientation}
          onChoose={(orientation) => change({ orientation })}
        />
      </Group>
      <Group legend={PRINT_OPTIONS.sheets}>
        {SHEET_NAMES.map((name) => (
          <Choice
            key={name}
            label={SHEET_TITLES[name]}
            checked={printed.includes(name)}
            disabled={!possible.includes(name)}
            onChange={(chosen) => choose(name, chosen)}
          />
        ))}
      </Group>
      <Group legend={PRINT_OPTIONS.onThem}>
        <Choice label={PRINT_OPTIONS.codes} checked={codes} onChange={(codes) => change({ codes })} />
        {!codes && <p className="hint">{PRINT_OPTIONS.withoutCodes}</p>}
        <Choice label={PRINT_OPTIONS.times} checked={options.times} onChange={(times) => change({ times })} />
        <Choice
          label={PRINT_OPTIONS.rescue}
          checked={options.rescue}
          onChange={(rescue) => change({ rescue })}
        />
        <Choice label={PRINT_OPTIONS.ticks} checked={options.ticks} onChange={(ticks) => change({ ticks })} />
      </Group>
      <Group legend={PRINT_OPTIONS.ink}>
        <OneOf
          name="ink"
          values={INKS}
          chosen={options.colour ? 'colour' : 'grey'}
          onChoose={(ink) => change({ colour: ink === 'colour' })}
        />
      </Group>
    </form>
  );
}
