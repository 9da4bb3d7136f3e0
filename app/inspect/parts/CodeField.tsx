/** A code or answer: as plates of symbols, and as a field while it is being changed. */
import { Fragment, useEffect, useId, useRef, useState } from 'react';
import { direction, namesDirections } from '../../../src/fasteners/direction.ts';
import { normaliseCode, symbolsOf } from '../../../src/game/codes.ts';
import { FORM } from '../../../src/words/screen-form.ts';
import { Sign, type SignName } from '../../shell/signs.tsx';
import { codeReading } from '../code-reading.ts';
import { useDraft } from '../draft.ts';
import { readText } from '../TextField.tsx';
import { typeField } from '../write.ts';
import './code-field.css';

const readDirections = codeReading(direction);

type Direction = keyof typeof FORM.directions;
const DIRECTIONS: readonly Direction[] = ['U', 'D', 'L', 'R'];

function isDirection(symbol: string): symbol is Direction {
  return DIRECTIONS.some((letter) => letter === symbol);
}

const DRAWN: Readonly<Record<Direction, SignName>> = { U: 'up', D: 'down', L: 'left', R: 'right' };

function Plate({ symbol, directions }: { symbol: string; directions: boolean }) {
  return (
    <span className="code-plate">
      {directions && isDirection(symbol) && <Sign name={DRAWN[symbol]} />}
      {symbol}
    </span>
  );
}

export interface CodeFieldProps {
  readonly id: string;
  /** The document's field: `code` of a lock, `answer` of a puzzle or clue. */
  readonly field: 'code' | 'answer';
  readonly label: string;
  readonly raw: string | undefined;
  /** Said while it is empty. */
  readonly empty: string;
  /** Symbols are directions: drawn as arrows, with buttons to add them. */
  readonly directions: boolean;
}

export function CodeField({ id, field, label, raw, empty, directions }: CodeFieldProps) {
  const inputId = useId();
  const [changing, setChanging] = useState(false);
  const write = (value: string | undefined) => typeField(id, field, value);
  const draft = useDraft(
    `${directions ? 'directions' : field} ${id}`,
    raw ?? '',
    directions ? readDirections : readText,
    write,
  );
  const symbols = symbolsOf(normaliseCode(draft.value)).map((symbol, at) => ({
    symbol,
    key: `${at} ${symbol}`,
  }));
  const whole = useRef<HTMLFieldSetElement>(null);

  useEffect(() => {
    if (changing) whole.current?.querySelector('input')?.focus();
  }, [changing]);

  const leave = (event: React.FocusEvent) => {
    if (whole.current?.contains(event.relatedTarget)) return;
    setChanging(false);
    // Words that name moves become moves: also those that stood there before the lock was one of directions.
    const reading = readDirections(draft.value);
    const areMoves = directions || namesDirections(draft.value);
    if (areMoves && 'value' in reading && reading.value !== raw) write(reading.value);
    draft.leave();
  };
  const plates = symbols.map(({ symbol, key }) => (
    <Fragment key={key}>
      <Plate symbol={symbol} directions={directions} />{' '}
    </Fragment>
  ));

  if (!changing && symbols.length > 0 && draft.wrong === undefined) {
    return (
      <button
        type="button"
        className={field === 'code' ? 'code-plates' : 'code-plates code-plates-paper'}
        onClick={() => setChanging(true)}
      >
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
      {directions && (
        <div className="code-directions">
          {DIRECTIONS.map((letter) => (
            <button
              key={letter}
              type="button"
              className="button"
              aria-label={`${FORM.addSymbol} ${FORM.directions[letter]}`}
              onClick={() => {
                setChanging(true);
                draft.change(`${draft.wrong === undefined ? draft.value : (raw ?? '')}${letter}`);
              }}
            >
              <Sign name={DRAWN[letter]} />
              {letter}
            </button>
          ))}
        </div>
      )}
      {directions && <p className="hint">{FORM.directionHint}</p>}
    </fieldset>
  );
}
