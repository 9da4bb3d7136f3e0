/** What the call before found out of each line, and for which lines it still holds. */
import type { LinkId } from '../../game/model.ts';
import type { Rect, Route } from '../layout.ts';
import type { End, LinkEnds } from './ends.ts';
import type { Way } from './path.ts';
import type { Planned, Ports } from './ports.ts';

export interface Chosen extends Planned {
  /** The way that it would take from the middle of one thing to the middle of the other. */
  readonly first: Way;
  readonly ports: Ports;
}

export interface Known {
  readonly link: Chosen;
  /** Height of the level run in the middle of a long way. */
  readonly middleY: number;
  /** Where its upright runs stand, first to last. */
  readonly xs: readonly number[];
  readonly route: Route;
}

export interface Memory {
  /** What lines should not run through. */
  readonly around: readonly Rect[];
  readonly links: ReadonlyMap<LinkId, Known>;
}

/** Kept for as long as somebody keeps the routes themselves. */
const memories = new WeakMap<ReadonlyMap<LinkId, Route>, Memory>();

export function memoryOf(routes: ReadonlyMap<LinkId, Route>): Memory | undefined {
  return memories.get(routes);
}

export function remember(routes: ReadonlyMap<LinkId, Route>, memory: Memory): void {
  memories.set(routes, memory);
}

/** What changes within this distance of a line may open or close a way for it. */
const NEAR = 60;

const sameRect = (a: Rect, b: Rect) =>
  a.x === b.x && a.y === b.y && a.width === b.width && a.height === b.height;

const sameEnd = (a: End, b: End) =>
  a.shown === b.shown &&
  a.kind === b.kind &&
  a.y === b.y &&
  a.sides.length === b.sides.length &&
  a.sides[0] === b.sides[0] &&
  sameRect(a.rect, b.rect) &&
  sameRect(a.around, b.around);

/** Rects of either list that the other does not have. */
function changes(before: readonly Rect[], after: readonly Rect[]): readonly Rect[] {
  const keyOf = ({ x, y, width, height }: Rect) => `${x} ${y} ${width} ${height}`;
  const old = new Map(before.map((rect) => [keyOf(rect), rect]));
  const changed = after.filter((rect) => !old.delete(keyOf(rect)));
  return [...changed, ...old.values()];
}

/** Whether any of its runs passes the rect. */
function isNear({ x, y, width, height }: Rect, route: Route): boolean {
  for (let i = 1; i < route.length; i++) {
    const a = route[i - 1];
    const b = route[i];
    if (!a || !b) continue;
    if (Math.min(a.x, b.x) >= x + width + NEAR || x - NEAR >= Math.max(a.x, b.x)) continue;
    if (Math.min(a.y, b.y) < y + height + NEAR && y - NEAR < Math.max(a.y, b.y)) return true;
  }
  return false;
}

const NONE: ReadonlyMap<LinkId, Known> = new Map();

/** What is known of each line whose ends are where they were and near which nothing changed. Of none, when that is not even half of them. */
export function stillKnown(
  previous: ReadonlyMap<LinkId, Route> | undefined,
  ends: readonly LinkEnds[],
  around: readonly Rect[],
): ReadonlyMap<LinkId, Known> {
  const memory = previous && memories.get(previous);
  if (!memory) return NONE;
  const changed = changes(memory.around, around);
  if (changed.length > around.length / 2) return NONE;
  const holds = new Map<LinkId, Known>();
  for (const { id, from, to } of ends) {
    const known = memory.links.get(id);
    if (!known || !sameEnd(known.link.from, from) || !sameEnd(known.link.to, to)) continue;
    if (!changed.some((rect) => isNear(rect, known.route))) holds.set(id, known);
  }
  return holds.size < ends.length / 2 ? NONE : holds;
}
