/**
 * Which way a link goes, before it is known on which track: sides, and the range in which each corner may lie.
 * The ways tried: straight down between two puzzles, one upright run, or two joined by a level run in a gap between what stands on the mat.
 */
import type { Rect, Side } from '../layout.ts';
import type { End } from './ends.ts';

export interface Range {
  readonly lo: number;
  readonly hi: number;
}

export type Way =
  /** From the lower edge of the upper one to the upper edge of the lower one, at x. */
  | { readonly way: 'stacked'; readonly x: Range; readonly down: boolean }
  /** Level, upright at x, level. */
  | { readonly way: 'one'; readonly fromSide: Side; readonly toSide: Side; readonly x: Range }
  /** Level, upright at x1, level at y, upright at x2, level. */
  | {
      readonly way: 'two';
      readonly fromSide: Side;
      readonly toSide: Side;
      readonly x1: Range;
      readonly y: Range;
      readonly x2: Range;
    };

/** Straight ahead out of a thing before the first corner, and into one after the last, where the arrowhead lies. */
const OUT = 12;
const IN = 18;
/** Between a line and what it passes. */
const CLEAR = 8;
/** How far outside both ends a line may run that leaves and arrives on the same side. */
const OUTSIDE = 96;
/** How far a level run in a gap may be moved. */
const LEVEL_REACH = 60;
/** In pixels of length. */
const BEND = 24;
const THROUGH = 900;

export const edgeX = (rect: Rect, side: Side) => (side === 'left' ? rect.x : rect.x + rect.width);

function crossesLevel(rect: Rect, y: number, a: number, b: number): boolean {
  return (
    rect.y < y && y < rect.y + rect.height && rect.x < Math.max(a, b) && Math.min(a, b) < rect.x + rect.width
  );
}

function crossesUpright(rect: Rect, x: number, a: number, b: number): boolean {
  return (
    rect.x < x && x < rect.x + rect.width && rect.y < Math.max(a, b) && Math.min(a, b) < rect.y + rect.height
  );
}

/** How far a level line at y can go from x, to the given side, before it meets something. */
function openLevel(around: readonly Rect[], y: number, x: number, side: Side): Range {
  let lo = Number.NEGATIVE_INFINITY;
  let hi = Number.POSITIVE_INFINITY;
  for (const rect of around) {
    if (y <= rect.y || y >= rect.y + rect.height) continue;
    if (side === 'right' && rect.x >= x - 1) hi = Math.min(hi, rect.x - CLEAR);
    if (side === 'left' && rect.x + rect.width <= x + 1) lo = Math.max(lo, rect.x + rect.width + CLEAR);
  }
  return side === 'right' ? { lo: x, hi } : { lo, hi: x };
}

const meet = (a: Range, b: Range): Range => ({ lo: Math.max(a.lo, b.lo), hi: Math.min(a.hi, b.hi) });
const isOpen = ({ lo, hi }: Range) => lo <= hi;

/** Where an upright line from y a to y b can stand within the range, from left to right. */
function freeUpright(around: readonly Rect[], range: Range, a: number, b: number): Range[] {
  const top = Math.min(a, b) - CLEAR / 2;
  const bottom = Math.max(a, b) + CLEAR / 2;
  const parts: Range[] = [];
  let { lo } = range;
  for (const rect of around) {
    if (rect.x - CLEAR >= range.hi) break;
    if (rect.y >= bottom || top >= rect.y + rect.height || rect.x + rect.width + CLEAR <= lo) continue;
    if (rect.x - CLEAR > lo) parts.push({ lo, hi: rect.x - CLEAR });
    lo = rect.x + rect.width + CLEAR;
  }
  if (lo <= range.hi) parts.push({ lo, hi: range.hi });
  return parts;
}

/** How far up and down a level line from x a to x b can be moved from y. */
function freeLevel(around: readonly Rect[], y: number, a: number, b: number): Range {
  let lo = y - LEVEL_REACH;
  let hi = y + LEVEL_REACH;
  for (const rect of around) {
    if (rect.x >= b) break;
    if (rect.x + rect.width <= a) continue;
    if (rect.y + rect.height <= y) lo = Math.max(lo, Math.min(y, rect.y + rect.height + CLEAR));
    else if (rect.y >= y) hi = Math.min(hi, Math.max(y, rect.y - CLEAR));
  }
  return { lo, hi };
}

function countThroughLevel(around: readonly Rect[], y: number, a: number, b: number): number {
  let count = 0;
  for (const rect of around) if (crossesLevel(rect, y, a, b)) count++;
  return count;
}

