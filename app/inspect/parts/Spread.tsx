/** How much a step's time varies: a slider that widens or narrows the estimates around the likely time. One pull of it is one undo. */
import { useId, useState } from 'react';
import { minutesOf } from '../../../src/game/defaults.ts';
import type { Estimate, GameNode } from '../../../src/game/model.ts';
import { usualEstimate, widthOf, withWidth } from '../../../src/game/spread.ts';
import { FORM, spreadOf } from '../../../src/words/screen-form.ts';
import { useGame } from '../../store/game.ts';
import { typedMinutes } from '../minutes.ts';

/** From end to end; an arrow key takes one of them. */
const STEPS = 40;

export function Spread({ node }: { node: GameNode }) {
  const id = useId();
  // Where the slider stands and what it started from: the times are rounded, so they alone would make it jump.
  const [pull, setPull] = useState<{
    readonly at: number;
    readonly from: Estimate;
    readonly made: Estimate;
  }>();
  const now = minutesOf(node);
  const usual = usualEstimate(node);
  if (now.likely <= 0) return null;
  // An undo or a typed time has the last word.
  const pulling = pull && same(pull.made, now) ? pull : undefined;
  const at = pulling?.at ?? Math.round(widthOf(now, usual) * STEPS);

  const result = spreadOf(typedMinutes(now.low), typedMinutes(now.high));

  const move = (next: number) => {
    const from = pulling?.from ?? now;
    const minutes = withWidth(from, usual, next / STEPS);
    setPull({ at: next, from, made: minutes });
    useGame.getState().apply([{ type: 'setFields', id: node.id, fields: { minutes } }], `spread ${node.id}`);
  };
  const settle = () => {
    useGame.getState().settle();
  };
  const grab = () => {
    settle();
    window.addEventListener('pointerup', settle, { once: true });
  };

  return (
    <div className="spread">
      <div className="spread-label">
        <label htmlFor={id}>{FORM.spread}</label>
        <span className="spread-minutes" aria-hidden="true">
          {result}
        </span>
      </div>
      <input
        id={id}
        className="spread-slider"
        type="range"
        min={0}
        max={STEPS}
        step={1}
        value={at}
        aria-valuetext={result}
        onPointerDown={grab}
        onChange={(event) => move(Number(event.target.value))}
        onBlur={() => {
          setPull(undefined);
          settle();
        }}
      />
      <p className="spread-ends" aria-hidden="true">
        <span>{FORM.alwaysTheSame}</span>
        <span>{FORM.canBeAnything}</span>
      </p>
    </div>
  );
}

function same(a: Estimate, b: Estimate): boolean {
  return a.low === b.low && a.likely === b.likely && a.high === b.high;
}
