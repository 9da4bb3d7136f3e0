/** A container: a double wall with a small hard shadow, its name at the top, a bar along the wall where it has several locks. */

import { LINE } from '../../../src/map/sizes.ts';
import { ownCaption } from '../../../src/words/canvas.ts';
import type { Card } from '../card.ts';
import { LockSign } from './LockSign.tsx';
import { TrayCount } from './Place.tsx';
import { Small } from './Small.tsx';
import { Tab } from './Tab.tsx';
import { Notes, numbered, Title } from './Title.tsx';

export function Box({ node, slot, look, grow, small, hasp, locks }: Card) {
  const out = node.leftOut === true;
  return (
    <div className={out ? 'flow-box flow-out' : 'flow-box'}>
      <div className="flow-walls" />
      {hasp && (
        <i className="flow-hasp" style={{ left: hasp.x, top: hasp.top, height: hasp.bottom - hasp.top }} />
      )}
      <div className="flow-words">
        <Title slot={slot} number={look.number} grow={grow} strong />
      </div>
      <Small name={node.name} words={small} number={look.number} step={slot.step} />
      <Notes slot={slot} after={slot.lines.length} />
      {slot.folded ? (
        <Folded slot={slot} locks={locks ?? []} />
      ) : (
        <TrayCount card={{ slot, folded: false }} />
      )}
      {slot.caption && <span className="flow-caption">{ownCaption(slot.caption)}</span>}
      <Tab heat={look.heat} className="flow-tab-place" />
    </div>
  );
}

function Folded({ slot, locks }: { slot: Card['slot']; locks: readonly (string | undefined)[] }) {
  const top = slot.text.y + (slot.lines.length + slot.notes.length) * LINE;
  return (
    <>
      <span className="flow-folded-locks" style={{ left: slot.text.x, top }}>
        {numbered(locks).map(({ key, line }) => (
          <LockSign key={key} type={line} />
        ))}
      </span>
      <TrayCount
        card={{
          slot: { ...slot, text: { x: slot.text.x + locks.length * 18, y: slot.text.y } },
          folded: true,
        }}
      />
    </>
  );
}
