/** The whole map from the document's positions. */
import { writtenFor } from '../fasteners/written-for.ts';
import { type Game, type GameNode, isHolder, type NodeId, type Point, parentOf } from '../game/model.ts';
import { captionOf, handedOver } from './caption.ts';
import { contentsOf, type GameContents } from './contents.ts';
import { fieldsOf } from './fields.ts';
import type { Caption, MapLayout, MapView, Rect, Side, Slot } from './layout.ts';
import { same } from './same.ts';
import type { LinkFacts } from './shape.ts';
import { BOX_PAD, CAPTION_HEIGHT, OVERHANG, OVERHANG_CLEAR, TRAY_PAD } from './sizes.ts';
import { type Builder, type Built, buildRoot, rootOf } from './tray.ts';

function linkFacts(game: Game): LinkFacts {
  const into = new Map<NodeId, number>();
  const touching = new Map<NodeId, number>();
  const count = (map: Map<NodeId, number>, id: NodeId) => map.set(id, (map.get(id) ?? 0) + 1);
  for (const { from, to } of game.links.values()) {
    count(into, to);
    count(touching, to);
    count(touching, from);
  }
  return { into, touching, writtenFor: writtenFor(game), handedOver: handedOver(game) };
}

/** Where what has no position stands for the time being: in columns below everything else. */
const LOOSE_COLUMN_HEIGHT = 640;
const LOOSE_GAP = 40;

function rootPositions(game: Game, roots: readonly Built[]): ReadonlyMap<NodeId, Point> {
  const positions = new Map<NodeId, Point>();
  let left = Number.POSITIVE_INFINITY;
  let bottom = Number.NEGATIVE_INFINITY;
  for (const { node, shape } of roots) {
    const at = game.positions.get(node.id);
    if (!at) continue;
    positions.set(node.id, at);
    left = Math.min(left, at.x);
    bottom = Math.max(bottom, at.y + shape.height);
  }
  const top = positions.size > 0 ? bottom + LOOSE_GAP + CAPTION_HEIGHT : 0;
  let x = positions.size > 0 ? left : 0;
  let y = top;
  let columnWidth = 0;
  for (const { node, shape } of roots) {
    if (positions.has(node.id)) continue;
    if (y > top && y + shape.height > top + LOOSE_COLUMN_HEIGHT) {
      x += columnWidth + 2 * OVERHANG + LOOSE_GAP;
      y = top;
      columnWidth = 0;
    }
    positions.set(node.id, { x, y });
    y += shape.height + LOOSE_GAP + CAPTION_HEIGHT;
    columnWidth = Math.max(columnWidth, shape.width);
  }
  return positions;
}

/** Left and right edge of what stands on the mat. */
interface Span {
  readonly left: number;
  readonly right: number;
}

const meanOf = (xs: readonly number[]) => xs.reduce((sum, x) => sum + x, 0) / xs.length;
const middleOf = ({ left, right }: Span) => (left + right) / 2;

/** The node and all that it is in or on. */
function* withHolders(game: Game, id: NodeId): Generator<NodeId> {
  const seen = new Set<NodeId>();
  for (let at: NodeId | undefined = id; at !== undefined && !seen.has(at); ) {
    seen.add(at);
    yield at;
    const node = game.nodes.get(at);
    at = node && parentOf(node);
  }
}

/**
 * The wall that a container's locks are on: the right one when the mean x of all that opens them lies right of its middle.
 * What opens them from within the same tray, or from one above or below it, says nothing of sides and does not count:
 * then the wall faces the mean of all else that the box, its locks and its contents are linked with. No other link turns it.
 * All is taken from what stands on the mat, so that folding, or a wall itself, changes no other wall.
 */
