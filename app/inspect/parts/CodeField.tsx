/** A code or answer: as plates of symbols, and as a field while it is being changed. */
import { useEffect, useId, useRef, useState } from 'react';
import { direction, namesDirections } from '../../../src/fasteners/direction.ts';
import { type FastenerType, type Hardware, isKnownType } from '../../../src/fasteners/index.ts';
import { codeHint } from '../../../src/words/form-code.ts';
import { FORM } from '../../../src/words/screen-form.ts';
import { codeReading } from '../code-reading.ts';
import { useDraft } from '../draft.ts';
import { typeField } from '../write.ts';
import { CodePlates } from './CodePlates.tsx';
import { SymbolButtons } from './SymbolButtons.tsx';
import './code-field.css';

const readMoves = codeReading(direction);

export interface CodeFieldProps {
  readonly id: string;
  /** The document's field: `code` of a lock, `answer` of a puzzle or clue. */
  readonly field: 'code' | 'answer';
  readonly label: string;
  readonly raw: string | undefined;
  /** Said while it is empty. */
  readonly empty: string;
  /** Of the lock that it is the code of, or that the answer is for. */
  readonly type: FastenerType;
  readonly hardware?: Hardware | undefined;
}

export function CodeField({ id, field, label, raw, empty, type, hardware }: CodeFieldProps) {
  const inputId = useId();
  const [changing, setChanging] = useState(false);
  const write = (value: string | undefined) => typeField(id, field, value);
  const draft = useDraft(`${type.type} ${field} ${id}`, raw ?? '', codeReading(type, hardware), write);
  const whole = useRef<HTMLFieldSetElement>(null);
  const symbols = type.symbols(draft.value);
  const good = raw ?? '';
  const hint = codeHint(type.type);

  useEffect(() => {
    if (changing) whole.current?.querySelector('input')?.focus();
  }, [changing]);

  const leave = (event: React.FocusEvent) => {
    if (whole.current?.contains(event.relatedTarget)) return;
    setChanging(false);
    // Whoever writes 'up left down' means the moves, also before there is a lock for them.
    const moves = readMoves(draft.value);
    if (!isKnownType(type.type) && namesDirections(draft.value) && 'value' in moves) write(moves.value);
    draft.leave();
  };
  /** What is wrong is not added to. */
  const add = (symbol: string) => {
    setChanging(true);
    const before = type.symbols(draft.wrong === undefined ? draft.value : good);
    draft.change(type.write([...before, symbol]));
  };
  const plates = <CodePlates type={type} symbols={symbols} />;
  const look = field === 'code' ? 'code-plates' : 'code-plates code-plates-paper';

  if (!changing && symbols.length > 0 && draft.wrong === undefined) {
    return (
      <button type="button" className={look} onClick={() => setChanging(true)}>
        <span className="aloud">{label} </span>
        {plates}
        <span className="aloud">{FORM.changeCode}</span>
      </button>
    );
  }
  return (
    <fieldset ref={whole} onBlur={leave} aria-label={label}>
      <label className="aloud" htmlFor={inputId}>
        {label}
      </label>
      <input
        id={inputId}
        className="field code"
        value={draft.value}
        placeholder={empty}
        autoComplete="off"
        autoCapitalize="characters"
        inputMode={takesDigits(type, hardware) ? 'numeric' : 'text'}
        spellCheck={false}
        aria-invalid={draft.wrong !== undefined}
        aria-describedby={draft.wrong && `${inputId}-wrong`}
        onChange={(event) => {
          setChanging(true);
          draft.change(event.target.value);
        }}
        onKeyDown={(event) => {
          if (event.key === 'Enter' || event.key === 'Escape') event.currentTarget.blur();
        }}
      />
      {draft.wrong && (
        <p className="field-error" id={`${inputId}-wrong`}>
          {draft.wrong}
        </p>
      )}
      {hint !== undefined && draft.wrong === undefined && symbols.length > 0 && (
        <p className={`${look} code-understood`} aria-hidden="true">
          {plates}
        </p>
      )}
      <SymbolButtons type={type} hardware={hardware} next={symbols.length} onAdd={add} />
      {hint !== undefined && <p className="hint">{hint}</p>}
    </fieldset>
  );
}

/** For the keys that a screen shows. */
function takesDigits(type: FastenerType, hardware: Hardware | undefined): boolean {
  if (type.type === 'dial') return false;
  return type.wheel(0, hardware)?.every((symbol) => /^\d$/u.test(symbol)) ?? false;
}
