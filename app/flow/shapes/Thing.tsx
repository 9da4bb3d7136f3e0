/** Key, clue, tool, prize: a tag with a hole, a slip with a folded corner, a capsule, a ribbon. */

import type { Slot } from '../../../src/map/layout.ts';
import { NOTE, THING, THING_HEIGHT } from '../../../src/map/sizes.ts';
import { type TextStyle, textWidth } from '../../../src/type/text.ts';
import { noteText, ownCaption } from '../../../src/words/canvas.ts';
import type { Card, Look } from '../card.ts';
import { fold, ribbon, slip, tag } from './outlines.ts';
import { Pin } from './Pin.tsx';
import { Small } from './Small.tsx';
import { TAB_EDGES, TAB_TYPE, Tab, tabText } from './Tab.tsx';
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

/** From the tab to the right edge: the folded corner stays free. */
const TAB_RIGHT = 16;

/** Of what is had the name is shown and no tab; of what nobody has seen the tab stands in the name's place (moments.css). */
function nameOrTab({ heat, moment }: Look): boolean {
  return heat === undefined && (moment?.state === 'done' || moment?.state === 'unseen');
}

/** Notes grow no farther than this. */
const NOTES_GROW = 1.19;

/** By how much name and tab may grow side by side in one row; below 1 there is no room for both. */
function beside({ lines, notes, text, width }: Slot, tab: string): number {
  const widest = (of: readonly string[], type: TextStyle) =>
    Math.max(0, ...of.map((line) => textWidth(line, type)));
  const words = Math.max(widest(lines, THING), NOTES_GROW * widest(notes.map(noteText), NOTE));
  return (width - text.x - TAB_RIGHT - TAB_EDGES) / Math.max(1, words + textWidth(tab, TAB_TYPE));
}

export function Thing({ node, slot, look, grow: growth, small, pinned }: Card) {
  const told = nameOrTab(look) ? undefined : tabText(look);
  const by = told === undefined ? undefined : beside(slot, told);
  const inRow = told !== undefined && by !== undefined && by >= 1;
  const grow = inRow ? { ...growth, name: Math.min(growth.name, THING.size * by) } : growth;
  const tab = inRow ? 'flow-tab-row' : slot.parent === undefined ? 'flow-tab-place' : 'flow-tab-outside';
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
      <Tab
        look={look}
        className={tab}
        room={inRow ? by * textWidth(told, TAB_TYPE) + TAB_EDGES : slot.width - 30}
      />
    </div>
  );
}
