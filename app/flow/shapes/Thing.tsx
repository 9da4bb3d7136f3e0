/** Key, clue, tool, prize: a tag with a hole, a slip with a folded corner, a capsule, a ribbon. */

import { THING_HEIGHT } from '../../../src/map/sizes.ts';
import { ownCaption } from '../../../src/words/canvas.ts';
import type { Card } from '../card.ts';
import { fold, ribbon, slip, tag } from './outlines.ts';
import { Pin } from './Pin.tsx';
import { Small } from './Small.tsx';
import { Tab } from './Tab.tsx';
import { Notes, Title } from './Title.tsx';

const HALF_LINE = 0.65;
const STAR = 'M0-6.4L1.9-2.3L6.3-1.9L3-1L3.9 5.2L0 2.9L-3.9 5.2L-3-1L-6.3-1.9L-1.9-2.3Z';

function Outline({ kind, width, height }: { kind: string; width: number; height: number }) {
  switch (kind) {
    case 'key':
      return (
        <>
          <path d={tag(width, height, HALF_LINE)} />
          <circle cx={11} cy={height / 2} r={2.6} />
        </>
      );
    case 'tool':
      return (
        <rect
          x={HALF_LINE}
          y={HALF_LINE}
          width={width - 2 * HALF_LINE}
          height={height - 2 * HALF_LINE}
          rx={THING_HEIGHT / 2 - HALF_LINE}
        />
      );
    case 'prize':
      return (
        <>
          <path d={ribbon(width, height, HALF_LINE)} />
          <path className="flow-star" d={STAR} transform={`translate(17 ${height / 2})`} />
        </>
      );
    default:
      return (
        <>
          <path d={slip(width, height, HALF_LINE)} />
          <path className="flow-fold" d={fold(width, HALF_LINE)} />
        </>
      );
  }
}

export function Thing({ node, slot, look, grow, small, pinned }: Card) {
  return (
    <div className="flow-thing">
      <svg className="flow-outline" width={slot.width} height={slot.height} aria-hidden="true">
        <Outline kind={node.kind} width={slot.width} height={slot.height} />
      </svg>
      <Title slot={slot} number={look.number} grow={grow} strong={false} />
      <Small words={small} number={look.number} />
      <Notes slot={slot} grow={grow} after={slot.lines.length} />
      {slot.caption && <span className="flow-caption">{ownCaption(slot.caption)}</span>}
      {pinned && <Pin />}
      <Tab look={look} className="flow-tab-place" room={slot.width - 30} />
    </div>
  );
}
