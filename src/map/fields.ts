/** Which things on the mat share a field, because they stand together. */
import { byCodePoint } from '../game/compare.ts';
import type { NodeId } from '../game/model.ts';
import type { Caption, Field, Rect, Side } from './layout.ts';
import { overlaps } from './outline.ts';
import { CAPTION_HEIGHT, FIELD_GAP, FIELD_PAD, OVERHANG } from './sizes.ts';

export interface Captioned {
  readonly id: NodeId;
  readonly caption: Caption;
  readonly rect: Rect;
  /** The wall that plates stand out of. */
  readonly overhang: Side | undefined;
}

/** One column: they share more than half of the narrower one's width. */
function oneColumn(a: Rect, b: Rect): boolean {
  const shared = Math.min(a.x + a.width, b.x + b.width) - Math.max(a.x, b.x);
  return shared > Math.min(a.width, b.width) / 2;
}

function fieldAround(caption: Caption, members: readonly Captioned[]): Field {
  const left = Math.min(
    ...members.map(({ rect, overhang }) => rect.x - (overhang === 'left' ? OVERHANG : 0)),
  );
  const right = Math.max(
    ...members.map(({ rect, overhang }) => rect.x + rect.width + (overhang === 'right' ? OVERHANG : 0)),
  );
  const top = Math.min(...members.map(({ rect }) => rect.y));
  const bottom = Math.max(...members.map(({ rect }) => rect.y + rect.height));
  return {
    caption,
    x: left - FIELD_PAD,
    y: top - FIELD_PAD - CAPTION_HEIGHT,
    width: right - left + 2 * FIELD_PAD,
    height: bottom - top + 2 * FIELD_PAD + CAPTION_HEIGHT,
    ids: members.map(({ id }) => id),
  };
}

/** Whether something stands between the two, so that a field around them would hold what is not of it. */
function isParted({ rect: a }: Captioned, { rect: b }: Captioned, standing: readonly Rect[]): boolean {
  const between = {
    x: Math.min(a.x, b.x),
    y: a.y + a.height,
    width: Math.max(a.x + a.width, b.x + b.width) - Math.min(a.x, b.x),
    height: b.y - (a.y + a.height),
  };
  return standing.some((other) => other !== a && other !== b && overlaps(other, between));
}

/**
 * Columns of at least two with one caption, each at most FIELD_GAP below the one before and nothing between them; the rest stand
 * alone. From top to bottom. `standing`: all that stands on the mat.
 */
export function fieldsOf(things: readonly Captioned[], standing: readonly Rect[]): readonly Field[] {
  const sorted = [...things].sort(
    (a, b) => a.rect.y - b.rect.y || a.rect.x - b.rect.x || byCodePoint(a.id, b.id),
  );
  const columns: { caption: Caption; members: Captioned[]; last: Captioned }[] = [];
  for (const thing of sorted) {
    const column = columns.find(({ caption, last }) => {
      const gap = thing.rect.y - (last.rect.y + last.rect.height);
      if (caption !== thing.caption || gap < 0 || gap > FIELD_GAP) return false;
      return oneColumn(last.rect, thing.rect) && !isParted(last, thing, standing);
    });
    if (column) {
      column.members.push(thing);
      column.last = thing;
    } else columns.push({ caption: thing.caption, members: [thing], last: thing });
  }
  return columns
    .filter(({ members }) => members.length > 1)
    .map(({ caption, members }) => fieldAround(caption, members));
}
