/** Three estimates of a step: at best, as a rule, at worst. All three or none; empty means what is usual. */
import { useId, useState } from 'react';
import { defaultMinutes } from '../../../src/game/defaults.ts';
import type { Estimate, GameNode } from '../../../src/game/model.ts';
import { FORM, usualTime, WRONG } from '../../../src/words/screen-form.ts';
import { useGame } from '../../store/game.ts';
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
    return { wrong: WRONG.allThree, columns: empty };
  }
  if (low > likely) return { wrong: WRONG.order, columns: ['low', 'likely'] };
  if (likely > high) return { wrong: WRONG.order, columns: ['likely', 'high'] };
  return { value: { low, likely, high } };
}

function shownEstimate(node: GameNode): Typed {
  const { minutes } = node;
  return {
    low: minutes ? typedMinutes(minutes.low) : '',
    likely: minutes ? typedMinutes(minutes.likely) : '',
    high: minutes ? typedMinutes(minutes.high) : '',
  };
}

export function HowLong({ node }: { node: GameNode }) {
  const id = useId();
  const shown = shownEstimate(node);
  const [draft, setDraft] = useState<{ typed: Typed; left: boolean; of: Estimate | undefined }>();
  // A draft that was left holds only as long as the game's estimate is the one it was left at.
  const live = draft && (!draft.left || draft.of === node.minutes) ? draft : undefined;
  const typed = live?.typed ?? shown;
  const usual = defaultMinutes(node);
  const reading = readEstimate(typed);
  // While the three are being filled in, they are not wrong yet.
  const wrong = live?.left && 'wrong' in reading ? reading : undefined;

  const change = (column: Column, raw: string) => {
    const next = { ...typed, [column]: raw };
    setDraft({ typed: next, left: false, of: node.minutes });
    const result = readEstimate(next);
    if ('value' in result) typeField(node.id, 'minutes', result.value);
  };
  const leave = (event: React.FocusEvent<HTMLFieldSetElement>) => {
    if (event.currentTarget.contains(event.relatedTarget)) return;
    setDraft('wrong' in reading ? { typed, left: true, of: node.minutes } : undefined);
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
