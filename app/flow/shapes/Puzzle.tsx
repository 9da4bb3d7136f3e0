/** A puzzle: a bar with cut corners, its name, and under it the answer that it gives. */

import { GIVES } from '../../../src/words/canvas.ts';
import type { Card } from '../card.ts';
import { CodeLine } from './Code.tsx';
import { bar } from './outlines.ts';
import { Pin } from './Pin.tsx';
import { Small } from './Small.tsx';
import { heatPaint, Tab } from './Tab.tsx';
import { grown, lineTop, Notes, numbered, Title } from './Title.tsx';

const HALF_LINE = 0.9;

export function Puzzle({ slot, look, grow, small, pinned }: Card) {
  const paint = heatPaint(look.heat);
  const code = slot.code;
  const after = slot.lines.length + (code?.lines.length ?? 0);
  return (
    <div className={`flow-puzzle${look.heat ? ' flow-heated' : ''}`} style={paint && { color: paint.color }}>
      <svg className="flow-outline" width={slot.width} height={slot.height} aria-hidden="true">
        <path d={bar(slot.width, slot.height, HALF_LINE)} style={paint && { fill: paint.background }} />
      </svg>
      <Title slot={slot} number={look.number} grow={grow} strong />
      {code && (
        <span
          className="flow-gives"
          style={{
            left: slot.text.x,
            top: lineTop(slot, grow, slot.lines.length),
            fontSize: grown(grow.code),
          }}
        >
          <span className="flow-gives-word">{GIVES}</span>
          <span>
            {numbered(code.lines).map(({ key, line }) => (
              <CodeLine key={key} symbols={line} directions={code.directions} />
            ))}
          </span>
        </span>
      )}
      <Small words={small} number={look.number} />
      <Notes slot={slot} grow={grow} after={after} />
      {pinned && <Pin />}
      <Tab look={look} className="flow-tab-puzzle" room={slot.width - 30} />
    </div>
  );
}
