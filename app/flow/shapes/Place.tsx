/** A place: tape corners round a pale field, its name at the top. */

import { LINE } from '../../../src/map/sizes.ts';
import { ownCaption } from '../../../src/words/canvas.ts';
import type { Card } from '../card.ts';
import { Small } from './Small.tsx';
import { heatPaint, Tab } from './Tab.tsx';
import { Holds, Notes, Title } from './Title.tsx';

/** Height of the band behind the name, which alone is tinted, so that a large tray does not shout. */
const bandHeight = (lines: number) => 12 + lines * LINE + 6;

export function Place({ node, slot, look, grow, small }: Card) {
  const out = node.leftOut === true;
  return (
    <div className={out ? 'flow-place flow-out' : 'flow-place'}>
      {look.heat && (
        <span
          className="flow-band"
          style={{ ...heatPaint(look.heat), height: bandHeight(slot.lines.length) }}
        />
      )}
      <i className="flow-corner flow-corner-nw" />
      <i className="flow-corner flow-corner-ne" />
      <i className="flow-corner flow-corner-sw" />
      <i className="flow-corner flow-corner-se" />
      <div className="flow-words" style={look.heat && { color: heatPaint(look.heat)?.color }}>
        <Title slot={slot} number={look.number} grow={grow} strong />
      </div>
      <Small name={node.name} words={small} number={look.number} step={slot.step} />
      <Notes slot={slot} after={slot.lines.length} />
      <TrayCount card={{ slot, folded: slot.folded }} />
      {slot.caption && <span className="flow-caption">{ownCaption(slot.caption)}</span>}
      <Tab heat={look.heat} className="flow-tab-place" />
    </div>
  );
}

/** What it holds, in words: always on a folded tray, else only when the map is drawn small. */
export function TrayCount({ card: { slot, folded } }: { card: { slot: Card['slot']; folded: boolean } }) {
  if (!slot.holds || (slot.holds.length === 0 && !folded)) return null;
  const top = slot.text.y + (slot.lines.length + slot.notes.length) * LINE;
  return (
    <span
      className={folded ? 'flow-count flow-count-folded' : 'flow-count'}
      style={{ left: slot.text.x, top }}
    >
      <Holds slot={slot} />
    </span>
  );
}
