/** Which links are told in words from the outset, and which lines turn out to be too long. */

import { byCodePoint } from '../../../game/compare.ts';
import type { LinkId, NodeId } from '../../../game/model.ts';
import type { PageLink } from '../content.ts';
import type { Measured } from './blocks.ts';
import type { Part } from './part.ts';

/** A line is drawn between a tray and a bar, or from a bar to the very next; anything else is told. */
export function neverDrawn({ links, bars }: Part, { ends }: Measured): Set<LinkId> {
  const told = new Set<LinkId>();
  for (const { id, from, to } of links) {
    const a = ends.get(from)?.block;
    const b = ends.get(to)?.block;
    const tray = a !== undefined && a >= bars.length ? 1 : 0;
    const other = b !== undefined && b >= bars.length ? 1 : 0;
    if (a === undefined || b === undefined || tray + other > 1 || (tray + other === 0 && b !== a + 1)) {
      told.add(id);
    }
  }
  return told;
}

export interface Length {
  readonly link: PageLink;
  /** Between the heights of its ends. */
  readonly length: number;
  /** The row in the tray; undefined from bar to bar. */
  readonly row: NodeId | undefined;
}

/** Drawn links, the longest first; ties in the order of their ids. */
export function lengthsOf(
  { links, bars }: Part,
  { ends }: Measured,
  told: ReadonlySet<LinkId>,
  y: Float64Array,
): Length[] {
  const lengths: Length[] = [];
  for (const link of links) {
    const a = ends.get(link.from);
    const b = ends.get(link.to);
    if (told.has(link.id) || !a || !b) continue;
    const row = a.block >= bars.length ? link.from : b.block >= bars.length ? link.to : undefined;
    const length = row === undefined ? 0 : Math.abs((y[a.block] ?? 0) + a.y - (y[b.block] ?? 0) - b.y);
    lengths.push({ link, length, row });
  }
  return lengths.sort((p, q) => q.length - p.length || byCodePoint(p.link.id, q.link.id));
}

/** What cannot be drawn at these heights: all but the shortest line of each row; and the longest line, if it is beyond reach. */
export function tooMuch(part: Part, lengths: readonly Length[]): LinkId[] {
  const rows = new Set<NodeId>();
  const second: LinkId[] = [];
  for (const { link, row } of [...lengths].reverse()) {
    if (row === undefined) continue;
    if (rows.has(row)) second.push(link.id);
    rows.add(row);
  }
  const longest = lengths[0];
  if (second.length > 0 || !longest) return second;
  return longest.length > part.area.reach ? [longest.link.id] : [];
}
