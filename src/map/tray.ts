/**
 * Trays stack: name at the top, plates on the wall, things as rows, boxes below them. Widths come from the inside out,
 * text is broken to them, and heights follow. None of it depends on which wall the plates are on: left and right are mirrored.
 */
import { type Game, type GameNode, isHolder, type NodeId } from '../game/model.ts';
import type { GameContents } from './contents.ts';
import type { MapView } from './layout.ts';
import {
  foldedShape,
  type LinkFacts,
  plateShape,
  puzzleShape,
  type Shape,
  thingShape,
  trayHead,
} from './shape.ts';
import {
  BOX_PAD,
  FREE_CONTAINER_WIDTH,
  FREE_THING_WIDTH,
  INNER_CONTAINER_WIDTH,
  OVERHANG,
  OVERHANG_CLEAR,
  PLACE_WIDTH,
  PLATE_GAP,
  ROW_GAP,
  TRAY_PAD,
} from './sizes.ts';

/** A shape with what is drawn in it, before it is known which wall the plates are on. */
export interface Built {
  readonly node: GameNode;
  readonly depth: number;
  readonly folded: boolean;
  readonly shape: Shape;
  /** In the order in which they are drawn; y is relative to this one. */
  readonly inside: readonly { readonly y: number; readonly built: Built }[];
}

/** From this depth on a box is folded until it is opened. */
export const FOLDED_FROM = 2;
const TRAY_BOTTOM = 14;
/** An empty tray keeps room for one row. */
const EMPTY_HEIGHT = 80;

export interface Builder {
  readonly game: Game;
  readonly view: MapView;
  readonly contents: GameContents;
  readonly facts: LinkFacts;
}

function isFolded({ view }: Builder, node: GameNode, depth: number): boolean {
  return node.kind === 'container' && depth >= FOLDED_FROM && !view.opened.has(node.id);
}

/** Whether plates stand out of the box's wall. */
function hasPlates(builder: Builder, box: GameNode, depth: number): boolean {
  return !isFolded(builder, box, depth) && builder.contents.of(box.id).locks.length > 0;
}

/** What a box in a tray needs besides its own width. */
const boxSides = (plates: boolean) => BOX_PAD + (plates ? OVERHANG + OVERHANG_CLEAR : BOX_PAD);

function trayWidth(builder: Builder, node: GameNode, depth: number): number {
  const own =
    node.kind === 'place' ? PLACE_WIDTH : depth === 0 ? FREE_CONTAINER_WIDTH : INNER_CONTAINER_WIDTH;
  if (isFolded(builder, node, depth)) return own;
  const boxes = builder.contents.of(node.id).boxes.map((box) => {
    const sides = boxSides(hasPlates(builder, box, depth + 1));
    return trayWidth(builder, box, depth + 1) + sides;
  });
  return Math.max(own, ...boxes);
}

function buildTray(builder: Builder, node: GameNode, depth: number, width: number): Built {
  const { contents, facts } = builder;
  const folded = isFolded(builder, node, depth);
  if (folded) return { node, depth, folded, shape: foldedShape(node, width, facts), inside: [] };
  const head = trayHead(node, width, facts);
  const { locks, things, boxes } = contents.of(node.id);
  const inside: { y: number; built: Built }[] = [];
  let y = head.height;
  const add = (built: Built, gap: number) => {
    inside.push({ y, built });
    y += built.shape.height + gap;
  };
  locks.forEach((lock, i) => {
    const shape = plateShape(builder.game, lock, width, facts);
    const gap = i === locks.length - 1 ? ROW_GAP : PLATE_GAP;
    add({ node: lock, depth: depth + 1, folded: false, shape, inside: [] }, gap);
  });
  for (const thing of things) add(build(builder, thing, depth + 1, width - 2 * TRAY_PAD), ROW_GAP);
  for (const box of boxes) {
    const sides = boxSides(hasPlates(builder, box, depth + 1));
    add(build(builder, box, depth + 1, width - sides), ROW_GAP);
  }
  const bottom = inside.length > 0 ? y - ROW_GAP : y;
  const height = Math.max(EMPTY_HEIGHT, bottom + TRAY_BOTTOM);
  return { node, depth, folded, shape: { ...head, height }, inside };
}

function build(builder: Builder, node: GameNode, depth: number, width: number): Built {
  const leaf = (shape: Shape): Built => ({ node, depth, folded: false, shape, inside: [] });
  switch (node.kind) {
    case 'place':
    case 'container':
      return buildTray(builder, node, depth, width);
    case 'puzzle':
      return leaf(puzzleShape(builder.game, node, builder.facts));
    case 'fastener':
      return leaf(plateShape(builder.game, node, width, builder.facts));
    default:
      return leaf(thingShape(node, width, builder.facts));
  }
}

/** All that a tray's shape is made from: it, what is in it, what their shapes need to know of the links, and what is opened. */
function partsOf({ contents, facts, view }: Builder, root: GameNode): unknown[] {
  const parts: unknown[] = [view.opened];
  const visit = (node: GameNode) => {
    const { id } = node;
    parts.push(node, facts.into.get(id), facts.touching.get(id), facts.writtenFor.get(id));
    const { locks, things, boxes } = contents.of(id);
    for (const lock of locks) visit(lock);
    for (const thing of things) visit(thing);
    for (const box of boxes) visit(box);
  };
  visit(root);
  return parts;
}

const lastBuilt = new WeakMap<GameNode, { readonly parts: readonly unknown[]; readonly built: Built }>();

/** What stands on the mat, with all that is drawn in it: the same object as the last time when all that it is made from is. */
export function buildRoot(builder: Builder, node: GameNode): Built {
  const parts = partsOf(builder, node);
  const last = lastBuilt.get(node);
  if (last?.parts.length === parts.length && parts.every((part, i) => part === last.parts[i])) {
    return last.built;
  }
  const built = buildWhole(builder, node);
  lastBuilt.set(node, { parts, built });
  return built;
}

function buildWhole(builder: Builder, node: GameNode): Built {
  return build(builder, node, 0, isHolder(node) ? trayWidth(builder, node, 0) : FREE_THING_WIDTH);
}

/** The root that each node stands in, drawn or folded away. */
export function rootOf(contents: GameContents): ReadonlyMap<NodeId, NodeId> {
  const root = new Map<NodeId, NodeId>();
  const visit = (node: GameNode, top: NodeId) => {
    root.set(node.id, top);
    const { locks, things, boxes } = contents.of(node.id);
    for (const inner of [...locks, ...things, ...boxes]) visit(inner, top);
  };
  for (const node of contents.roots) visit(node, node.id);
  return root;
}
