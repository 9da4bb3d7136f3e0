/** Trays that are higher than a column, cut between rows. */
import type { LinkId, NodeId } from '../../../game/model.ts';
import type { MapContent, Metrics, Tellings, Told, Tray } from '../content.ts';

/** A cut is put before a box that begins in this last part of what fits. */
const BEFORE_A_BOX = 0.3;

/** Every link told, on a page far off: as high as anything can become. */
export function allTold({ links }: MapContent): Tellings {
  const told = new Map<NodeId, Told[]>();
  const tell = (at: NodeId, link: LinkId, other: NodeId, otherEnd: 'from' | 'to') =>
    told.set(at, [...(told.get(at) ?? []), { link, other, otherEnd, elsewhere: { page: 99 } }]);
  for (const { id, from, to } of links) {
    tell(from, id, to, 'to');
    tell(to, id, from, 'from');
  }
  return told;
}

/** Row before which the tray is cut, so that what is above fits; undefined when it fits whole or cannot be cut to fit better. */
function cutOf(tray: Tray, tops: readonly number[], most: number): number | undefined {
  const whole = tops.at(-1) ?? 0;
  if (whole <= most) return undefined;
  const { rows } = tray;
  /** Heads at the top say what goes on from before; at least one row follows them. */
  const heads = rows.findIndex((row) => row.row !== 'head' || !row.continued);
  const first = heads + 1;
  let fits: number | undefined;
  let tidy: number | undefined;
  let depth = 0;
  for (const [i, row] of rows.entries()) {
    const closing = (rows.length > 0 ? depth : 0) * (whole - (tops[rows.length - 1] ?? whole) || 0);
    const top = (tops[i] ?? 0) + closing;
    if (i >= first && row.row !== 'foot' && rows[i - 1]?.row !== 'head') {
      if (top <= most) fits = i;
      if (top <= most && row.row === 'head' && top > (1 - BEFORE_A_BOX) * most) tidy = i;
      fits ??= i;
    }
    if (row.row === 'head') depth++;
    if (row.row === 'foot') depth--;
  }
  return tidy ?? fits;
}

/** The trays, each no higher than `most`, as far as rows allow. */
export function cutTall(content: MapContent, metrics: Metrics, told: Tellings, most: number): Tray[] {
  const pieces: Tray[] = [];
  for (const tray of content.trays) {
    let rest = tray;
    for (;;) {
      const { tops } = content.measureTray(rest, metrics, told);
      const before = cutOf(rest, tops, most);
      if (before === undefined) break;
      const [piece, after] = content.cut(rest, before);
      if (after.rows.length >= rest.rows.length) break;
      pieces.push(piece);
      rest = after;
    }
    pieces.push(rest);
  }
  return pieces;
}
