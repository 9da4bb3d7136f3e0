/** A labelled field of one line or several, bound to a value of the game through a draft. */
import { useEffect, useId, useRef } from 'react';
import { type Reading, useDraft } from './draft.ts';

export interface TextFieldProps<T> {
  /** Names the field and the thing that it belongs to, such as `hands b1`. */
  readonly field: string;
  readonly label: string;
  /** Where the section's heading says it already. */
  readonly labelAloud?: boolean;
  readonly shown: string;
  readonly read: (raw: string) => Reading<T>;
  readonly write: (value: T) => void;
  readonly hint?: string;
  readonly placeholder?: string;
  readonly lines?: number;
  readonly numeric?: boolean;
  /** The first click marks all of it, so that typing replaces it. */
  readonly replaced?: boolean;
  /** Takes the focus with all its text marked, and says that it has. */
  readonly asked?: boolean;
  readonly onAsked?: () => void;
  readonly maxLength?: number;
}

export function TextField<T>(props: TextFieldProps<T>) {
  const id = useId();
  const draft = useDraft(props.field, props.shown, props.read, props.write);
  const { asked = false, onAsked } = props;
  const input = useRef<HTMLInputElement>(null);
  useEffect(() => {
    if (!asked) return;
    input.current?.focus();
    input.current?.select();
    onAsked?.();
  }, [asked, onAsked]);
  const said = [draft.wrong && `${id}-wrong`, props.hint && `${id}-hint`].filter(Boolean).join(' ');
  const field = {
    id,
    className: 'field',
    value: draft.value,
    placeholder: props.placeholder,
    'aria-invalid': draft.wrong !== undefined,
    'aria-describedby': said === '' ? undefined : said,
    onChange: (event: React.ChangeEvent<HTMLInputElement | HTMLTextAreaElement>) =>
      draft.change(event.target.value),
    onFocus: (event: React.FocusEvent<HTMLInputElement | HTMLTextAreaElement>) => {
      if (props.replaced) event.target.select();
    },
    onBlur: draft.leave,
  };
  return (
    <div>
      <label className={props.labelAloud ? 'aloud' : 'label'} htmlFor={id}>
        {props.label}
      </label>
      {props.lines === undefined ? (
        <input
          {...field}
          ref={input}
          inputMode={props.numeric ? 'numeric' : 'text'}
          autoComplete="off"
          maxLength={props.maxLength}
        />
      ) : (
        <textarea {...field} rows={props.lines} />
      )}
      {draft.wrong && (
        <p className="field-error" id={`${id}-wrong`}>
          {draft.wrong}
        </p>
      )}
      {props.hint && (
        <p className="hint" id={`${id}-hint`}>
          {props.hint}
        </p>
      )}
    </div>
  );
}

/** Text as it stands; an empty field takes the value away. */
export function readText(raw: string): Reading<string | undefined> {
  return { value: raw === '' ? undefined : raw };
}
