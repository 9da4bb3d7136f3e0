/**
 * The spine on the map: puzzles down the middle in the order of play, the room left and right of them, each tray beside the puzzles
 * that use it. What stands on the mat is given a side, then a height (src/spine/), then a position.
 */
import type { Game, NodeId, Point } from '../game/model.ts';
import { inFileOrder } from '../game/write.ts';
import { lastOf } from '../last-of.ts';
import { runsOf, settle } from '../spine/columns.ts';
import { costAt, type Judged, judge } from '../spine/judge.ts';
import { anneal, climb } from '../spine/search.ts';
import { type Columns, join } from '../spine/spine.ts';
import { spotsOf, TRACK } from './arrange/across.ts';
import type { MapSpine } from './arrange/blocks.ts';
import { joinNeighbours } from './arrange/fields.ts';
import { goRound } from './arrange/obstacles.ts';
import { writeRowsIn } from './arrange/rows.ts';
import { FINAL_ROUNDS, isPinned, median, type Task, type TidyOptions, taskOf } from './arrange/task.ts';
import { layOut } from './lay-out.ts';
import { type MapView, plainView } from './layout.ts';
import { covered } from './outline.ts';

export type { TidyOptions } from './arrange/task.ts';

export type Positions = ReadonlyMap<NodeId, Point>;

/** Where the upper left corner of the whole stands, when nothing has stood anywhere before. */
const MARGIN = 32;
/** In units of vertical distance (lines of text): what one block moves for. */
const WORTH_MOVING = 6;
/** Everything is arranged anew where that costs so much less. */
const WORTH_ANEW = 0.88;
/** Only what is so much better is shown meanwhile. */
const WORTH_SHOWING = 0.97;
/** What costs hardly more than the best that is found stays as it is. */
const GOOD_ENOUGH = 1.01;
/** Where something stands fast, the search begins again from what it found at most so often. */
const MOST_AGAIN = 4;

/** One reads from the left: what is used first stands there. */
function earlyLeft({ blocks, held }: MapSpine, columns: Columns): Columns {
  if (held && held.size > 0) return columns;
  const meanUse = (column: readonly number[]) => {
    const uses = column.map((i) => blocks[i]?.firstUse ?? 0).filter(Number.isFinite);
    return uses.length > 0 ? uses.reduce((sum, use) => sum + use, 0) / uses.length : Number.POSITIVE_INFINITY;
  };
  const { left, right } = columns;
  return meanUse(left) <= meanUse(right) ? columns : { ...columns, left: right, right: left };
}

/** By how much the whole is moved on the mat: back to where it stood, on the median; to the corner when it stood nowhere. */
function shiftOf(task: Task, spots: Positions): { x: number; y: number } {
  if (task.shift) return task.shift;
  const { now, spine, stands } = task;
  if (stands) {
    const from = [...spots].flatMap(([id, { x, y }]) => {
      const slot = now.slots.get(id);
      return slot && task.game.positions.has(id) ? [{ kind: slot.kind, x: slot.x - x, y: slot.y - y }] : [];
    });
    const across = spine.bars > 0 ? from.filter(({ kind }) => kind === 'puzzle') : from;
    const x = median((across.length > 0 ? across : from).map((by) => by.x));
    return { x: Math.round(x), y: Math.round(median(from.map((by) => by.y))) };
  }
  let left = Number.POSITIVE_INFINITY;
  let top = Number.POSITIVE_INFINITY;
  for (const { x, y } of spots.values()) {
    left = Math.min(left, x);
    top = Math.min(top, y);
  }
  return { x: MARGIN - left, y: 2 * MARGIN - top };
}

interface Finished {
  readonly positions: Positions;
  readonly cost: number;
}

/** Positions for the columns, and what they cost once settled. */
function finish(task: Task, columns: Columns): Finished {
  const { game, ordered, view } = task;
  const calm = judge(task.joined, columns, FINAL_ROUNDS);
  const { spine, columns: together } = joinNeighbours(task.spine, calm.columns, calm.y);
  const y = Float64Array.from(calm.y);
  const joined = join(spine);
  settle(joined, runsOf(joined, together), y, FINAL_ROUNDS);
  goRound(spine, together, y);
  const spots = spotsOf(ordered, view, spine, together, y, task.fixedX);
  const shift = shiftOf(task, spots);
  const positions = new Map(game.positions);
  for (const [id, { x, y: down }] of spots) {
    const old = game.positions.get(id);
    const at = { x: x + shift.x, y: down + shift.y };
    if (old?.x !== at.x || old.y !== at.y) positions.set(id, { ...old, ...at });
  }
  writeRowsIn(positions, ordered, task.moves);
  // Round what stands fast, heights are others than those that were judged.
  const cost = task.shift ? costAt(task.joined, calm.columns, heightsOf(task, positions)) : calm.cost;
  return { positions, cost };
}

/** The upper edges of the blocks as they stand in these positions. */
function heightsOf({ spine, shift }: Task, positions: Positions): Float64Array {
  return Float64Array.from(
    spine.blocks,
    ({ parts }, i) => spine.held?.get(i)?.y ?? (positions.get(parts[0]?.id ?? '')?.y ?? 0) - (shift?.y ?? 0),
  );
}

/**
 * Whether nothing that moves covers anything. Looked for only where something stands fast (then the task has a shift): otherwise
 * columns and their heights keep everything apart.
 */
