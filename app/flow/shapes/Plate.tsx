/** A lock: a metal plate across the wall of its box, with number, sign and code; its state stands to the right of it. */

import { PLATE_PAD, SIGN_ROOM, STATE_ROOM } from '../../../src/map/sizes.ts';
import { LOCK_STATES } from '../../../src/words/canvas.ts';
import type { Card } from '../card.ts';
import { CodeLine } from './Code.tsx';
import { LockSign } from './LockSign.tsx';
import { heatPaint, Tab } from './Tab.tsx';
import { grown, lineTop, Notes, numbered, StepNumber } from './Title.tsx';

export function Plate({ node, slot, look, grow }: Card) {
  const { text } = slot;
  const type = node.kind === 'fastener' ? node.type : undefined;
  const paint = heatPaint(look.heat);
  const beside = slot.wall === 'right' ? 'flow-beside-left' : 'flow-beside-right';
  const rows = slot.code?.lines.length ?? slot.lines.length;
  return (
    <div
      className={`flow-plate flow-plate-${slot.wall ?? 'left'}${look.heat ? ' flow-heated' : ''}`}
      style={paint && { color: paint.color }}
    >
      <div className="flow-metal" style={paint} />
      {slot.step && (
        <span className="flow-step-at" style={{ left: PLATE_PAD, top: lineTop(slot, grow, 0.5) }}>
          <StepNumber number={look.number} />
        </span>
      )}
      <span className="flow-short" style={slot.wall === 'right' ? { right: 0 } : { left: 0 }}>
        {look.number > 0 && look.number}
        <LockSign type={type} />
      </span>
      <span className="flow-sign-at" style={{ left: text.x - SIGN_ROOM, top: lineTop(slot, grow, 0.5) }}>
        <LockSign type={type} />
      </span>
      <span
        className="flow-name"
        style={{
          left: text.x,
          top: lineTop(slot, grow, 0),
          fontSize: grown(slot.code ? grow.code : grow.name),
        }}
      >
        {slot.code
          ? numbered(slot.code.lines).map(({ key, line }) => (
              <CodeLine key={key} symbols={line} directions={slot.code?.directions === true} />
            ))
          : numbered(slot.lines).map(({ key, line }) => (
              <span key={key} className="flow-line">
                {line}
              </span>
            ))}
      </span>
      <Notes slot={slot} grow={grow} after={rows} />
      {look.state ? (
        <span className={`flow-state flow-state-${look.state} ${beside}`}>{LOCK_STATES[look.state]}</span>
      ) : (
        <Tab look={look} className={`flow-tab-plate ${beside}`} room={STATE_ROOM} />
      )}
    </div>
  );
}