function wallSides(
  game: Game,
  contents: GameContents,
  spans: ReadonlyMap<NodeId, Span>,
): (container: NodeId) => Side {
  const root = rootOf(contents);
  const spanOf = (id: NodeId) => spans.get(root.get(id) ?? id);
  const openers = new Map<NodeId, number[]>();
  const linked = new Map<NodeId, number[]>();
  const note = (map: Map<NodeId, number[]>, id: NodeId, x: number) => {
    const list = map.get(id);
    if (list) list.push(x);
    else map.set(id, [x]);
  };
  for (const { from, to } of game.links.values()) {
    const source = spanOf(from);
    const target = spanOf(to);
    if (!source || !target || (source.left < target.right && target.left < source.right)) continue;
    for (const holder of withHolders(game, to)) note(linked, holder, middleOf(source));
    for (const holder of withHolders(game, from)) note(linked, holder, middleOf(target));
    const node = game.nodes.get(to);
    if (node?.kind === 'fastener') note(openers, node.on, middleOf(source));
  }
  return (container) => {
    const span = spanOf(container);
    const xs = openers.get(container) ?? linked.get(container);
    return span && xs && meanOf(xs) > middleOf(span) ? 'right' : 'left';
  };
}

interface Drawing {
  readonly game: Game;
  readonly contents: GameContents;
  readonly wallOf: (container: NodeId) => Side;
  readonly slots: Map<NodeId, Slot>;
  readonly rows: Map<NodeId, readonly NodeId[]>;
  readonly hidden: Map<NodeId, NodeId>;
  readonly previous: MapLayout | undefined;
}

const isWalled = (built: Built) => built.inside.some((row) => row.built.node.kind === 'fastener');

/** x of something in a tray, relative to the tray. */
function xInside(drawing: Drawing, tray: Built, inner: Built): number {
  const { node, shape } = inner;
  if (node.kind === 'fastener') {
    return drawing.wallOf(tray.node.id) === 'left' ? -OVERHANG : tray.shape.width + OVERHANG - shape.width;
  }
  if (node.kind !== 'container') return TRAY_PAD;
  const platesLeft = isWalled(inner) && drawing.wallOf(node.id) === 'left';
  return platesLeft ? OVERHANG + OVERHANG_CLEAR : BOX_PAD;
}

function hide(drawing: Drawing, tray: NodeId, into: NodeId) {
  const { locks, things, boxes } = drawing.contents.of(tray);
  for (const { id } of [...locks, ...things, ...boxes]) drawing.hidden.set(id, into);
  for (const box of boxes) hide(drawing, box.id, into);
}

/** What a slot, and the rows of a tray, were last drawn from: spares comparing them piece by piece. */
const slotFrom = new WeakMap<Slot, Built>();
const rowsFrom = new WeakMap<readonly NodeId[], Built>();

interface Standing extends Pick<Slot, 'x' | 'y' | 'parent'> {
  readonly wall: Side | undefined;
  readonly caption: Caption | undefined;
}

function slotOf({ contents, previous }: Drawing, built: Built, at: Standing): Slot {
  const { node, shape, depth, folded } = built;
  const { x, y, parent, wall, caption } = at;
  const before = previous?.slots.get(node.id);
  const stands =
    before?.x === x &&
    before.y === y &&
    before.parent === parent &&
    before.wall === wall &&
    before.caption === caption;
  if (stands && slotFrom.get(before) === built) return before;
  const slot: Slot = {
    kind: node.kind,
    x,
    y,
    ...shape,
    parent,
    depth,
    folded,
    ...(wall && { wall }),
    ...(isHolder(node) && { holds: contents.holds(node.id) }),
    ...(node.kind === 'container' && folded && { locks: contents.of(node.id).locks.map((lock) => lock.id) }),
    ...(caption && { caption }),
  };
  const kept = stands && same(before, slot) ? before : slot;
  slotFrom.set(kept, built);
  return kept;
}

function rowsOf({ previous }: Drawing, built: Built): readonly NodeId[] {
  const before = previous?.rows.get(built.node.id);
  if (before && rowsFrom.get(before) === built) return before;
  const ids = built.inside.map((row) => row.built.node.id);
  const kept = before && same(before, ids) ? before : ids;
  rowsFrom.set(kept, built);
  return kept;
}