/** The x that the upright run of a one-run way may have, whatever stands there. */
function oneRange(from: End, to: End, fromSide: Side, toSide: Side): Range {
  const a = edgeX(from.around, fromSide);
  const b = edgeX(to.around, toSide);
  if (fromSide === 'right' && toSide === 'left') return { lo: a + OUT, hi: b - IN };
  if (fromSide === 'left' && toSide === 'right') return { lo: b + IN, hi: a - OUT };
  if (fromSide === 'right') {
    const lo = Math.max(a + OUT, b + IN);
    return { lo, hi: lo + OUTSIDE };
  }
  const hi = Math.min(a - OUT, b - IN);
  return { lo: hi - OUTSIDE, hi };
}

/** What lines should not run through, made ready. */
export interface Mat {
  /** Sorted by x. */
  readonly around: readonly Rect[];
  /** Levels just above and below each, sorted. */
  readonly heights: readonly number[];
}

export function matOf(obstacles: readonly Rect[]): Mat {
  const heights = new Set(obstacles.flatMap((rect) => [rect.y - CLEAR, rect.y + rect.height + CLEAR]));
  return {
    around: [...obstacles].sort((a, b) => a.x - b.x || a.y - b.y),
    heights: [...heights].sort((a, b) => a - b),
  };
}

interface Candidate {
  readonly way: Way;
  readonly cost: number;
}

const nearest = ({ lo, hi }: Range, x: number) => Math.min(hi, Math.max(lo, x));
const middle = ({ lo, hi }: Range) => (lo + hi) / 2;

function oneRun(
  from: End,
  to: End,
  fromSide: Side,
  toSide: Side,
  around: readonly Rect[],
): Candidate | undefined {
  const range = oneRange(from, to, fromSide, toSide);
  if (!isOpen(range)) return undefined;
  const a = edgeX(from.around, fromSide);
  const b = edgeX(to.around, toSide);
  const levels = meet(openLevel(around, from.y, a, fromSide), openLevel(around, to.y, b, toSide));
  const parts = freeUpright(around, meet(range, levels), from.y, to.y);
  const lengthAt = (x: number) =>
    Math.abs(x - edgeX(from.rect, fromSide)) + Math.abs(from.y - to.y) + Math.abs(x - edgeX(to.rect, toSide));
  let best: Candidate | undefined;
  for (const x of parts) {
    const bends = from.y === to.y && fromSide !== toSide ? 0 : 2;
    // Of several gaps that are equally long ways round, a wide one.
    const cost = lengthAt(nearest(x, middle(range))) + BEND * bends - Math.min(40, x.hi - x.lo) / 4;
    if (!best || cost < best.cost) best = { way: { way: 'one', fromSide, toSide, x }, cost };
  }
  if (best) return best;
  const x = middle(range);
  const through = around.filter(
    (rect) =>
      crossesLevel(rect, from.y, a, x) ||
      crossesUpright(rect, x, from.y, to.y) ||
      crossesLevel(rect, to.y, x, b),
  ).length;
  return {
    way: { way: 'one', fromSide, toSide, x: range },
    cost: lengthAt(x) + BEND * 2 + THROUGH * Math.max(1, through),
  };
}

/** Gaps tried for the level run in the middle that an upright run reaches on both sides. */
const MOST_GAPS = 20;

/** Heights for a level run: those between the two ends first, then on both sides of them, the nearest first. */
function* gapsBetween(from: End, to: End, heights: readonly number[]): Generator<number> {
  const top = Math.min(from.y, to.y);
  const bottom = Math.max(from.y, to.y);
  let below = 0;
  let end = heights.length;
  while (below < end) {
    const half = (below + end) >> 1;
    if ((heights[half] ?? 0) < top) below = half + 1;
    else end = half;
  }
  let above = below - 1;
  for (; (heights[below] ?? Number.POSITIVE_INFINITY) <= bottom; below++) yield heights[below] ?? 0;
  for (;;) {
    const up = heights[above];
    const down = heights[below];
    if (up !== undefined && (down === undefined || top - up <= down - bottom)) {
      above--;
      yield up;
    } else if (down !== undefined) {
      below++;
      yield down;
    } else return;
  }
}