function isClear({ game, view, moves, shift }: Task, positions: Positions): boolean {
  if (!shift) return true;
  const pairs = covered(layOut({ ...game, positions }, view));
  return !pairs.some((pair) => pair.flat().some((id) => moves.has(id)));
}

/** What the positions of the document cost, when they are an arrangement: on the spine, with nothing covered. Else infinity. */
function standingCost(task: Task, arranged: Positions): number {
  const { now, game } = task;
  if (!task.stands) return Number.POSITIVE_INFINITY;
  for (const id of task.moves) {
    const at = game.positions.get(id);
    const inColumn = at && Math.abs(at.x - (arranged.get(id)?.x ?? 0)) <= 2 * TRACK;
    if (!inColumn) return Number.POSITIVE_INFINITY;
  }
  if (covered(now).some((pair) => pair.flat().some((id) => task.moves.has(id))))
    return Number.POSITIVE_INFINITY;
  return costAt(task.joined, task.start, heightsOf(task, game.positions));
}

/** Ever better columns. From the document, only what is worth it changes. */
function* improve({ joined, spine, start, stands }: Task): Generator<Judged, Judged> {
  let best: Judged;
  if (stands) best = yield* climb(joined, start, { worth: WORTH_MOVING });
  else {
    const found = yield* anneal(joined, judge(joined, start, 3));
    best = yield* climb(joined, earlyLeft(spine, found.columns), { worth: WORTH_MOVING });
  }
  for (let again = 0; again < 3; again++) {
    const found = yield* anneal(joined, best);
    const next = yield* climb(joined, found.columns, { worth: WORTH_MOVING });
    if (next.cost > WORTH_ANEW * best.cost) return best;
    best = next;
  }
  return best;
}

/** One search from where things stand; as tidy. */
function* tidyOnce(
  given: Game,
  numbers: ReadonlyMap<NodeId, number>,
  options: TidyOptions,
): Generator<Positions, Positions> {
  const game = inFileOrder(given);
  const view = options.view ?? plainView;
  let task = taskOf(game, numbers, view, options, false);
  if (!task) return game.positions;
  let first = finish(task, task.start);
  if (!isClear(task, first.positions)) {
    task = taskOf(game, numbers, view, options, true) ?? task;
    first = finish(task, task.start);
  }
  const standing = standingCost(task, first.positions);
  const shown = ({ positions, cost }: Finished) =>
    standing <= cost * GOOD_ENOUGH ? game.positions : positions;
  let best = first;
  yield shown(best);
  const search = improve(task);
  for (;;) {
    const { done, value } = search.next();
    if (done || value.cost < best.cost * WORTH_SHOWING) {
      const next = finish(task, value.columns);
      if (isClear(task, next.positions)) best = next;
    }
    if (done) return shown(best);
    yield shown(best);
  }
}

/**
 * Positions for every node: on the mat for what nothing holds, else the place among the rows of its holder. The first at once, then
 * better ones; the same object when there is none better yet. Whoever stops iterating has cancelled it. Deterministic.
 *
 * What is pinned, and with `only` all that is not selected, stays to the pixel and the others go round it: nothing that moves covers
 * anything, in the view given. From the document, what hardly gains stays: a tidied game stays as it is, with pins too, and after a small edit most
 * of it. Rows keep the order that they have, for a teacher put them so; in a tray where nothing has a position they follow first use.
 * @param numbers the order of play, from 1, of each reached step (playNumbers)
 */
export function* tidy(
  game: Game,
  numbers: ReadonlyMap<NodeId, number>,
  options: TidyOptions,
): Generator<Positions, Positions> {
  let positions = yield* tidyOnce(game, numbers, options);
  const isAnyFast = options.only !== undefined || [...game.positions.keys()].some((id) => isPinned(game, id));
  if (!isAnyFast || options.from === 'scratch') return positions;
  // What has gone round something that stands fast is in other columns than were searched for: from there on, better may be found.
  for (let again = 0; again < MOST_AGAIN; again++) {
    const next: Positions = yield* tidyOnce({ ...game, positions }, numbers, options);
    if (isSame(next, positions)) break;
    positions = next;
  }
  return positions;
}

function isSame(a: Positions, b: Positions): boolean {
  if (a === b) return true;
  return [...a].every(([id, { x, y }]) => b.get(id)?.x === x && b.get(id)?.y === y);
}

/** What stands left and right of the spine, each from top to bottom. */
export interface Sides {
  readonly left: readonly NodeId[];
  readonly right: readonly NodeId[];
}

/**
 * The sides of a game that is arranged from scratch, wherever its things stand now: for pictures that are to look like the map.
 * @param numbers as of tidy
 */
export function sidesOf(game: Game, numbers: ReadonlyMap<NodeId, number>): Sides {
  const task = taskOf(
    { ...inFileOrder(game), positions: new Map() },
    numbers,
    plainView,
    { from: 'scratch' },
    false,
  );
  if (!task) return { left: [], right: [] };
  const { left, right } = lastOf(improve(task)).columns;
  const idsOf = (column: readonly number[]) =>
    column.flatMap((block) => task.spine.blocks[block]?.parts.map(({ id }) => id) ?? []);
  return { left: idsOf(left), right: idsOf(right) };
}

/** The last positions of tidying from scratch. */
export function arrange(
  game: Game,
  numbers: ReadonlyMap<NodeId, number>,
  { view = plainView }: { readonly view?: MapView } = {},
): Positions {
  return lastOf(tidy(game, numbers, { view, from: 'scratch' }));
}
