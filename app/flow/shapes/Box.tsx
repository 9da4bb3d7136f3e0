/** A container: a double wall with a small hard shadow, its name at the top, a bar along the wall where it has several locks. */

import { ownCaption } from '../../../src/words/canvas.ts';
import type { Card } from '../card.ts';
import { Small } from './Small.tsx';
import { Tab } from './Tab.tsx';
import { Notes, Title } from './Title.tsx';
import { TrayCount } from './TrayCount.tsx';

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
      <TrayCount slot={slot} locks={locks ?? []} />
      {slot.caption && <span className="flow-caption">{ownCaption(slot.caption)}</span>}
      <Tab heat={look.heat} className="flow-tab-place" />
    </div>
  );
}
