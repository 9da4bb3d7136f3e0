/** What a folded tray holds: the signs of its locks, the numbers of the steps in it, and its contents in words. */
import type { Slot } from '../../../src/map/layout.ts';
import { LINE } from '../../../src/map/sizes.ts';
import { holdsText, moreSteps } from '../../../src/words/canvas.ts';
import { LockSign } from './LockSign.tsx';
import { numbered, StepNumber } from './Title.tsx';

interface Props {
  readonly slot: Slot;
  /** Types of its locks. */
  readonly locks?: readonly (string | undefined)[];
  readonly steps?: readonly number[];
}

/** So many numbers have room beside the words. */
const MOST_STEPS = 3;

export function TrayCount({ slot, locks = [], steps = [] }: Props) {
  if (!slot.folded) return null;
  const top = slot.text.y + (slot.lines.length + slot.notes.length) * LINE;
  return (
    <span className="flow-count" style={{ left: slot.text.x, top }}>
      {numbered(locks).map(({ key, line }) => (
        <LockSign key={key} type={line} />
      ))}
      {steps.slice(0, MOST_STEPS).map((step) => (
        <StepNumber key={step} number={step} />
      ))}
      {steps.length > MOST_STEPS && <span>{moreSteps(steps.length - MOST_STEPS)}</span>}
      {holdsText(slot.holds ?? [])}
    </span>
  );
}
