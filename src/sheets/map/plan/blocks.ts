/** Bars and trays of a part with their sizes: the blocks that the spine arranges, and where links end on them. */
import type { LinkId, NodeId } from '../../../game/model.ts';
import type { Band, Spine, Tie } from '../../../spine/spine.ts';
import type { MapContent, Tellings } from '../content.ts';
import type { MeasuredBar, MeasuredTray, Metrics } from '../measured.ts';
import { nodesOf, type Part, tellingsOf } from './part.ts';
import type { Rung } from './snap.ts';

/** Between trays, and between bars, in sizes of the type. */
export const TRAY_GAP = 0.9;
export const BAR_GAP = 0.75;
/** Room for the arrow from a bar to the next. */
const ARROW_GAP = 15;

/** A line pulls with the same force however long it is, once it is longer than this, in sizes of the type. */
const NEAR = 0.05;

export interface End {
  readonly block: number;
  /** Below the block's upper edge. */
  readonly y: number;
}

export interface Measured {
  readonly heights: readonly number[];
  readonly ends: ReadonlyMap<NodeId, End>;
  /** For each bar, between which heights lines may arrive and leave. */
  readonly entries: readonly Range[];
  readonly tellings: Tellings;
}

export interface Range {
  readonly low: number;
  readonly high: number;
}

/** What is told at the nodes, as a key. */
function signature(nodes: Iterable<NodeId>, tellings: Tellings): string {
  let text = '';
  for (const node of nodes) {
    for (const { link, otherEnd, elsewhere } of tellings.get(node) ?? []) {
      const where = elsewhere ? ('page' in elsewhere ? elsewhere.page : elsewhere.half) : '';
      text += `${otherEnd} ${where} ${link}\n`;
    }
  }
  return text;
}

/** What was measured, by size, block and what is told in it. Blocks are measured over and over, and mostly nothing has changed. */
interface Known {
  readonly bars: Map<string, MeasuredBar>;
  readonly trays: Map<string, MeasuredTray>;
}

const known = new WeakMap<MapContent, Known>();

function knownOf(content: MapContent): Known {
  const before = known.get(content);
  if (before) return before;
  const none: Known = { bars: new Map(), trays: new Map() };
  known.set(content, none);
  return none;
}

function remembered<T>(map: Map<string, T>, key: string, make: () => T): T {
  const before = map.get(key);
  if (before !== undefined) return before;
  const made = make();
  map.set(key, made);
  return made;
}

/** Measures for a set of told links. */
export type Measuring = (told: ReadonlySet<LinkId>) => Measured;

export function measuring(part: Part, metrics: Metrics): Measuring {
  const { content } = part;
  const { bars, trays } = knownOf(content);
  const { size, barWidth, trayWidth } = metrics;
  const nodes = new Map(part.trays.map((tray) => [tray, [...nodesOf(tray)]]));
  return (told) => {
    const tellings = tellingsOf(part, told);
    const heights: number[] = [];
    const ends = new Map<NodeId, End>();
    const entries: Range[] = [];
    for (const id of part.bars) {
      const key = `${size} ${barWidth} ${id}\n${signature([id], tellings)}`;
      const bar = remembered(bars, key, () => content.measureBar(id, metrics, tellings));
      const low = bar.entries[0] ?? bar.height / 2;
      const high = bar.entries.at(-1) ?? low;
      ends.set(id, { block: heights.length, y: (low + high) / 2 });
      entries.push({ low, high });
      heights.push(bar.height);
    }
    for (const tray of part.trays) {
      const its = nodes.get(tray) ?? [];
      const key = `${size} ${trayWidth} ${tray.key}\n${signature(its, tellings)}`;
      const measured = remembered(trays, key, () => content.measureTray(tray, metrics, tellings));
      for (const node of its) {
        const y = measured.ends.get(node);
        if (y !== undefined) ends.set(node, { block: heights.length, y });
      }
      heights.push(measured.height);
    }
    return { heights, ends, entries, tellings };
  };
}

/** Where on the bar a line comes closest to being level; the middle of where it may, while no heights are known. */
function entryOf({ low, high }: Range, bar: number, row: number, y: Float64Array | undefined): number {
  if (!y) return (low + high) / 2;
  return Math.max(low, Math.min(high, row - (y[bar] ?? 0)));
}

/** Lines between trays and bars. */
export function rungsOf(part: Part, { ends, entries }: Measured, told: ReadonlySet<LinkId>): Rung[] {
  const bars = part.bars.length;
  return part.links.flatMap(({ id, from, to }) => {
    const a = ends.get(from);
    const b = ends.get(to);
    if (told.has(id) || !a || !b || (a.block < bars && b.block < bars)) return [];
    const [bar, tray] = a.block < bars ? [a.block, b] : [b.block, a];
    const range = entries[bar];
    return range ? [{ bar, tray: tray.block, row: tray.y, range }] : [];
  });
}

/** The blocks with the links that are drawn, as the spine has them. `y`: upper edges, once they are known. */
export function spineOf(
  part: Part,
  { heights, ends, entries }: Measured,
  told: ReadonlySet<LinkId>,
  size: number,
  y?: Float64Array,
): Spine {
  const bars = part.bars.length;
  const ties: Tie[] = [];
  const arrows = new Set<number>();
  const nothing: Range = { low: 0, high: 0 };
  for (const { id, from, to } of part.links) {
    const a = ends.get(from);
    const b = ends.get(to);
    if (told.has(id) || !a || !b) continue;
    if (a.block < bars && b.block < bars) {
      arrows.add(a.block);
      continue;
    }
    const [bar, tray] = a.block < bars ? [a, b] : [b, a];
    const row = (y?.[tray.block] ?? 0) + tray.y;
    const entry = entryOf(entries[bar.block] ?? nothing, bar.block, row, y);
    const off = y ? Math.abs(row - entry - (y[bar.block] ?? 0)) : size;
    ties.push({
      from: tray.block,
      fromY: tray.y,
      to: bar.block,
      toY: entry,
      weight: size / Math.max(NEAR * size, off),
    });
  }
  const { top, bottom, reach } = part.area;
  const band: Band = { top, bottom };
  return {
    blocks: heights.map((height) => ({ height })),
    bars,
    ties,
    gap: (above) => {
      if (above >= bars) return TRAY_GAP * size;
      return arrows.has(above) ? Math.max(ARROW_GAP, BAR_GAP * size) : BAR_GAP * size;
    },
    unit: size,
    bands: { left: band, spine: band, right: band },
    costs: { reach: reach / size },
  };
}
