/**
 * Tracks in a channel: which net runs up and down how far from the bars, so that nothing lies on anything else and little
 * crosses. Which of two nets that meet in height is nearer the bars decides how often they cross, so it is a linear ordering:
 * each net is put in where it costs least, then moved as long as that helps.
 */
import { CLEAR, LEVEL, type Net } from './nets.ts';

/** Nets whose heights are closer than this keep to tracks of their own. */
const PAD = 5;
/** A line that would lie on another costs as much as so many crossings. */
const CLASH = 1000;
const SWEEPS = 12;

export interface Tracked {
  /** For each net its track, counted from the bars; undefined for one that is level all the way. */
  readonly tracks: readonly (number | undefined)[];
  /** How many tracks there are. */
  readonly depth: number;
  readonly crossings: number;
  /** How often each branch is crossed, or lies too close to another line, by net. */
  readonly trouble: readonly (readonly number[])[];
  readonly clashes: number;
}

interface Span {
  readonly net: Net;
  readonly index: number;
  readonly low: number;
  readonly high: number;
}

const spanOf = (net: Net, index: number): Span => {
  const heights = [net.entry, ...net.branches.map((branch) => branch.y)];
  return { net, index, low: Math.min(...heights), high: Math.max(...heights) };
};

const level = ({ low, high }: Span) => high - low < LEVEL;
const meet = (a: Span, b: Span) => a.low < b.high + PAD && b.low < a.high + PAD;
const within = (y: number, { low, high }: Span) => y > low + LEVEL && y < high - LEVEL;

/** Crossings of two nets, and lines that lie on each other, when the first is farther from the bars. */
function costOf(outer: Span, inner: Span): number {
  let cost = within(outer.net.entry, inner) ? 1 : 0;
  for (const { y } of inner.net.branches) {
    if (within(y, outer)) cost++;
    if (Math.abs(y - outer.net.entry) < CLEAR) cost += CLASH;
  }
  return cost;
}

/** From the outermost to the innermost. */
function ordered(spans: readonly Span[]): Span[] {
  const costs = spans.map((a) => spans.map((b) => (a === b || !meet(a, b) ? 0 : costOf(a, b))));
  const place = new Map(spans.map((span, i) => [span, i]));
  const cost = (outer: Span, inner: Span) => costs[place.get(outer) ?? 0]?.[place.get(inner) ?? 0] ?? 0;
  const order: Span[] = [];
  /** Where the span costs least, and by how much less than at `from`. */
  const best = (span: Span, rest: readonly Span[], from: number) => {
    let sum = 0;
    for (const other of rest) sum += cost(span, other);
    let [at, least, was] = [0, sum, sum];
    for (const [i, other] of rest.entries()) {
      sum += cost(other, span) - cost(span, other);
      if (sum < least) [at, least] = [i + 1, sum];
      if (i + 1 === from) was = sum;
    }
    return { at, gain: was - least };
  };
  for (const span of spans) order.splice(best(span, order, 0).at, 0, span);
  for (let sweep = 0; sweep < SWEEPS; sweep++) {
    let gained = false;
    for (const span of spans) {
      const from = order.indexOf(span);
      order.splice(from, 1);
      const { at, gain } = best(span, order, from);
      order.splice(gain > 0 ? at : from, 0, span);
      if (gain > 0) gained = true;
    }
    if (!gained) break;
  }
  return order;
}

export function tracksOf(nets: readonly Net[]): Tracked {
  const all = nets.map(spanOf);
  const order = ordered(all.filter((span) => !level(span)));
  const tracks: (number | undefined)[] = nets.map(() => undefined);
  let depth = 0;
  for (let i = order.length - 1; i >= 0; i--) {
    const span = order[i];
    if (!span) continue;
    let track = 0;
    for (const inner of order.slice(i + 1)) {
      if (meet(span, inner)) track = Math.max(track, (tracks[inner.index] ?? 0) + 1);
    }
    tracks[span.index] = track;
    depth = Math.max(depth, track + 1);
  }
  return { tracks, depth, ...troubleOf(all, order, nets) };
}

/** Counted on the result, level lines included. */
function troubleOf(
  all: readonly Span[],
  order: readonly Span[],
  nets: readonly Net[],
): Pick<Tracked, 'crossings' | 'trouble' | 'clashes'> {
  const trouble = nets.map((net) => net.branches.map(() => 0));
  const blame = (net: number, branch: number, by: number) => {
    const counts = trouble[net];
    if (counts) counts[branch] = (counts[branch] ?? 0) + by;
  };
  /** A line at height y meets the track of a net: whose branches run there? */
  const blameTrack = (span: Span, y: number, by: number) => {
    for (const [i, branch] of span.net.branches.entries()) {
      const [low, high] = [Math.min(branch.y, span.net.entry), Math.max(branch.y, span.net.entry)];
      if (y > low - CLEAR && y < high + CLEAR) blame(span.index, i, by);
    }
  };
  let crossings = 0;
  let clashes = 0;
  const levels = all.filter(level);
  for (const [i, outer] of order.entries()) {
    for (const inner of order.slice(i + 1)) {
      if (!meet(outer, inner)) continue;
      if (within(outer.net.entry, inner)) {
        crossings++;
        blameTrack(inner, outer.net.entry, 1);
        for (const b of outer.net.branches.keys()) blame(outer.index, b, 1);
      }
      for (const [b, { y }] of inner.net.branches.entries()) {
        if (within(y, outer)) {
          crossings++;
          blame(inner.index, b, 1);
          blameTrack(outer, y, 1);
        }
        if (Math.abs(y - outer.net.entry) >= CLEAR) continue;
        clashes++;
        blame(inner.index, b, CLASH);
        for (const other of outer.net.branches.keys()) blame(outer.index, other, CLASH);
      }
    }
    for (const flat of levels) {
      if (!within(flat.net.entry, outer)) continue;
      crossings++;
      blame(flat.index, 0, 1);
      blameTrack(outer, flat.net.entry, 1);
    }
  }
  return { crossings, trouble, clashes };
}
