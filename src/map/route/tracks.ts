/**
 * Which track each upright run takes: runs that overlap keep apart, those into one puzzle share one, and crossings are few.
 * Greedy, longest first, then each once more with all others in place.
 */
import type { Range } from './path.ts';

/** A level piece that ends at an upright run: from the run to x, at height y. */
export interface Stub {
  readonly y: number;
  /** Its other end, or for one that ends at another run the track of that run. */
  readonly x: number | { readonly track: number };
  /** Pieces that leave one thing as one line share this. */
  readonly line: string;
}

export interface Track {
  /** Where it may stand, lowest and highest x. */
  readonly x: Range;
  readonly top: number;
  readonly bottom: number;
  readonly stubs: readonly Stub[];
}

/** A level piece without an upright run. */
export interface Level {
  readonly y: number;
  readonly x: Range;
  readonly line: string;
}

const APART = 7;
const STEP = 7;
const CROSSING = 12;
const ON_TRACK = 2_000;
const ON_LEVEL = 260;
const LEVEL_APART = 4;
const FROM_MIDDLE = 0.05;
const MOST_PLACES = 41;

/** Places on the track grid within the range, from the middle outwards. */
function places({ lo, hi }: Range): number[] {
  const centre = Math.round((lo + hi) / 2);
  const found = [centre];
  for (let i = 1; found.length < MOST_PLACES; i++) {
    const left = centre - i * STEP;
    const right = centre + i * STEP;
    if (left < lo && right > hi) break;
    if (left >= lo) found.push(left);
    if (right <= hi) found.push(right);
  }
  return found;
}

function stubRange(stub: Stub, x: number, xs: readonly (number | undefined)[]): Range | undefined {
  const end = typeof stub.x === 'number' ? stub.x : xs[stub.x.track];
  return end === undefined ? undefined : { lo: Math.min(x, end), hi: Math.max(x, end) };
}

/** What it costs to have track `a` at x beside track `b`, which has its place. */
function clash(a: Track, x: number, b: Track, bx: number, xs: readonly (number | undefined)[]): number {
  let cost = 0;
  const together = a.top < b.bottom + 4 && b.top < a.bottom + 4;
  if (together && Math.abs(x - bx) < APART) cost += ON_TRACK;
  for (const stub of b.stubs) {
    const range = stubRange(stub, bx, xs);
    if (range && range.lo < x && x < range.hi && a.top < stub.y && stub.y < a.bottom) cost += CROSSING;
  }
  for (const stub of a.stubs) {
    const range = stubRange(stub, x, xs);
    if (!range) continue;
    if (range.lo < bx && bx < range.hi && b.top < stub.y && stub.y < b.bottom) cost += CROSSING;
    for (const other of b.stubs) {
      if (other.line === stub.line || Math.abs(other.y - stub.y) >= LEVEL_APART) continue;
      const otherRange = stubRange(other, bx, xs);
      if (otherRange && range.lo < otherRange.hi && otherRange.lo < range.hi) cost += ON_LEVEL;
    }
  }
  return cost;
}

function clashLevel(a: Track, x: number, level: Level, xs: readonly (number | undefined)[]): number {
  let cost = 0;
  if (level.x.lo < x && x < level.x.hi && a.top < level.y && level.y < a.bottom) cost += CROSSING;
  for (const stub of a.stubs) {
    if (stub.line === level.line || Math.abs(stub.y - level.y) >= LEVEL_APART) continue;
    const range = stubRange(stub, x, xs);
    if (range && range.lo < level.x.hi && level.x.lo < range.hi) cost += ON_LEVEL;
  }
  return cost;
}

/** All that a track may ever touch: its range and the ends of its level pieces. */
function extent(track: Track, tracks: readonly Track[]): Range {
  let { lo, hi } = track.x;
  for (const { x } of track.stubs) {
    const other = typeof x === 'number' ? { lo: x, hi: x } : tracks[x.track]?.x;
    if (!other) continue;
    lo = Math.min(lo, other.lo);
    hi = Math.max(hi, other.hi);
  }
  return { lo, hi };
}

/** Neighbours of each track: the only ones that it can cross or come too close to. */
function neighbours(tracks: readonly Track[]): number[][] {
  const extents = tracks.map((track) => extent(track, tracks));
  const byTop = tracks.map((_, i) => i).sort((a, b) => (tracks[a]?.top ?? 0) - (tracks[b]?.top ?? 0));
  const near: number[][] = tracks.map(() => []);
  for (const [place, i] of byTop.entries()) {
    const a = tracks[i];
    const ea = extents[i];
    if (!a || !ea) continue;
    for (let next = place + 1; next < byTop.length; next++) {
      const j = byTop[next] ?? 0;
      const b = tracks[j];
      const eb = extents[j];
      if (!b || !eb || b.top > a.bottom + 8) break;
      if (ea.lo > eb.hi + APART || eb.lo > ea.hi + APART) continue;
      near[i]?.push(j);
      near[j]?.push(i);
    }
  }
  return near;
}

/** An x for each track. */
export function assignTracks(tracks: readonly Track[], levels: readonly Level[]): number[] {
  const xs: (number | undefined)[] = tracks.map(() => undefined);
  const near = neighbours(tracks);
  const options = tracks.map(({ x }) => places(x));
  const costAt = (i: number, track: Track, x: number) => {
    let cost = FROM_MIDDLE * Math.abs(x - (track.x.lo + track.x.hi) / 2);
    for (const j of near[i] ?? []) {
      const other = tracks[j];
      const otherX = xs[j];
      if (other && otherX !== undefined) cost += clash(track, x, other, otherX, xs);
    }
    for (const level of levels) cost += clashLevel(track, x, level, xs);
    return cost;
  };
  const place = (i: number) => {
    const track = tracks[i];
    if (!track) return;
    let best: { x: number; cost: number } | undefined;
    for (const x of options[i] ?? []) {
      const cost = costAt(i, track, x);
      if (!best || cost < best.cost) best = { x, cost };
    }
    xs[i] = best?.x;
  };
  const longestFirst = tracks
    .map((track, i) => ({ i, length: track.bottom - track.top }))
    .sort((a, b) => b.length - a.length || a.i - b.i)
    .map(({ i }) => i);
  for (let round = 0; round < 3; round++) for (const i of longestFirst) place(i);
  return xs.map((x) => x ?? 0);
}