/** The best way of two runs that costs less than `most`. */
function twoRuns(
  from: End,
  to: End,
  fromSide: Side,
  toSide: Side,
  { around, heights }: Mat,
  most: number,
): Candidate | undefined {
  const a = edgeX(from.around, fromSide);
  const b = edgeX(to.around, toSide);
  const beside = (x: number, side: Side, first: number): Range =>
    side === 'right'
      ? { lo: x + first, hi: x + first + OUTSIDE }
      : { lo: x - first - OUTSIDE, hi: x - first };
  const range1 = meet(beside(a, fromSide, OUT), openLevel(around, from.y, a, fromSide));
  const range2 = meet(beside(b, toSide, IN), openLevel(around, to.y, b, toSide));
  if (!isOpen(range1) || !isOpen(range2)) return undefined;
  const least = BEND * 4 + Math.max(0, Math.abs(range1.lo - range2.lo) - 2 * OUTSIDE);
  let tried = 0;
  let best: Candidate | undefined;
  for (const y of gapsBetween(from, to, heights)) {
    const detour = Math.abs(y - from.y) + Math.abs(y - to.y);
    if (least + detour >= (best?.cost ?? most) || tried >= MOST_GAPS) break;
    const upright = (range: Range, end: number, side: Side) => {
      const parts = freeUpright(around, range, end, y);
      return side === 'right' ? parts[0] : parts.at(-1);
    };
    const x1 = upright(range1, from.y, fromSide);
    const x2 = upright(range2, to.y, toSide);
    if (!x1 || !x2) continue;
    tried++;
    const through = countThroughLevel(around, y, middle(x1), middle(x2));
    const cost =
      Math.abs(middle(x1) - edgeX(from.rect, fromSide)) +
      Math.abs(from.y - y) +
      Math.abs(middle(x1) - middle(x2)) +
      Math.abs(y - to.y) +
      Math.abs(middle(x2) - edgeX(to.rect, toSide)) +
      BEND * 4 +
      THROUGH * through;
    if (cost < (best?.cost ?? most)) {
      best = {
        way: {
          way: 'two',
          fromSide,
          toSide,
          x1,
          y: freeLevel(around, y, Math.min(x1.lo, x2.lo), Math.max(x1.hi, x2.hi)),
          x2,
        },
        cost,
      };
    }
  }
  return best;
}

/** Two puzzles one below the other with nothing between them. */
function stacked(from: End, to: End, around: readonly Rect[]): Way | undefined {
  if (from.kind !== 'puzzle' || to.kind !== 'puzzle') return undefined;
  const inset = 20;
  const x = {
    lo: Math.max(from.rect.x, to.rect.x) + inset,
    hi: Math.min(from.rect.x + from.rect.width, to.rect.x + to.rect.width) - inset,
  };
  if (!isOpen(x)) return undefined;
  const down = from.rect.y < to.rect.y;
  const [upper, lower] = down ? [from, to] : [to, from];
  const top = upper.rect.y + upper.rect.height;
  const bottom = lower.rect.y;
  if (bottom - top < IN) return undefined;
  const between = around.some(
    (rect) => rect.x < x.hi && x.lo < rect.x + rect.width && rect.y < bottom && top < rect.y + rect.height,
  );
  return between ? undefined : { way: 'stacked', x, down };
}

/** The best way between two ends, among the sides given. */
export function wayBetween(
  from: End,
  to: End,
  mat: Mat,
  fromSides: readonly Side[] = from.sides,
  toSides: readonly Side[] = to.sides,
): Way {
  const { around } = mat;
  const down = stacked(from, to, around);
  if (down) return down;
  let best: Candidate | undefined;
  const consider = (candidate: Candidate | undefined) => {
    if (candidate && (!best || candidate.cost < best.cost)) best = candidate;
  };
  for (const fromSide of fromSides) {
    for (const toSide of toSides) consider(oneRun(from, to, fromSide, toSide, around));
  }
  if (!best || best.cost > THROUGH) {
    for (const fromSide of fromSides) {
      for (const toSide of toSides) {
        const most = best?.cost ?? Number.POSITIVE_INFINITY;
        consider(twoRuns(from, to, fromSide, toSide, mat, most));
      }
    }
  }
  return best?.way ?? facing(from, to);
}

/** When the two lie over each other: out on the right of both. */
function facing(from: End, to: End): Way {
  const fromSide = from.sides.at(-1) ?? 'right';
  const toSide = to.sides.at(-1) ?? 'right';
  const a = edgeX(from.around, fromSide);
  const b = edgeX(to.around, toSide);
  return { way: 'one', fromSide, toSide, x: { lo: Math.min(a, b), hi: Math.max(a, b) } };
}
