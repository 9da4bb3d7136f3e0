/**
 * Three estimates of a step: at best, as a rule, at worst. The one in the middle takes the other two along; a slider says how far
 * they are apart. All three or none; empty means what is usual.
 */
import { useId, useRef, useState } from 'react';
import { defaultMinutes, minutesOf } from '../../../src/game/defaults.ts';
import type { Estimate, GameNode } from '../../../src/game/model.ts';
import { usualEstimate } from '../../../src/game/spread.ts';
import { FORM, usualTime } from '../../../src/words/screen-form.ts';
import { useGame } from '../../store/game.ts';
import { COLUMNS, type Column, readEstimate, shownEstimate, type Typed } from '../estimate.ts';
import { keepDraft, useKeptDraft } from '../kept.ts';
import { typedMinutes } from '../minutes.ts';
import { Section } from '../Section.tsx';
import { chooseField, typeField } from '../write.ts';
import { Spread } from './Spread.tsx';
import './how-long.css';

const inOrder = (typed: Typed) => [typed.low, typed.likely, typed.high];

interface Visit {
  /** What is typed into the boxes since one of them was entered. */
  readonly typed: Partial<Typed>;
  readonly held: Estimate;
}

export function HowLong({ node }: { node: GameNode }) {
  const id = useId();
  const rule = useRef<HTMLInputElement>(null);
  const field = `minutes ${node.id}`;
  const shown = shownEstimate(node);
  const of = inOrder(shown).join(' ');
  const kept = useKeptDraft(field, of);
  const [visit, setVisit] = useState<Visit>();
  const [low = '', likely = '', high = ''] = kept?.typed ?? [];
  const keptTyped: Typed = { low, likely, high };
  const typed: Typed = kept ? keptTyped : { ...shown, ...visit?.typed };
  const held = visit?.held ?? minutesOf(node);
  const usual = usualEstimate(node);

  const read = (boxes: Typed, touched: Partial<Typed>) =>
    readEstimate(boxes, new Set(COLUMNS.flatMap(([column]) => (column in touched ? column : []))), {
      held,
      usual,
    });
  const touchedBefore = visit?.typed ?? differing(typed, shown);
  const reading = read(typed, touchedBefore);
  // While the three are being filled in, they are not wrong yet.
  const wrong = !visit && 'wrong' in reading ? reading : undefined;

  const change = (column: Column, raw: string) => {
    const touched = { ...touchedBefore, [column]: raw };
    const next = { ...typed, [column]: raw };
    const result = read(next, touched);
    const good = 'value' in result;
    setVisit({ typed: touched, held });
    keepDraft(field, good ? undefined : { typed: inOrder(next), of });
    if (good) typeField(node.id, 'minutes', result.value);
  };
  const leave = (event: React.FocusEvent<HTMLFieldSetElement>) => {
    if (event.currentTarget.contains(event.relatedTarget)) return;
    setVisit(undefined);
    useGame.getState().settle();
  };
  const asUsual = () => {
    setVisit(undefined);
    keepDraft(field, undefined);
    chooseField(node.id, 'minutes', undefined);
    // The button goes with the times.
    rule.current?.focus();
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
              ref={column === 'likely' ? rule : undefined}
              className="field"
              value={typed[column]}
              placeholder={typedMinutes(defaultMinutes(node)[column])}
              autoComplete="off"
              aria-invalid={wrong?.columns.includes(column) ?? false}
              aria-describedby={wrong ? `${id}-wrong` : `${id}-hint`}
              onChange={(event) => change(column, event.target.value)}
            />
          </div>
        ))}
      </fieldset>
      <div className="how-long-line">
        {wrong ? (
          <p className="field-error" id={`${id}-wrong`}>
            {wrong.wrong}
          </p>
        ) : (
          <p className="hint" id={`${id}-hint`}>
            {node.minutes ? FORM.timesHint : usualTime(node.kind)}
          </p>
        )}
        {(node.minutes || kept) && (
          <button type="button" className="button" onClick={asUsual}>
            {FORM.asUsual}
          </button>
        )}
      </div>
      <Spread node={node} />
    </Section>
  );
}

/** The boxes of a draft that was kept that are not what the game has: these were typed. */
function differing(typed: Typed, shown: Typed): Partial<Typed> {
  return Object.fromEntries(
    COLUMNS.filter(([column]) => typed[column] !== shown[column]).map(([column]) => [column, typed[column]]),
  );
}