function draw(
  drawing: Drawing,
  built: Built,
  x: number,
  y: number,
  parent: Built | undefined,
  caption?: Caption,
) {
  const { node, folded } = built;
  const carrier = node.kind === 'container' ? node.id : node.kind === 'fastener' ? node.on : undefined;
  const wall = carrier === undefined ? undefined : drawing.wallOf(carrier);
  drawing.slots.set(node.id, slotOf(drawing, built, { x, y, parent: parent?.node.id, wall, caption }));
  if (folded) hide(drawing, node.id, node.id);
  else if (isHolder(node)) drawing.rows.set(node.id, rowsOf(drawing, built));
  for (const row of built.inside) {
    draw(drawing, row.built, xInside(drawing, built, row.built), row.y, built);
  }
}

/**
 * Lays out the whole game. What stands on the mat stands where the document says, overlapping or not; what has no position
 * gets one below everything else. Given the layout before, slots, rows and fields that have not changed stay the same objects,
 * and so does the layout when nothing has.
 */
export function layOut(game: Game, view: MapView, previous?: MapLayout): MapLayout {
  const contents = contentsOf(game);
  const facts = linkFacts(game);
  const builder: Builder = { game, view, contents, facts };
  const captionIn = (node: GameNode) => captionOf(node, facts.handedOver.has(node.id));
  const roots = contents.roots.map((node) => buildRoot(builder, node));
  const positions = rootPositions(game, roots);
  const rects = new Map<NodeId, Rect>();
  const spans = new Map<NodeId, Span>();
  for (const { node, shape } of roots) {
    const { x, y } = positions.get(node.id) ?? { x: 0, y: 0 };
    rects.set(node.id, { x, y, width: shape.width, height: shape.height });
    spans.set(node.id, { left: x, right: x + shape.width });
  }
  const wallOf = wallSides(game, contents, spans);
  const captioned = roots.flatMap((built) => {
    const caption = captionIn(built.node);
    const rect = rects.get(built.node.id);
    if (!caption || !rect) return [];
    const overhang = isWalled(built) ? wallOf(built.node.id) : undefined;
    return [{ id: built.node.id, caption, rect, overhang }];
  });
  const fields = fieldsOf(captioned, [...rects.values()]);
  const inField = new Set(fields.flatMap((field) => field.ids));
  const slots = new Map<NodeId, Slot>();
  const rows = new Map<NodeId, readonly NodeId[]>();
  const hidden = new Map<NodeId, NodeId>();
  const drawing: Drawing = { game, contents, wallOf, slots, rows, hidden, previous };
  for (const built of roots) {
    const { x, y } = rects.get(built.node.id) ?? { x: 0, y: 0 };
    const alone = !inField.has(built.node.id);
    draw(drawing, built, x, y, undefined, alone ? captionIn(built.node) : undefined);
  }
  return settle({ slots, rows, hidden, fields }, previous);
}

function sameEntries<V>(a: ReadonlyMap<NodeId, V>, b: ReadonlyMap<NodeId, V>): boolean {
  if (a.size !== b.size) return false;
  for (const [id, value] of a) if (b.get(id) !== value) return false;
  return true;
}

/** Keeps what is equal to what was before. */
function settle(layout: MapLayout, previous: MapLayout | undefined): MapLayout {
  if (!previous) return layout;
  const slots = sameEntries(layout.slots, previous.slots) ? previous.slots : layout.slots;
  const rows = sameEntries(layout.rows, previous.rows) ? previous.rows : layout.rows;
  const hidden = sameEntries(layout.hidden, previous.hidden) ? previous.hidden : layout.hidden;
  const fields = same(layout.fields, previous.fields)
    ? previous.fields
    : layout.fields.map((field) => previous.fields.find((old) => same(old, field)) ?? field);
  const unchanged =
    slots === previous.slots &&
    rows === previous.rows &&
    hidden === previous.hidden &&
    fields === previous.fields;
  return unchanged ? previous : { slots, rows, hidden, fields };
}
