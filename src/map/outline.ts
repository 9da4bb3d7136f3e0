/** How much of the mat a thing takes up: itself, the plates that stand out of its wall, and the caption or field around it. */
import type { NodeId } from '../game/model.ts';
import { absolute, type MapLayout, type Rect, shownAs } from './layout.ts';
import { CAPTION_HEIGHT, OVERHANG } from './sizes.ts';

/** The slot on the mat that the node is drawn in; undefined for what the layout does not know. */
export function standsIn(layout: MapLayout, id: NodeId): NodeId | undefined {
  let shown = shownAs(layout, id);
  for (;;) {
    const parent = shown === undefined ? undefined : layout.slots.get(shown)?.parent;
    if (parent === undefined) return shown;
    shown = parent;
  }
}

/** A box with the plates on its wall; anything else as it is. On the mat. */
export function outline(layout: MapLayout, id: NodeId): Rect {
  const rect = absolute(layout, id);
  const slot = layout.slots.get(id);
  if (slot?.kind !== 'container') return rect;
  const [first] = layout.rows.get(id) ?? [];
  if (first === undefined || layout.slots.get(first)?.kind !== 'fastener') return rect;
  return {
    ...rect,
    x: slot.wall === 'left' ? rect.x - OVERHANG : rect.x,
    width: rect.width + OVERHANG,
  };
}

/** What nothing else on the mat should cover: outlines with their captions, and fields. */
export function occupied(layout: MapLayout): readonly Rect[] {
  const rects: Rect[] = [...layout.fields];
  for (const [id, slot] of layout.slots) {
    if (slot.parent !== undefined) continue;
    const rect = outline(layout, id);
    rects.push(
      slot.caption ? { ...rect, y: rect.y - CAPTION_HEIGHT, height: rect.height + CAPTION_HEIGHT } : rect,
    );
  }
  return rects;
}

export function overlaps(a: Rect, b: Rect): boolean {
  return a.x < b.x + b.width && b.x < a.x + a.width && a.y < b.y + b.height && b.y < a.y + a.height;
}

/** What stands on the mat with its caption, or shares a field. */
type Together = readonly NodeId[];

/** Pairs of what stands on the mat, one covering the other, its caption, or a field that it is not in. */
export function covered(layout: MapLayout): readonly (readonly [Together, Together])[] {
  const claims: { ids: Together; rect: Rect }[] = layout.fields.map((field) => ({
    ids: field.ids,
    rect: field,
  }));
  for (const [id, slot] of layout.slots) {
    if (slot.parent !== undefined) continue;
    const above = slot.caption ? CAPTION_HEIGHT : 0;
    const { x, y, width, height } = outline(layout, id);
    claims.push({ ids: [id], rect: { x, y: y - above, width, height: height + above } });
  }
  claims.sort((a, b) => a.rect.y - b.rect.y);
  const pairs: (readonly [Together, Together])[] = [];
  for (const [i, a] of claims.entries()) {
    for (let j = i + 1; j < claims.length; j++) {
      const b = claims[j];
      if (!b || b.rect.y >= a.rect.y + a.rect.height) break;
      const isMember = (whole: Together, one: Together) => one.length === 1 && whole.includes(one[0] ?? '');
      if (!isMember(a.ids, b.ids) && !isMember(b.ids, a.ids) && overlaps(a.rect, b.rect)) {
        pairs.push([a.ids, b.ids]);
      }
    }
  }
  return pairs;
}
