/** Three estimates of a step: at best, as a rule, at worst. All three or none; empty means what is usual. */
import { useId, useState } from 'react';
import { defaultMinutes } from '../../../src/game/defaults.ts';
import type { Estimate, GameNode } from '../../../src/game/model.ts';
import { FORM, usualTime, WRONG } from '../../../src/words/screen-form.ts';
import { useGame } from '../../store/game.ts';
import { keepDraft, useKeptDraft } from '../kept.ts';
import { parseMinutes, typedMinutes } from '../minutes.ts';
import { Section } from '../Section.tsx';
import { typeField } from '../write.ts';

type Column = 'low' | 'likely' | 'high';
type Typed = Readonly<Record<Column, string>>;

const COLUMNS: readonly (readonly [Column, string])[] = [
  ['low', FORM.atBest],
  ['likely', FORM.asARule],
  ['high', FORM.atWorst],
];

type EstimateReading =
  | { readonly value: Estimate | undefined }
  /** `columns`: where to say it. */
  | { readonly wrong: string; readonly columns: readonly Column[] };

function readEstimate(typed: Typed): EstimateReading {
  const columns = COLUMNS.map(([column]) => column);
  const empty = columns.filter((column) => typed[column].trim() === '');
  if (empty.length === 3) return { value: undefined };
  const times = {
    low: parseMinutes(typed.low),
    likely: parseMinutes(typed.likely),
    high: parseMinutes(typed.high),
  };
  const bad = columns.filter((column) => !empty.includes(column) && times[column] === undefined);
  if (bad.length > 0) return { wrong: WRONG.minutes, columns: bad };
  const { low, likely, high } = times;
  if (low === undefined || likely === undefined || high === undefined) {
    const missing = COLUMNS.filter(([column]) => empty.includes(column)).map(([, label]) => label);
    return { wrong: WRONG.timesMissing(missing), columns: empty };
  }
  if (low > likely) return { wrong: WRONG.order, columns: ['low', 'likely'] };
  if (likely > high) return { wrong: WRONG.order, columns: ['likely', 'high'] };
  return { value: { low, likely, high } };
}

function shownEstimate({ minutes }: GameNode): Typed {
  return {
    low: minutes ? typedMinutes(minutes.low) : '',
    likely: minutes ? typedMinutes(minutes.likely) : '',
    high: minutes ? typedMinutes(minutes.high) : '',
  };
}

const inOrder = (typed: Typed) => [typed.low, typed.likely, typed.high];

export function HowLong({ node }: { node: GameNode }) {
  const id = useId();
  const field = `minutes ${node.id}`;
  const shown = shownEstimate(node);
  const of = inOrder(shown).join(' ');
  const kept = useKeptDraft(field, of);
  // Good times stand as they are typed, until the three are left.
  const [typing, setTyping] = useState<Typed>();
  const [filling, setFilling] = useState(false);
  const [low = '', likely = '', high = ''] = kept?.typed ?? [];
  const typed = kept ? { low, likely, high } : (typing ?? shown);
  const usual = defaultMinutes(node);
  const reading = readEstimate(typed);
  // While the three are being filled in, they are not wrong yet.
  const wrong = !filling && 'wrong' in reading ? reading : undefined;

  const change = (column: Column, raw: string) => {
    const next = { ...typed, [column]: raw };
    const result = readEstimate(next);
    const good = 'value' in result;
    setFilling(true);
    setTyping(good ? next : undefined);
    keepDraft(field, good ? undefined : { typed: inOrder(next), of });
    if (good) typeField(node.id, 'minutes', result.value);
  };
  const leave = (event: React.FocusEvent<HTMLFieldSetElement>) => {
    if (event.currentTarget.contains(event.relatedTarget)) return;
    setFilling(false);
    setTyping(undefined);
    useGame.getState().settle();
  };

  return (
    <Section title={FORM.howLong}>
      <fieldset className="form-three" aria-label={FORM.howLong} onBlur={leave}>
        {COLUMNS.map(([column, label]) => (
          <div key={column}>
            <label className="label" htmlFor={`${id}-${column}`}>
              {label}
            </label>
            <input
              id={`${id}-${column}`}
              className="field"
              value={typed[column]}
              placeholder={typedMinutes(usual[column])}
              autoComplete="off"
              aria-invalid={wrong?.columns.includes(column) ?? false}
              aria-describedby={wrong ? `${id}-wrong` : `${id}-hint`}
              onChange={(event) => change(column, event.target.value)}
            />
          </div>
        ))}
      </fieldset>
      {wrong ? (
        <p className="field-error" id={`${id}-wrong`}>
          {wrong.wrong}
        </p>
      ) : (
        <p className="hint" id={`${id}-hint`}>
          {usualTime(node.kind)}
        </p>
      )}
    </Section>
  );
}
