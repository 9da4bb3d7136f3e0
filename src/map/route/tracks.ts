/**
 * Which track each upright run takes: runs that overlap keep apart, those into one puzzle share one, and crossings are few.
 * Greedy, longest first, then each twice more with all the others in place.
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
const ROUNDS = 3;
const MOST_PLACES = 33;

/**
 * The places that a track may take and what each would cost. All tracks stand on one grid, so that none takes away two places
 * from others; where the range is too narrow for the grid, the only place is its middle.
 */
class Places {
  readonly #first: number;
  readonly #count: number;
  /** The middle of the range, in places from the first. */
  readonly #middle: number;
  /** Costs as differences between neighbouring places, so that adding to all within bounds takes two writes. */
  readonly #steps: Float64Array;

  constructor({ lo, hi }: Range) {
    const centre = (lo + hi) / 2;
    const reach = STEP * ((MOST_PLACES - 1) / 2);
    const first = Math.ceil(Math.max(lo, centre - reach) / STEP) * STEP;
    const last = Math.floor(Math.min(hi, centre + reach) / STEP) * STEP;
    this.#first = first <= last ? first : Math.round(centre);
    this.#count = first <= last ? (last - first) / STEP + 1 : 1;
    this.#middle = (centre - this.#first) / STEP;
    this.#steps = new Float64Array(this.#count + 1);
  }

  clear(): void {
    this.#steps.fill(0);
  }

  /** Adds a cost to every place strictly between two x. */
  add(cost: number, lo: number, hi: number): void {
    const from = Math.max(0, Math.floor((lo - this.#first) / STEP) + 1);
    const to = Math.min(this.#count, Math.ceil((hi - this.#first) / STEP));
    if (from >= to) return;
    this.#steps[from] = (this.#steps[from] ?? 0) + cost;
    this.#steps[to] = (this.#steps[to] ?? 0) - cost;
  }

  /** The cheapest place; of equal ones that nearest to the middle. */
  best(): number {
    let best = 0;
    let least = Number.POSITIVE_INFINITY;
    let cost = 0;
    for (let i = 0; i < this.#count; i++) {
      cost += this.#steps[i] ?? 0;
      const total = cost + FROM_MIDDLE * STEP * Math.abs(i - this.#middle);
      if (total < least - 1e-9) {
        least = total;
        best = i;
      }
    }
    return this.#first + best * STEP;
  }
}

function stubEnd(stub: Stub, xs: readonly (number | undefined)[]): number | undefined {
  return typeof stub.x === 'number' ? stub.x : xs[stub.x.track];
}

/** Adds a cost to the places from which a level piece that ends at `end` would reach into lo … hi. */
function addReach(places: Places, cost: number, end: number, lo: number, hi: number): void {
  if (end <= lo) places.add(cost, lo, Number.MAX_SAFE_INTEGER);
  else if (end >= hi) places.add(cost, Number.MIN_SAFE_INTEGER, hi);
  else places.add(cost, Number.MIN_SAFE_INTEGER, Number.MAX_SAFE_INTEGER);
}

/** Adds what each place of a track would cost beside another one that stands at `otherX`. */
function addTrackCosts(
  places: Places,
  track: Track,
  other: Track,
  otherX: number,
  xs: readonly (number | undefined)[],
): void {
  if (track.top < other.bottom + 4 && other.top < track.bottom + 4) {
    places.add(ON_TRACK, otherX - APART, otherX + APART);
  }
  for (const stub of other.stubs) {
    if (stub.y <= track.top || track.bottom <= stub.y) continue;
    const end = stubEnd(stub, xs);
    if (end !== undefined) places.add(CROSSING, Math.min(otherX, end), Math.max(otherX, end));
  }
  for (const stub of track.stubs) {
    const end = stubEnd(stub, xs);
    if (end === undefined) continue;
    if (other.top < stub.y && stub.y < other.bottom) addReach(places, CROSSING, end, otherX, otherX);
    for (const near of other.stubs) {
      if (near.line === stub.line || Math.abs(near.y - stub.y) >= LEVEL_APART) continue;
      const nearEnd = stubEnd(near, xs);
      if (nearEnd === undefined) continue;
      addReach(places, ON_LEVEL, end, Math.min(otherX, nearEnd), Math.max(otherX, nearEnd));
    }
  }
}

/** The same beside a level line without an upright run. */
function addLevelCosts(
  places: Places,
  track: Track,
  level: Level,
  xs: readonly (number | undefined)[],
): void {
  const { lo, hi } = level.x;
  if (track.top < level.y && level.y < track.bottom) places.add(CROSSING, lo, hi);
  for (const stub of track.stubs) {
    if (stub.line === level.line || Math.abs(stub.y - level.y) >= LEVEL_APART) continue;
    const end = stubEnd(stub, xs);
    if (end !== undefined) addReach(places, ON_LEVEL, end, lo, hi);
  }
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

/** Neighbours of each track that is to be placed: the only ones that it can cross or come too close to. */
function neighbours(tracks: readonly Track[], fixed: readonly (number | undefined)[]): number[][] {
  const extents = tracks.map((track) => extent(track, tracks));
  const near: number[][] = tracks.map(() => []);
  for (const [i, a] of tracks.entries()) {
    const ea = extents[i];
    if (!ea || fixed[i] !== undefined) continue;
    for (const [j, b] of tracks.entries()) {
      const eb = extents[j];
      if (!eb || i === j || b.top > a.bottom + 8 || a.top > b.bottom + 8) continue;
      if (ea.lo <= eb.hi + APART && eb.lo <= ea.hi + APART) near[i]?.push(j);
    }
  }
  return near;
}

/** An x for each track. Those that are fixed stay where they are, and the others keep clear of them. */
export function assignTracks(
  tracks: readonly Track[],
  levels: readonly Level[],
  fixed: readonly (number | undefined)[],
): number[] {
  const xs: (number | undefined)[] = tracks.map((_, i) => fixed[i]);
  const near = neighbours(tracks, fixed);
  const sorted = [...levels].sort((a, b) => a.y - b.y);
  const places = tracks.map(({ x }, i) => (fixed[i] === undefined ? new Places(x) : undefined));
  const place = (i: number) => {
    const track = tracks[i];
    const own = places[i];
    if (!track || !own) return;
    own.clear();
    for (const j of near[i] ?? []) {
      const other = tracks[j];
      const otherX = xs[j];
      if (other && otherX !== undefined) addTrackCosts(own, track, other, otherX, xs);
    }
    for (const level of sorted) {
      if (level.y >= track.bottom + LEVEL_APART) break;
      if (level.y > track.top - LEVEL_APART) addLevelCosts(own, track, level, xs);
    }
    xs[i] = own.best();
  };
  const longestFirst = tracks
    .map((track, i) => ({ i, length: track.bottom - track.top }))
    .filter(({ i }) => fixed[i] === undefined)
    .sort((a, b) => b.length - a.length || a.i - b.i)
    .map(({ i }) => i);
  for (let round = 0; round < ROUNDS; round++) for (const i of longestFirst) place(i);
  return xs.map((x) => x ?? 0);
}
