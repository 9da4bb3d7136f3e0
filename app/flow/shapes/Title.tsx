/** The words on a shape: step number, name, and the lines under it, placed where the layout measured them. */

import type { Slot } from '../../../src/map/layout.ts';
import { LINE, STEP_ROOM } from '../../../src/map/sizes.ts';
import { noteText } from '../../../src/words/canvas.ts';

/** A filled circle with the number in the order of play; hollow for what takes time but is never reached. */
export function StepNumber({ number }: { number: number }) {
  return number > 0 ? (
    <span className="flow-step">{number}</span>
  ) : (
    <span className="flow-step flow-step-none" aria-hidden="true" />
  );
}

/** Lines that have no identity but their place. */
export function numbered<T>(lines: readonly T[]): readonly { readonly key: string; readonly line: T }[] {
  return lines.map((line, at) => ({ key: String(at), line }));
}

/** As large on the screen as ever, as far as there is room. */
export const grown = (grow: number) => `min(var(--name-size), ${grow}px)`;

interface TitleProps {
  readonly slot: Slot;
  readonly number: number;
  readonly grow: number;
  readonly strong: boolean;
}

export function Title({ slot, number, grow, strong }: TitleProps) {
  const { text } = slot;
  return (
    <>
      {slot.step && (
        <span className="flow-step-at" style={{ left: text.x - STEP_ROOM, top: text.y - 2 }}>
          <StepNumber number={number} />
        </span>
      )}
      <span
        className={strong ? 'flow-name flow-name-strong' : 'flow-name'}
        style={{ left: text.x, top: text.y, fontSize: grown(grow) }}
      >
        {numbered(slot.lines).map(({ key, line }) => (
          <span key={key} className="flow-line">
            {line}
          </span>
        ))}
      </span>
    </>
  );
}

/** The lines after the name and the answer. */
export function Notes({ slot, after }: { slot: Slot; after: number }) {
  if (slot.notes.length === 0) return null;
  return (
    <span className="flow-notes" style={{ left: slot.text.x, top: slot.text.y + after * LINE }}>
      {numbered(slot.notes).map(({ key, line }) => (
        <span key={key} className="flow-line">
          {noteText(line)}
        </span>
      ))}
    </span>
  );
}
