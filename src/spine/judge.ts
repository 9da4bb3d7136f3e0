/** What an arrangement costs: vertical distances, crossings, lines from side to side, blocks away from home, the height of the whole, and what is too long. */
import { excessOf, packed, type Runs, runsOf, settle } from './columns.ts';
import { crossings, type Lines, linesFor } from './inversions.ts';
import type { Columns, Joined } from './spine.ts';

/** An arrangement with its upper edges. `cost` is in units. */
export interface Judged {
  readonly columns: Columns;
  readonly y: Float64Array;
  readonly cost: number;
}

interface Room {
  readonly side: Int8Array;
  readonly left: Lines;
  readonly right: Lines;
}

const rooms = new WeakMap<Joined, Room>();

/** Room to count in, kept between calls. */
function roomFor(joined: Joined): Room {
  let room = rooms.get(joined);
  if (!room) {
    const { count } = joined.ties;
    room = { side: new Int8Array(joined.heights.length), left: linesFor(count), right: linesFor(count) };
    rooms.set(joined, room);
  }
  return room;
}

const LEFT = 1;
const RIGHT = 2;

function noteSides(joined: Joined, columns: Columns, side: Int8Array): void {
  side.fill(0);
  for (const [id, held] of joined.spine.held ?? []) {
    if (held.side) side[id] = held.side === 'left' ? LEFT : RIGHT;
  }
  for (const id of columns.left) side[id] = LEFT;
  for (const id of columns.right) side[id] = RIGHT;
}

function wholeHeight({ heights }: Joined, runs: Runs, y: Float64Array): number {
  let top = Number.POSITIVE_INFINITY;
  let bottom = Number.NEGATIVE_INFINITY;
  for (const { ids } of runs) {
    const first = ids[0] ?? 0;
    const last = ids[ids.length - 1] ?? 0;
    top = Math.min(top, y[first] ?? 0);
    bottom = Math.max(bottom, (y[last] ?? 0) + (heights[last] ?? 0));
  }
  return bottom > top ? bottom - top : 0;
}

function add(lines: Lines, near: number, far: number): void {
  lines.near[lines.count] = near;
  lines.far[lines.count] = far;
  lines.count++;
}

/** How many blocks are not on their home side. */
function countAway({ spine }: Joined, columns: Columns): number {
  const { homes } = spine;
  if (!homes) return 0;
  let away = 0;
  for (const id of columns.left) if (homes.get(id) === 'right') away++;
  for (const id of columns.right) if (homes.get(id) === 'left') away++;
  return away;
}

function costOf(joined: Joined, columns: Columns, runs: Runs, y: Float64Array): number {
  const { costs, spine, ties } = joined;
  const { side, left, right } = roomFor(joined);
  noteSides(joined, columns, side);
  left.count = 0;
  right.count = 0;
  const reach = costs.reach * spine.unit;
  let distance = 0;
  let across = 0;
  for (let tie = 0; tie < ties.count; tie++) {
    const from = ties.from[tie] ?? 0;
    const to = ties.to[tie] ?? 0;
    const a = (y[from] ?? 0) + (ties.fromY[tie] ?? 0);
    const b = (y[to] ?? 0) + (ties.toY[tie] ?? 0);
    const weight = ties.weight[tie] ?? 1;
    distance += weight * Math.min(reach, Math.abs(a - b));
    const sideA = side[from] ?? 0;
    const sideB = side[to] ?? 0;
    if (sideA === sideB) continue;
    if (sideA > 0 && sideB > 0) across += weight;
    else if (sideA > 0) add(sideA === LEFT ? left : right, b, a);
    else add(sideB === LEFT ? left : right, a, b);
  }
  const lengths = distance + costs.height * wholeHeight(joined, runs, y) + costs.excess * excessOf(runs);
  const strays = costs.across * across + costs.away * countAway(joined, columns);
  return lengths / spine.unit + strays + costs.crossing * (crossings(left) + crossings(right));
}

/** What columns cost with the upper edges given. */
export const costAt = (joined: Joined, columns: Columns, y: Float64Array): number =>
  costOf(joined, columns, runsOf(joined, columns), y);

/** The columns with the heights that they settle to, which depend on nothing else. `rounds`: few while searching, some 60 at the end. */
export function judge(joined: Joined, columns: Columns, rounds: number): Judged {
  const runs = runsOf(joined, columns);
  const y = packed(joined, runs);
  settle(joined, runs, y, rounds);
  return { columns, y, cost: costOf(joined, columns, runs, y) };
}
