/**
 * The spine: puzzles down the middle in the order of play, the room left and right of them, each tray beside the puzzles
 * that use it. Blocks (what stands on the mat) are given sides, then heights, then positions; the first two know nothing of pixels across,
 * so that a page can be made from them as well as the map.
 */
import { byCodePoint } from '../game/compare.ts';
import { childrenOf, type Game, type GameNode, type NodeId, type Point, parentOf } from '../game/model.ts';
import { writeRows } from '../game/rows.ts';
import { runsOf, settle } from '../spine/columns.ts';
import { type Judged, judge } from '../spine/judge.ts';
import { search } from '../spine/search.ts';
import { type Columns, join, type Tie } from '../spine/spine.ts';
import {
  blocksOf,
  FIELD_ROW_GAP,
  firstUses,
  type MapBlock,
  type MapSpine,
  mapSpine,
} from './arrange/blocks.ts';
import { contentsOf } from './contents.ts';
import { layOut } from './lay-out.ts';
import { absolute, type MapLayout, type MapView, plainView } from './layout.ts';
import { outline } from './outline.ts';
import { FIELD_PAD, PUZZLE_WIDTH } from './sizes.ts';

export interface ArrangeOptions {
  readonly view?: MapView;
  /** Asked now and then; when it says yes, the best arrangement so far is given. */
  readonly cancelled?: () => boolean;
}

/** Where the upper left corner of the whole stands. */
const MARGIN = 32;
/** Channel between the spine and a column, beside the tracks in it. */
const CHANNEL_SIDES = 44;
const TRACK = 7;
const CHANNEL_MIN = 72;
const CHANNEL_MAX = 190;
/** Neighbours of one caption that stand no farther apart than this are drawn together into one field. */
const JOIN_WITHIN = 120;
const FINAL_ROUNDS = 60;

/** Rows in the order of first use, wherever nothing in a tray has a position yet. */
function rowsByUse(game: Game, numbers: ReadonlyMap<NodeId, number>): Game {
  const positions = new Map(game.positions);
  const firstUse = firstUses(game, numbers);
  for (const [, inside] of childrenOf(game)) {
    if (inside.some((node) => positions.has(node.id))) continue;
    const sorted = [...inside].sort((a, b) => {
      const [p, q] = [firstUse(a.id), firstUse(b.id)];
      return p === q ? byCodePoint(a.id, b.id) : p - q;
    });
    for (const [i, node] of sorted.entries()) positions.set(node.id, { x: 0, y: i });
  }
  return { ...game, positions };
}

/** The game with what stands on the mat put in three columns far apart, so that every lock is on the wall that it will have. */
function spreadOut(game: Game, left: ReadonlySet<NodeId>, right: ReadonlySet<NodeId>): Game {
  const positions = new Map(game.positions);
  let y = 0;
  for (const node of game.nodes.values()) {
    const x = left.has(node.id) ? -2000 : right.has(node.id) ? 2000 : 0;
    if (parentOf(node) !== undefined) continue;
    positions.set(node.id, { x, y });
    y += 10_000;
  }
  return { ...game, positions };
}

const idsOf = (blocks: readonly MapBlock[], column: readonly number[]) =>
  new Set(column.flatMap((i) => blocks[i]?.parts.map((part) => part.id) ?? []));

/** One reads from the left: what is used first stands there. */
function earlyLeft(spine: MapSpine, columns: Columns): Columns {
  const meanUse = (column: readonly number[]) => {
    const uses = column.map((i) => spine.blocks[i]?.firstUse ?? 0).filter(Number.isFinite);
    return uses.length > 0 ? uses.reduce((sum, use) => sum + use, 0) / uses.length : Number.POSITIVE_INFINITY;
  };
  const { left, right } = columns;
  return meanUse(left) <= meanUse(right) ? columns : { ...columns, left: right, right: left };
}

/** Draws neighbours of one caption together into one block, when they stand close. */
function joinNeighbours(
  spine: MapSpine,
  columns: Columns,
  y: Float64Array,
): { spine: MapSpine; columns: Columns } {
  const blocks: MapBlock[] = [...spine.blocks];
  /** The block that each has become part of, and how far below its upper edge. */
  const moved = new Map<number, { into: number; y: number }>();
  const merge = (column: readonly number[]) => {
    const kept: number[] = [];
    for (const i of column) {
      const block = blocks[i];
      const last = kept.at(-1);
      const above = last === undefined ? undefined : blocks[last];
      if (!block) continue;
      const near =
        last !== undefined &&
        above?.caption !== undefined &&
        above.caption === block.caption &&
        (y[i] ?? 0) - ((y[last] ?? 0) + above.height) <= JOIN_WITHIN;
      if (!near) {
        kept.push(i);
        continue;
      }
      const offset = above.height + FIELD_ROW_GAP;
      moved.set(i, { into: last, y: offset });
      blocks[last] = {
        ...above,
        parts: [...above.parts, ...block.parts.map((part) => ({ id: part.id, y: part.y + offset }))],
        height: offset + block.height,
      };
    }
    return kept;
  };
  const merged: Columns = { left: merge(columns.left), spine: columns.spine, right: merge(columns.right) };
  const ties = spine.ties.map((tie): Tie => {
    const from = moved.get(tie.from);
    const to = moved.get(tie.to);
    return {
      from: from?.into ?? tie.from,
      fromY: tie.fromY + (from?.y ?? 0),
      to: to?.into ?? tie.to,
      toY: tie.toY + (to?.y ?? 0),
    };
  });
  return {
    spine: mapSpine(blocks, spine.bars, ties),
    columns: merged,
  };
}

