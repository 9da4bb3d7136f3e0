/** Trays that are higher than a column, cut between rows. */
import type { LinkId, NodeId } from '../../../game/model.ts';
import { isOpening, type MapContent, type Tellings, type Told, type Tray } from '../content.ts';
import type { Metrics } from '../measured.ts';

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

/** Rows before which a tray may be cut: so that something stands under every head, and something is left for after. */
function cutsOf({ rows }: Tray): number[] {
  /** Heads at the top say what goes on from before. */
  const heads = rows.findIndex((row) => !isOpening(row) || !row.continued);
  return rows.flatMap((row, i) => {
    const above = rows[i - 1];
    return i > heads && row.row !== 'foot' && above && !isOpening(above) ? [i] : [];
  });
}

/** A tray in two, so that the first is as high as fits; undefined when it fits whole, or cannot be cut. */
function cutOnce(content: MapContent, tray: Tray, heightOf: (tray: Tray) => number, most: number) {
  if (heightOf(tray) <= most) return undefined;
  const cuts = cutsOf(tray);
  const heights = new Map<number, number>();
  const heightAt = (before: number) => {
    const known = heights.get(before) ?? heightOf(content.cut(tray, before)[0]);
    heights.set(before, known);
    return known;
  };
  let [low, high] = [0, cuts.length];
  while (low < high) {
    const middle = Math.floor((low + high) / 2);
    if (heightAt(cuts[middle] ?? 0) <= most) low = middle + 1;
    else high = middle;
  }
  const last = cuts[low - 1] ?? cuts[0];
  if (last === undefined) return undefined;
  const tidy = cuts.findLast(
    (cut) => cut <= last && tray.rows[cut]?.row === 'head' && heightAt(cut) > (1 - BEFORE_A_BOX) * most,
  );
  return content.cut(tray, tidy ?? last);
}

/** The trays, each no higher than `most`, as far as rows allow. */
export function cutTall(content: MapContent, metrics: Metrics, told: Tellings, most: number): Tray[] {
  const heightOf = (tray: Tray) => content.measureTray(tray, metrics, told).height;
  return content.trays.flatMap((tray) => {
    const pieces: Tray[] = [];
    let rest = tray;
    for (
      let cut = cutOnce(content, rest, heightOf, most);
      cut;
      cut = cutOnce(content, rest, heightOf, most)
    ) {
      const [piece, after] = cut;
      if (after.rows.length >= rest.rows.length) break;
      pieces.push(piece);
      rest = after;
    }
    return [...pieces, rest];
  });
}
