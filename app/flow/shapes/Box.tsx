/** A container: a double wall with a small hard shadow, its name at the top, a bar along the wall where it has several locks. */

import type { NodeId } from '../../../src/game/model.ts';
import { FOLDED_FROM } from '../../../src/map/tray.ts';
import { FOLDING, LOCK_STATES, ownCaption } from '../../../src/words/canvas.ts';
import { useView } from '../../store/view.ts';
import type { Card } from '../card.ts';
import { Pin } from './Pin.tsx';
import { Small } from './Small.tsx';
import { heatPaint, Tab } from './Tab.tsx';
import { Notes, Title } from './Title.tsx';
import { TrayCount } from './TrayCount.tsx';

export function Box({ node, slot, look, grow, small, pinned, hasp, locks, steps }: Card) {
  const paint = heatPaint(look.heat);
  return (
    <div className={`flow-box${look.heat ? ' flow-heated' : ''}`} style={paint && { color: paint.color }}>
      <div className="flow-walls" style={paint && { background: paint.background }} />
      {hasp && (
        <i className="flow-hasp" style={{ left: hasp.x, top: hasp.top, height: hasp.bottom - hasp.top }} />
      )}
      <div className="flow-words">
        <Title slot={slot} number={look.number} grow={grow} strong />
      </div>
      <Small words={small} number={look.number} />
      <Notes slot={slot} grow={grow} after={slot.lines.length} />
      <TrayCount slot={slot} locks={locks ?? []} steps={steps ?? []} />
      {isOpenedByHand(slot) && <FoldButton id={node.id} name={node.name} />}
      {slot.caption && <span className="flow-caption">{ownCaption(slot.caption)}</span>}
      {pinned && <Pin />}
      {look.state ? (
        <span className={`flow-state flow-state-${look.state} flow-state-folded`}>
          {LOCK_STATES[look.state]}
        </span>
      ) : (
        <Tab look={look} className="flow-tab-box" room={slot.width - 30} />
      )}
    </div>
  );
}

/** Boxes two or more deep are folded until they are opened. */
const isOpenedByHand = (slot: Card['slot']) => slot.depth >= FOLDED_FROM && !slot.folded;

function FoldButton({ id, name }: { id: NodeId; name: string }) {
  return (
    <button
      type="button"
      className="flow-fold-up nodrag"
      tabIndex={-1}
      aria-label={FOLDING.foldUp(name)}
      title={FOLDING.foldUp(name)}
      onClick={(event) => {
        event.stopPropagation();
        useView.getState().setOpened(id, false);
      }}
    >
      <svg viewBox="0 0 16 16" aria-hidden="true">
        <path d="M4 10l4-4 4 4" />
      </svg>
    </button>
  );
}
