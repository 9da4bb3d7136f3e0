/** What stands in which part, when the bars are cut: each tray goes where it is most used, as far as there is room. */
import type { MapContent, Tray } from '../content.ts';
import type { Share } from './part.ts';
import type { Uses } from './uses.ts';

/** Two columns of trays. */
const COLUMNS = 2;

export interface Room {
  readonly height: number;
  readonly gap: number;
  /** Most that a tray can be high. */
  readonly heightOf: (tray: number) => number;
}

/** Trays dealt out to two columns, the highest first, each to the emptier one; undefined when they do not fit. */
export function deal(trays: readonly number[], { height, gap, heightOf }: Room): number[][] | undefined {
  const columns = Array.from({ length: COLUMNS }, () => ({ trays: [] as number[], end: 0 }));
  const sorted = [...trays].sort((a, b) => heightOf(b) - heightOf(a) || a - b);
  for (const tray of sorted) {
    const column = columns.reduce((best, other) => (other.end < best.end ? other : best));
    column.end += heightOf(tray) + gap;
    column.trays.push(tray);
    if (column.end - gap > height) return undefined;
  }
  return columns.map((column) => column.trays.sort((a, b) => a - b));
}

/** How often each part uses each tray. */
function countsOf(uses: Uses, starts: readonly number[]): number[][] {
  const partOf = (bar: number) => starts.findLastIndex((start) => start <= bar);
  const counts = uses.bars.map((bars) => {
    const list = starts.map(() => 0);
    for (const bar of bars) list[partOf(bar)] = (list[partOf(bar)] ?? 0) + 1;
    return list;
  });
  return counts.map((list, tray) => {
    if (list.some((count) => count > 0)) return list;
    const others = (uses.trays[tray] ?? []).map((other) => counts[other] ?? []);
    return list.map((_, part) => others.reduce((sum, other) => sum + (other[part] ?? 0), 0));
  });
}

const most = (counts: readonly number[]) =>
  counts.reduce((best, count, i) => (count > (counts[best] ?? 0) ? i : best), 0);

/** Parts by how near they are to one. */
const outwards = (from: number, parts: number) =>
  Array.from({ length: parts }, (_, i) => i).sort((a, b) => Math.abs(a - from) - Math.abs(b - from) || a - b);

/** `starts`: the first bar of each part. With `room`, what does not fit goes to the nearest part where it does, or to parts of trays alone at the end. */
export function sharesOf(
  { bars }: MapContent,
  trays: readonly Tray[],
  uses: Uses,
  starts: readonly number[],
  room?: Room,
): Share[] {
  const counts = countsOf(uses, starts);
  const parts: number[][] = starts.map(() => []);
  const unused: number[] = [];
  for (const [tray, list] of counts.entries()) {
    if (list.every((count) => count === 0)) unused.push(tray);
    else parts[most(list)]?.push(tray);
  }
  const homeless: { tray: number; home: number }[] = [];
  for (const [part, list] of parts.entries()) {
    if (!room || deal(list, room)) continue;
    const wanted = [...list].sort((a, b) => (counts[b]?.[part] ?? 0) - (counts[a]?.[part] ?? 0) || a - b);
    const kept: number[] = [];
    for (const tray of wanted) {
      if (deal([...kept, tray], room)) kept.push(tray);
      else homeless.push({ tray, home: part });
    }
    parts[part] = kept;
  }
  const heightOf = room?.heightOf ?? (() => 1);
  const load = (part: number) => (parts[part] ?? []).reduce((sum, tray) => sum + heightOf(tray), 0);
  for (const tray of unused) {
    const emptiest = parts.reduce((best, _, i) => (load(i) < load(best) ? i : best), 0);
    homeless.push({ tray, home: emptiest });
    if (!room || deal([...(parts[emptiest] ?? []), tray], room)) {
      parts[emptiest]?.push(tray);
      homeless.pop();
    }
  }
  for (const { tray, home } of homeless) {
    const fits = (part: number) => !room || deal([...(parts[part] ?? []), tray], room);
    const part = outwards(home, parts.length).find(fits);
    if (part === undefined) parts.push([tray]);
    else parts[part]?.push(tray);
  }
  return parts.map((list, i) => ({
    bars: i < starts.length ? bars.slice(starts[i], starts[i + 1] ?? bars.length) : [],
    trays: list.sort((a, b) => a - b).flatMap((tray) => trays[tray] ?? []),
  }));
}
