/** What a folded tray holds: the signs of its locks, and its contents in words. */
import type { Slot } from '../../../src/map/layout.ts';
import { LINE } from '../../../src/map/sizes.ts';
import { holdsText } from '../../../src/words/canvas.ts';
import { LockSign } from './LockSign.tsx';
import { numbered } from './Title.tsx';

interface Props {
  readonly slot: Slot;
  /** Types of its locks. */
  readonly locks?: readonly (string | undefined)[];
}

export function TrayCount({ slot, locks = [] }: Props) {
  if (!slot.folded) return null;
  const top = slot.text.y + (slot.lines.length + slot.notes.length) * LINE;
  return (
    <span className="flow-count" style={{ left: slot.text.x, top }}>
      {numbered(locks).map(({ key, line }) => (
        <LockSign key={key} type={line} />
      ))}
      {holdsText(slot.holds ?? [])}
    </span>
  );
}
