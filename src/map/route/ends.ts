/** The two ends of each link as they are drawn: the node itself, or the folded tray that it is in. */
import { type GameLink, isHolder, type Kind, type LinkId, type NodeId } from '../../game/model.ts';
import { absolute, type MapLayout, type Rect, type Side, shownAs } from '../layout.ts';
import { outline, standsIn } from '../outline.ts';
import { CAPTION_HEIGHT, LINE, NAME } from '../sizes.ts';

export interface End {
  /** What is drawn there. */
  readonly shown: NodeId;
  readonly kind: Kind;
  readonly rect: Rect;
  /** What stands on the mat and holds it, with its plates: lines run at right angles outside of it. */
  readonly around: Rect;
  /** Sides that a line may leave or arrive at: a plate has one, its outer edge. */
  readonly sides: readonly Side[];
  /** Height of the line when it is the only one. */
  readonly y: number;
}

export interface LinkEnds {
  readonly id: LinkId;
  readonly from: End;
  readonly to: End;
}

const BOTH: readonly Side[] = ['left', 'right'];

/** Ends of the links that can be drawn; a link within one folded tray has none. */
export function linkEnds(layout: MapLayout, links: Iterable<GameLink>): LinkEnds[] {
  const known = new Map<NodeId, End>();
  const endOf = (id: NodeId): End | undefined => {
    const shown = shownAs(layout, id);
    const root = standsIn(layout, id);
    const slot = shown === undefined ? undefined : layout.slots.get(shown);
    if (shown === undefined || root === undefined || !slot) return undefined;
    const before = known.get(shown);
    if (before) return before;
    const rect = absolute(layout, shown);
    const tray = isHolder(slot);
    const end: End = {
      shown,
      kind: slot.kind,
      rect,
      around: outline(layout, root),
      sides: slot.kind === 'fastener' && slot.wall ? [slot.wall] : BOTH,
      y: Math.round(tray ? rect.y + slot.text.y + LINE / 2 : rect.y + rect.height / 2),
    };
    known.set(shown, end);
    return end;
  };
  const ends: LinkEnds[] = [];
  for (const link of links) {
    const from = endOf(link.from);
    const to = endOf(link.to);
    if (from && to && from.shown !== to.shown) ends.push({ id: link.id, from, to });
  }
  return ends;
}

/** What a line should not run through: all that stands on the mat, and the captions above it. */
export function obstacles(layout: MapLayout): readonly Rect[] {
  const rects: Rect[] = [];
  for (const [id, slot] of layout.slots) {
    if (slot.parent !== undefined) continue;
    const rect = outline(layout, id);
    rects.push(rect);
    if (slot.caption) rects.push(captionBand(rect.x, rect.y - CAPTION_HEIGHT));
  }
  for (const field of layout.fields) rects.push(captionBand(field.x, field.y));
  return rects;
}

/** About as wide as the longest caption in its type. */
const captionBand = (x: number, y: number): Rect => ({
  x: x + 8,
  y: y + 4,
  width: 14 * NAME.size,
  height: CAPTION_HEIGHT - 4,
});