/** Width of the channel on one side: enough for the lines that run beside each other in it. */
function channelWidth(spine: MapSpine, columns: Columns, y: Float64Array, side: 'left' | 'right'): number {
  const here = new Set(columns[side]);
  const events: { y: number; step: number }[] = [];
  for (const tie of spine.ties) {
    if (!here.has(tie.from) && !here.has(tie.to)) continue;
    const a = (y[tie.from] ?? 0) + tie.fromY;
    const b = (y[tie.to] ?? 0) + tie.toY;
    events.push({ y: Math.min(a, b) - 4, step: 1 }, { y: Math.max(a, b) + 4, step: -1 });
  }
  events.sort((p, q) => p.y - q.y || q.step - p.step);
  let running = 0;
  let most = 0;
  for (const { step } of events) {
    running += step;
    most = Math.max(most, running);
  }
  return Math.min(CHANNEL_MAX, Math.max(CHANNEL_MIN, CHANNEL_SIDES + TRACK * most));
}

/** How far a part reaches to the left and right of its own left edge, with its plates and the field around it. */
function reach(layout: MapLayout, id: NodeId, framed: boolean): { left: number; right: number } {
  const rect = absolute(layout, id);
  const around = outline(layout, id);
  const pad = framed ? FIELD_PAD : 0;
  return { left: around.x - pad - rect.x, right: around.x + around.width + pad - rect.x };
}

function bestOf(arrangements: Generator<Judged, Judged>, cancelled: () => boolean): Judged {
  for (;;) {
    const { done, value } = arrangements.next();
    if (done || cancelled()) return value;
  }
}

/**
 * Positions for every node of the game, whatever positions it has: on the mat for what nothing holds, else the place among the rows
 * of its holder. Rows keep the order that they have; in a tray where nothing has a position they follow first use.
 * `numbers`: the order of play, from 1, of each reached step (playNumbers).
 * Deterministic. What stands on the mat does not overlap, with the plain view or the one given.
 */
export function arrange(
  game: Game,
  numbers: ReadonlyMap<NodeId, number>,
  options: ArrangeOptions = {},
): ReadonlyMap<NodeId, Point> {
  const view = options.view ?? plainView;
  const cancelled = options.cancelled ?? (() => false);
  const ordered = rowsByUse(game, numbers);
  const first = layOut(spreadOut(ordered, new Set(), new Set()), view);
  const alone = blocksOf(ordered, first, numbers);
  const joined = join(alone);
  const found = bestOf(search(joined), cancelled);
  const calm = judge(joined, earlyLeft(alone, found.columns), FINAL_ROUNDS);
  const { spine, columns } = joinNeighbours(alone, calm.columns, calm.y);
  const y = Float64Array.from(calm.y);
  const calmed = join(spine);
  settle(calmed, runsOf(calmed, columns), y, FINAL_ROUNDS);

  const left = idsOf(spine.blocks, columns.left);
  const right = idsOf(spine.blocks, columns.right);
  const layout = layOut(spreadOut(ordered, left, right), view);
  const leftEdge = -channelWidth(spine, columns, y, 'left');
  const rightEdge = PUZZLE_WIDTH + channelWidth(spine, columns, y, 'right');
  const spots = new Map<NodeId, Point>();
  for (const i of [...columns.left, ...columns.spine, ...columns.right]) {
    const parts = spine.blocks[i]?.parts ?? [];
    const framed = parts.length > 1;
    for (const part of parts) {
      const { left: reachLeft, right: reachRight } = reach(layout, part.id, framed);
      const x = left.has(part.id) ? leftEdge - reachRight : right.has(part.id) ? rightEdge - reachLeft : 0;
      spots.set(part.id, { x, y: (y[i] ?? 0) + part.y });
    }
  }
  return withRows(ordered, inCorner(layout, spots));
}

/** Moves everything so that the upper left corner of the whole stands at the margin, in whole pixels. */
function inCorner(layout: MapLayout, spots: ReadonlyMap<NodeId, Point>): ReadonlyMap<NodeId, Point> {
  let left = Number.POSITIVE_INFINITY;
  let top = Number.POSITIVE_INFINITY;
  for (const [id, { x, y }] of spots) {
    left = Math.min(left, x + reach(layout, id, false).left);
    top = Math.min(top, y);
  }
  return new Map(
    [...spots].map(([id, { x, y }]) => [
      id,
      { x: Math.round(x - left + MARGIN), y: Math.round(y - top + 2 * MARGIN) },
    ]),
  );
}

/** Adds the rows of every tray: things, then boxes, as they are drawn; and the locks of every container. */
function withRows(ordered: Game, spots: ReadonlyMap<NodeId, Point>): ReadonlyMap<NodeId, Point> {
  const positions = new Map(spots);
  const contents = contentsOf(ordered);
  const write = (rows: readonly GameNode[]) =>
    writeRows(
      positions,
      rows.map((node) => node.id),
    );
  for (const id of ordered.nodes.keys()) {
    const { locks, things, boxes } = contents.of(id);
    write(locks);
    write([...things, ...boxes]);
  }
  return positions;
}
