/** Boxes around marks, and what two of them have in common. In points; y grows downwards. */
import type { AreaMark, LineMark, Mark, SignMark, Spot, TextMark } from '../../../src/sheets/drawing.ts';

export interface Box {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/** Shares of the type size that letters with ascenders and descenders take above and below the base line. */
const ABOVE = 0.74;
const BELOW = 0.2;

export function textBox({ x, y, width, align, size }: TextMark): Box {
  const left = align === 'start' ? x : align === 'middle' ? x - width / 2 : x - width;
  return { left, top: y - ABOVE * size, right: left + width, bottom: y + BELOW * size };
}

export function boxAround(spots: readonly Spot[]): Box {
  const xs = spots.map(({ x }) => x);
  const ys = spots.map(({ y }) => y);
  return { left: Math.min(...xs), top: Math.min(...ys), right: Math.max(...xs), bottom: Math.max(...ys) };
}

export const areaBox = ({ corners }: AreaMark): Box => boxAround(corners);

export const signBox = ({ x, y, size }: SignMark): Box => ({
  left: x,
  top: y,
  right: x + size,
  bottom: y + size,
});

/** What the stroke covers at a point of a line: to both sides at its ends, which are cut square, and all around at its corners. */
function strokeAt({ points, width }: LineMark, spot: Spot, i: number): Spot[] {
  const half = width / 2;
  const neighbours = [points[i - 1], points[i + 1]].filter((other) => other !== undefined);
  const [only, second] = neighbours;
  const isFlat = second === undefined && only !== undefined && only.y === spot.y;
  const isUpright = second === undefined && only !== undefined && only.x === spot.x;
  const dx = isFlat ? 0 : half;
  const dy = isUpright ? 0 : half;
  return [
    { x: spot.x - dx, y: spot.y - dy },
    { x: spot.x + dx, y: spot.y + dy },
  ];
}

/** With its stroke. */
export function markBox(mark: Mark): Box {
  switch (mark.mark) {
    case 'text':
      return textBox(mark);
    case 'sign':
      return signBox(mark);
    case 'area':
      return grown(areaBox(mark), mark.stroke === undefined ? 0 : (mark.width ?? 1) / 2);
    case 'line':
      return boxAround(mark.points.flatMap((spot, i) => strokeAt(mark, spot, i)));
  }
}

export function grown(box: Box, by: number): Box {
  return { left: box.left - by, top: box.top - by, right: box.right + by, bottom: box.bottom + by };
}

/** They share more than `slack` in both directions. */
export function meet(a: Box, b: Box, slack = 0.1): boolean {
  return (
    Math.min(a.right, b.right) - Math.max(a.left, b.left) > slack &&
    Math.min(a.bottom, b.bottom) - Math.max(a.top, b.top) > slack
  );
}

export function holds(outer: Box, inner: Box, slack = 0.1): boolean {
  return (
    inner.left >= outer.left - slack &&
    inner.right <= outer.right + slack &&
    inner.top >= outer.top - slack &&
    inner.bottom <= outer.bottom + slack
  );
}

/** Distance of a spot from a box; 0 inside it. */
export function distanceTo({ x, y }: Spot, box: Box): number {
  const dx = Math.max(box.left - x, 0, x - box.right);
  const dy = Math.max(box.top - y, 0, y - box.bottom);
  return Math.hypot(dx, dy);
}

export interface Segment {
  readonly from: Spot;
  readonly to: Spot;
}

export function segmentsOf(points: readonly Spot[]): Segment[] {
  const segments: Segment[] = [];
  for (const [i, to] of points.entries()) {
    const from = points[i - 1];
    if (from && (from.x !== to.x || from.y !== to.y)) segments.push({ from, to });
  }
  return segments;
}

/** The share of the segment, from 0 to 1, that is inside the box, or undefined (Liang and Barsky 1984). */
export function inside({ from, to }: Segment, box: Box): readonly [number, number] | undefined {
  const dx = to.x - from.x;
  const dy = to.y - from.y;
  let enter = 0;
  let leave = 1;
  const sides = [
    [-dx, from.x - box.left],
    [dx, box.right - from.x],
    [-dy, from.y - box.top],
    [dy, box.bottom - from.y],
  ] as const;
  for (const [towards, room] of sides) {
    if (towards === 0) {
      if (room <= 0) return undefined;
      continue;
    }
    const at = room / towards;
    if (towards < 0) enter = Math.max(enter, at);
    else leave = Math.min(leave, at);
  }
  return enter < leave ? [enter, leave] : undefined;
}

export const lengthOf = ({ from, to }: Segment) => Math.hypot(to.x - from.x, to.y - from.y);

/** How far two nearly parallel segments run beside each other nearer than `near`. */
export function runTogether(a: Segment, b: Segment, near: number): number {
  const length = lengthOf(a);
  if (length === 0 || lengthOf(b) === 0) return 0;
  const ux = (a.to.x - a.from.x) / length;
  const uy = (a.to.y - a.from.y) / length;
  const along = ({ x, y }: Spot) => (x - a.from.x) * ux + (y - a.from.y) * uy;
  const aside = ({ x, y }: Spot) => Math.abs((x - a.from.x) * uy - (y - a.from.y) * ux);
  if (aside(b.from) >= near || aside(b.to) >= near) return 0;
  const first = along(b.from);
  const last = along(b.to);
  return Math.max(0, Math.min(length, Math.max(first, last)) - Math.max(0, Math.min(first, last)));
}

/** They cross within both, not at an end of either. */
export function cross(a: Segment, b: Segment): boolean {
  const side = (p: Spot, q: Spot, r: Spot) => (q.x - p.x) * (r.y - p.y) - (q.y - p.y) * (r.x - p.x);
  const slack = 1e-6;
  return (
    side(a.from, a.to, b.from) * side(a.from, a.to, b.to) < -slack &&
    side(b.from, b.to, a.from) * side(b.from, b.to, a.to) < -slack
  );
}
