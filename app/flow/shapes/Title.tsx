/** The words on a shape: step number, name, and the lines under it, placed where the layout measured them. */

import { isHolder } from '../../../src/game/model.ts';
import type { Slot } from '../../../src/map/layout.ts';
import { LINE, STEP_ROOM } from '../../../src/map/sizes.ts';
import { noteText } from '../../../src/words/canvas.ts';
import { type Growth, lineCount, PITCH } from '../small.ts';

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

/**
 * The upper edge of a line, from 0; 0.5 is the middle of the first. In a tray lines stand where they were measured; on a card
 * the whole block grows from its middle.
 */
export function lineTop(slot: Slot, { name, code }: Growth, line: number): string {
  if (isHolder(slot)) return `${slot.text.y + line * LINE}px`;
  const size = Math.max(slot.lines.length > 0 ? name : 0, slot.code ? code : 0);
  return `calc(50% + ${line - lineCount(slot) / 2} * max(${LINE}px, ${PITCH} * ${grown(size)}))`;
}

interface TitleProps {
  readonly slot: Slot;
  readonly number: number;
  readonly grow: Growth;
  readonly strong: boolean;
}

export function Title({ slot, number, grow, strong }: TitleProps) {
  const { text } = slot;
  return (
    <>
      {slot.step && (
        <span className="flow-step-at" style={{ left: text.x - STEP_ROOM, top: lineTop(slot, grow, 0.5) }}>
          <StepNumber number={number} />
        </span>
      )}
      <span
        className={strong ? 'flow-name flow-name-strong' : 'flow-name'}
        style={{ left: text.x, top: lineTop(slot, grow, 0), fontSize: grown(grow.name) }}
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
export function Notes({ slot, grow, after }: { slot: Slot; grow: Growth; after: number }) {
  if (slot.notes.length === 0) return null;
  return (
    <span className="flow-notes" style={{ left: slot.text.x, top: lineTop(slot, grow, after) }}>
      {numbered(slot.notes).map(({ key, line }) => (
        <span key={key} className="flow-line">
          {noteText(line)}
        </span>
      ))}
    </span>
  );
}
