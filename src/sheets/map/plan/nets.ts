/** Lines of a channel as nets: all that one bar takes from one side, or gives to it. A net has one height at the bar. */
import type { PageLink } from '../content.ts';
import { ENDS_APART } from '../measured.ts';
import type { Measured, Range } from './blocks.ts';
import type { Part } from './part.ts';

/** Lines of different nets that run beside each other are no closer than this. */
export const CLEAR = 3.5;
/** What is nearer than this is level. */
export const LEVEL = 0.01;
/** Steps in which a height at the bar is looked for. */
const STEP = 1.5;

export interface Branch {
  readonly link: PageLink;
  /** Height at the tray. */
  readonly y: number;
}

export interface Net {
  readonly bar: number;
  readonly leaves: boolean;
  readonly branches: readonly Branch[];
  /** Height at the bar. */
  readonly entry: number;
}

interface Bundle {
  readonly bar: number;
  readonly leaves: boolean;
  readonly branches: Branch[];
  readonly range: Range;
}

function bundlesOf(
  part: Part,
  measured: Measured,
  drawn: readonly PageLink[],
  y: Float64Array,
  onSide: (block: number) => boolean,
) {
  const bars = part.bars.length;
  const bundles = new Map<string, Bundle>();
  for (const link of drawn) {
    const a = measured.ends.get(link.from);
    const b = measured.ends.get(link.to);
    if (!a || !b) continue;
    const leaves = a.block < bars;
    const [bar, tray] = leaves ? [a, b] : [b, a];
    if (tray.block < bars || !onSide(tray.block)) continue;
    const top = y[bar.block] ?? 0;
    const entries = measured.entries[bar.block] ?? { low: bar.y, high: bar.y };
    const key = `${bar.block} ${leaves}`;
    const bundle = bundles.get(key) ?? {
      bar: bar.block,
      leaves,
      branches: [],
      range: { low: top + entries.low, high: top + entries.high },
    };
    bundle.branches.push({ link, y: (y[tray.block] ?? 0) + tray.y });
    bundles.set(key, bundle);
  }
  return [...bundles.values()].sort((p, q) => p.bar - q.bar || Number(p.leaves) - Number(q.leaves));
}

/** Height that makes the most of a net level: that of a branch beside the bar, the middle one; else as near as it goes. */
function preferred({ branches, range }: Bundle): number {
  const heights = branches.map((branch) => branch.y).sort((a, b) => a - b);
  const beside = heights.filter((height) => height >= range.low && height <= range.high);
  const level = beside[Math.floor((beside.length - 1) / 2)];
  if (level !== undefined) return level;
  const mean = heights.reduce((sum, height) => sum + height, 0) / heights.length;
  return Math.max(range.low, Math.min(range.high, mean));
}

/**
 * The height in the range that is nearest to the preferred one and clear of all that is avoided, if one is; in any case so far
 * from the partner, or so near to an end of the range, that both have room.
 */
function clearOf(bundle: Bundle, avoid: readonly number[], partner: number | 'to come' | undefined): number {
  const wish = preferred(bundle);
  const { low, high } = bundle.range;
  const room = high - low;
  const apart = Math.min(ENDS_APART, room) - LEVEL;
  const leavesRoom = (height: number) => {
    if (partner === undefined) return true;
    if (partner === 'to come') return height - low >= apart || high - height >= apart;
    return Math.abs(height - partner) >= apart;
  };
  const isClear = (height: number) => avoid.every((y) => Math.abs(y - height) >= CLEAR);
  for (const foreign of [true, false]) {
    for (let off = 0; off <= room + STEP; off += STEP) {
      for (const height of [wish - off, wish + off]) {
        const inside = Math.max(low, Math.min(high, height));
        if (leavesRoom(inside) && (!foreign || isClear(inside))) return inside;
      }
    }
  }
  return wish;
}

/** The nets of a bar: where two of them are in each other's way, the one that has to leave its place less gives way. */
function entriesOf(
  bundles: readonly Bundle[],
  avoid: (own: Bundle) => readonly number[],
): Map<Bundle, number> {
  let best: { entries: Map<Bundle, number>; off: number } | undefined;
  for (const order of [bundles, [...bundles].reverse()]) {
    const entries = new Map<Bundle, number>();
    let partner: number | 'to come' | undefined = order.length > 1 ? 'to come' : undefined;
    let off = 0;
    for (const bundle of order) {
      const entry = clearOf(bundle, avoid(bundle), partner);
      entries.set(bundle, entry);
      off += Math.abs(entry - preferred(bundle));
      partner = entry;
    }
    if (!best || off < best.off) best = { entries, off };
  }
  return best?.entries ?? new Map();
}

/** The nets of a side, by bar. */
export function netsOf(
  part: Part,
  measured: Measured,
  drawn: readonly PageLink[],
  y: Float64Array,
  onSide: (block: number) => boolean,
): Net[] {
  const bundles = bundlesOf(part, measured, drawn, y, onSide);
  const avoid = (own: Bundle) =>
    bundles.flatMap((bundle) => (bundle === own ? [] : bundle.branches.map((branch) => branch.y)));
  const bars = new Set(bundles.map(({ bar }) => bar));
  return [...bars].flatMap((bar) => {
    const ofBar = bundles.filter((bundle) => bundle.bar === bar);
    const entries = entriesOf(ofBar, avoid);
    return ofBar.map((bundle) => ({
      bar: bundle.bar,
      leaves: bundle.leaves,
      branches: bundle.branches,
      entry: entries.get(bundle) ?? 0,
    }));
  });
}
