/** Where the columns stand: to the left and right of the spine, beyond channels as wide as the lines in them need. */
import { type Game, type NodeId, type Point, parentOf } from '../../game/model.ts';
import type { Columns } from '../../spine/spine.ts';
import { layOut } from '../lay-out.ts';
import { absolute, type MapLayout, type MapView } from '../layout.ts';
import { outline } from '../outline.ts';
import { FIELD_PAD, PUZZLE_WIDTH } from '../sizes.ts';
import type { MapBlock, MapSpine } from './blocks.ts';

/** Channel between the spine and a column, beside the tracks in it. */
const CHANNEL_SIDES = 44;
/** Of one line. */
export const TRACK = 7;
export const CHANNEL_MIN = 72;
export const CHANNEL_MAX = 190;

/** Without a puzzle to stand on it, there is no spine, and the columns stand beside each other. */
export const spineWidth = ({ bars }: MapSpine): number => (bars > 0 ? PUZZLE_WIDTH : 0);

/** Far more than anything is wide, and far more than anything is high. */
const FAR_ACROSS = 2000;
const FAR_DOWN = 10_000;

/** The game with what stands on the mat put in three columns far apart, so that every lock is on the wall that it will have. */
export function spreadOut(game: Game, xOf: (id: NodeId) => number): Game {
  const positions = new Map(game.positions);
  let y = 0;
  for (const node of game.nodes.values()) {
    if (parentOf(node) !== undefined) continue;
    positions.set(node.id, { x: xOf(node.id), y });
    y += FAR_DOWN;
  }
  return { ...game, positions };
}

const idsOf = (blocks: readonly MapBlock[], column: readonly number[]) =>
  new Set(column.flatMap((i) => blocks[i]?.parts.map((part) => part.id) ?? []));

/** Width of the channel on one side: enough for the lines that run beside each other in it. */
function channelWidth(spine: MapSpine, columns: Columns, y: Float64Array, side: 'left' | 'right'): number {
  const here = new Set(columns[side]);
  for (const [id, held] of spine.held ?? []) if (held.side === side) here.add(id);
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

/**
 * Where everything in the columns stands, with the left edge of the spine at x = 0, and at the heights given.
 * `fixedX`: the left edge of what is in no column.
 */
export function spotsOf(
  ordered: Game,
  view: MapView,
  spine: MapSpine,
  columns: Columns,
  y: Float64Array,
  fixedX: ReadonlyMap<NodeId, number>,
): Map<NodeId, Point> {
  const left = idsOf(spine.blocks, columns.left);
  const right = idsOf(spine.blocks, columns.right);
  const far = (id: NodeId) => fixedX.get(id) ?? (left.has(id) ? -FAR_ACROSS : right.has(id) ? FAR_ACROSS : 0);
  const layout = layOut(spreadOut(ordered, far), view);
  const leftEdge = -channelWidth(spine, columns, y, 'left');
  const rightEdge = spineWidth(spine) + channelWidth(spine, columns, y, 'right');
  const spots = new Map<NodeId, Point>();
  for (const i of [...columns.left, ...columns.spine, ...columns.right]) {
    const parts = spine.blocks[i]?.parts ?? [];
    const framed = parts.length > 1;
    for (const part of parts) {
      const { left: reachLeft, right: reachRight } = reach(layout, part.id, framed);
      const x = left.has(part.id) ? leftEdge - reachRight : right.has(part.id) ? rightEdge - reachLeft : 0;
      spots.set(part.id, { x: Math.round(x), y: Math.round((y[i] ?? 0) + part.y) });
    }
  }
  return spots;
}
