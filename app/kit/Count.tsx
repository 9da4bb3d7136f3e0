/** A count to be stepped or typed. */
import { useId, useState } from 'react';
import { WRONG_KIT } from '../../src/words/screen-kit.ts';
import { parseCount } from '../inspect/numbers.ts';

interface CountProps {
  readonly value: number;
  readonly least: number;
  readonly most: number;
  readonly names: { readonly fewer: string; readonly more: string; readonly count: string };
  /** With a tag while it is typed. */
  readonly write: (value: number, tag?: string) => void;
  readonly disabled?: boolean;
}

export function Count({ value, least, most, names, write, disabled = false }: CountProps) {
  const id = useId();
  const [typed, setTyped] = useState<string>();
  const read = (raw: string) => {
    const number = parseCount(raw, least);
    return number !== undefined && number <= most ? number : undefined;
  };
  const wrong = typed !== undefined && read(typed) === undefined;
  return (
    <span className="kit-count">
      <button
        type="button"
        aria-label={names.fewer}
        title={names.fewer}
        disabled={disabled || value <= least}
        onClick={() => write(value - 1)}
      >
        −
      </button>
      <input
        inputMode="numeric"
        autoComplete="off"
        aria-label={names.count}
        aria-invalid={wrong}
        aria-describedby={wrong ? id : undefined}
        disabled={disabled}
        value={typed ?? String(value)}
        onFocus={(event) => event.target.select()}
        onChange={({ target }) => {
          setTyped(target.value);
          const number = read(target.value);
          if (number !== undefined) write(number, 'count');
        }}
        onBlur={() => setTyped(undefined)}
      />
      <button
        type="button"
        aria-label={names.more}
        title={names.more}
        disabled={disabled || value >= most}
        onClick={() => write(value + 1)}
      >
        +
      </button>
      {wrong && (
        <span className="kit-count-wrong" id={id}>
          {WRONG_KIT.count}
        </span>
      )}
    </span>
  );
}
