/** A place: tape corners round a pale field, its name at the top. */

import { LINE } from '../../../src/map/sizes.ts';
import { ownCaption } from '../../../src/words/canvas.ts';
import type { Card } from '../card.ts';
import { Pin } from './Pin.tsx';
import { Small } from './Small.tsx';
import { heatPaint, Tab } from './Tab.tsx';
import { Notes, Title } from './Title.tsx';
import { TrayCount } from './TrayCount.tsx';

/** Height of the band behind the name, which alone is tinted, so that a large tray does not shout. */
const bandHeight = (lines: number) => 12 + lines * LINE + 6;

export function Place({ slot, look, grow, small, pinned }: Card) {
  return (
    <div className="flow-place">
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
      <Small words={small} number={look.number} />
      <Notes slot={slot} grow={grow} after={slot.lines.length} />
      <TrayCount slot={slot} />
      {slot.caption && <span className="flow-caption">{ownCaption(slot.caption)}</span>}
      {pinned && <Pin />}
      <Tab look={look} className="flow-tab-place" room={slot.width - 30} />
    </div>
  );
}
