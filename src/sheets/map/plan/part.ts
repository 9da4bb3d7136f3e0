/** A part of the map (a page, or half of one): what stands in it, its links, and the area that it has to fit into. */
import type { LinkId, NodeId } from '../../../game/model.ts';
import {
  type Elsewhere,
  isOwnRow,
  type MapContent,
  type PageLink,
  type RescueNote,
  type Tellings,
  type Told,
  type Tray,
} from '../content.ts';
import type { Area } from './areas.ts';

/** What stands in a part. */
export interface Share {
  readonly bars: readonly NodeId[];
  readonly trays: readonly Tray[];
}

export interface Part extends Share {
  readonly content: MapContent;
  readonly notes: readonly RescueNote[];
  /** With at least one end in this part. */
  readonly links: readonly PageLink[];
  readonly area: Area;
  /** For a node of another part. */
  readonly elsewhere: (id: NodeId) => Elsewhere | undefined;
}

/** Nodes with a row of their own in a tray; what is continued has it in an earlier part of the tray. */
export function* nodesOf(tray: Tray): Generator<NodeId> {
  for (const row of tray.rows) if (isOwnRow(row)) yield row.id;
}

/** What is told at each node of the part. */
export function tellingsOf(part: Part, told: ReadonlySet<LinkId>): Tellings {
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

/** In which share each node stands. */
export function placesOf(shares: readonly Share[]): ReadonlyMap<NodeId, number> {
  const places = new Map<NodeId, number>();
  for (const [i, { bars, trays }] of shares.entries()) {
    for (const id of bars) places.set(id, i);
    for (const tray of trays) for (const id of nodesOf(tray)) places.set(id, i);
  }
  return places;
}
