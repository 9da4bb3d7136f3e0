/** Draws arrows on a canvas: lines at right angles with round corners, a light casing, an open arrowhead. */
import type { Rect, Route } from '../../../src/map/layout.ts';

const CORNER = 7;
const HEAD = 8;
const HEAD_SIDE = 4.5;
const CASING = 3;

export type Weight = 'plain' | 'dark' | 'chain' | 'picked' | 'pale' | 'stops';

export interface Arrow {
  readonly route: Route;
  readonly weight: Weight;
  /** Carries a cross: what it starts from lies where it cannot be had. */
  readonly crossed?: boolean;
}

/** The colours of the page, read from its style sheet, so that there is one place for them. */
export interface Inks {
  readonly mat: string;
  readonly plain: string;
  readonly dark: string;
  readonly chain: string;
  readonly pale: string;
  readonly picked: string;
  readonly stops: string;
  readonly sheet: string;
}

export function inksOf(element: Element): Inks {
  const style = getComputedStyle(element);
  const read = (name: string) => style.getPropertyValue(name).trim();
  return {
    mat: read('--mat'),
    plain: read('--ink-2'),
    dark: read('--ink'),
    chain: read('--ink'),
    pale: read('--ink-3'),
    picked: read('--act'),
    stops: read('--stop'),
    sheet: read('--sheet'),
  };
}

const WIDTH: Readonly<Record<Weight, number>> = {
  plain: 1.5,
  dark: 1.9,
  chain: 4.5,
  picked: 2.5,
  pale: 1.2,
  stops: 3,
};
const ORDER: readonly Weight[] = ['pale', 'plain', 'dark', 'chain', 'stops', 'picked'];

interface Shape {
  readonly line: Path2D;
  readonly head: Path2D;
}
const shapes = new WeakMap<Route, Shape>();

function shapeOf(route: Route): Shape {
  const known = shapes.get(route);
  if (known) return known;
  const shape = { line: new Path2D(), head: new Path2D() };
  trace(shape.line, route);
  arrowhead(shape.head, route);
  shapes.set(route, shape);
  return shape;
}

function trace(path: Path2D, route: Route): void {
  const [first] = route;
  const last = route.at(-1);
  if (!first || !last) return;
  path.moveTo(first.x, first.y);
  for (let i = 1; i < route.length - 1; i++) {
    const [a, b, c] = [route[i - 1], route[i], route[i + 1]];
    if (!a || !b || !c) continue;
    const room = Math.min(Math.hypot(b.x - a.x, b.y - a.y), Math.hypot(c.x - b.x, c.y - b.y)) / 2;
    path.arcTo(b.x, b.y, c.x, c.y, Math.min(CORNER, room));
  }
  path.lineTo(last.x, last.y);
}

function arrowhead(path: Path2D, route: Route): void {
  const tip = route.at(-1);
  if (!tip) return;
  const from = route.findLast((corner) => corner.x !== tip.x || corner.y !== tip.y);
  if (!from) return;
  const length = Math.hypot(tip.x - from.x, tip.y - from.y);
  const ux = (tip.x - from.x) / length;
  const uy = (tip.y - from.y) / length;
  const x = tip.x - ux;
  const y = tip.y - uy;
  path.moveTo(x - ux * HEAD - uy * HEAD_SIDE, y - uy * HEAD + ux * HEAD_SIDE);
  path.lineTo(x, y);
  path.lineTo(x - ux * HEAD + uy * HEAD_SIDE, y - uy * HEAD - ux * HEAD_SIDE);
}

export interface Window {
  /** Of the canvas, on the mat. */
  readonly x: number;
  readonly y: number;
  /** Canvas pixels for one pixel of the map. */
  readonly scale: number;
}

/** Draws all arrows, the heavier above the lighter, and clears what stands in `text`, so that a line passes under it. */
export function paint(
  context: CanvasRenderingContext2D,
  window: Window,
  arrows: readonly Arrow[],
  inks: Inks,
  text: Iterable<Rect>,
  casings: boolean,
): void {
  const { x, y, scale } = window;
  context.setTransform(1, 0, 0, 1, 0, 0);
  context.clearRect(0, 0, context.canvas.width, context.canvas.height);
  context.setTransform(scale, 0, 0, scale, -x * scale, -y * scale);
  context.lineJoin = 'round';
  const thin = Math.max(1, 0.7 / scale);
  const sorted = arrows.toSorted((a, b) => ORDER.indexOf(a.weight) - ORDER.indexOf(b.weight));
  for (const { route, weight, crossed } of sorted) {
    const { line, head } = shapeOf(route);
    const width = WIDTH[weight] * thin;
    if (casings) {
      context.lineCap = 'butt';
      context.strokeStyle = inks.mat;
      context.lineWidth = width + CASING;
      context.stroke(line);
    }
    context.lineCap = 'round';
    context.strokeStyle = inks[weight];
    context.lineWidth = width;
    context.stroke(line);
    context.stroke(head);
    if (crossed) crossOut(context, route, inks);
  }
  for (const rect of text) context.clearRect(rect.x, rect.y, rect.width, rect.height);
}

/** A cross on the longest stretch of the line. */
function crossOut(context: CanvasRenderingContext2D, route: Route, inks: Inks): void {
  const at = longestMiddle(route);
  if (!at) return;
  context.beginPath();
  context.arc(at.x, at.y, 11, 0, 2 * Math.PI);
  context.fillStyle = inks.stops;
  context.fill();
  context.beginPath();
  for (const side of [-1, 1]) {
    context.moveTo(at.x - 4, at.y - 4 * side);
    context.lineTo(at.x + 4, at.y + 4 * side);
  }
  context.strokeStyle = inks.sheet;
  context.lineWidth = 2.2;
  context.stroke();
}

export function longestMiddle(route: Route): { readonly x: number; readonly y: number } | undefined {
  let best: { x: number; y: number } | undefined;
  let longest = -1;
  for (let i = 1; i < route.length; i++) {
    const a = route[i - 1];
    const b = route[i];
    if (!a || !b) continue;
    const length = Math.hypot(b.x - a.x, b.y - a.y);
    if (length > longest) {
      longest = length;
      best = { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 };
    }
  }
  return best;
}
