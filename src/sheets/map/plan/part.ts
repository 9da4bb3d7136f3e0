/** A part of the map (a page, or half of one): what stands in it, its links, and the frame that it has to fit into. */
import type { LinkId, NodeId } from '../../../game/model.ts';
import type { Side } from '../../../map/layout.ts';
import type { Elsewhere, MapContent, PageLink, RescueNote, Told, Tray } from '../content.ts';

export interface Part {
  readonly content: MapContent;
  readonly bars: readonly NodeId[];
  readonly trays: readonly Tray[];
  readonly notes: readonly RescueNote[];
  /** With at least one end in this part. */
  readonly links: readonly PageLink[];
  readonly x: number;
  readonly width: number;
  readonly top: number;
  readonly bottom: number;
  readonly noteSides: readonly Side[];
  /** A line whose ends are farther apart in height is told. */
  readonly reach: number;
  /** No more crossings than this. */
  readonly crossings: number;
  /** For a node of another part. */
  readonly elsewhere: (id: NodeId) => Elsewhere | undefined;
}

/** Nodes with a row of their own in a tray; what is continued has it in an earlier part of the tray. */
export function* nodesOf(tray: Tray): Generator<NodeId> {
  for (const row of tray.rows) {
    if (row.row === 'foot' || (row.row === 'head' && row.continued)) continue;
    yield row.id;
  }
}

/** What is told at each node of the part. */
export function tellingsOf(part: Part, told: ReadonlySet<LinkId>): ReadonlyMap<NodeId, readonly Told[]> {
  const tellings = new Map<NodeId, Told[]>();
  const tell = (at: NodeId, link: LinkId, other: NodeId, otherEnd: 'from' | 'to') => {
    if (part.elsewhere(at)) return;
    const elsewhere = part.elsewhere(other);
    const list = tellings.get(at) ?? [];
    list.push({ link, other, otherEnd, ...(elsewhere && { elsewhere }) });
    tellings.set(at, list);
  };
  for (const { id, from, to } of part.links) {
    if (!told.has(id)) continue;
    tell(from, id, to, 'to');
    tell(to, id, from, 'from');
  }
  return tellings;
}
