/** What one tidying has to arrange: what moves, what stands fast, where the spine is, and where things stand now. */
import type { Game, NodeId } from '../../game/model.ts';
import { judge } from '../../spine/judge.ts';
import { type Columns, type Held, type Joined, join } from '../../spine/spine.ts';
import { firstColumns, mergeHeld } from '../../spine/start.ts';
import { layOut } from '../lay-out.ts';
import type { MapLayout, MapView } from '../layout.ts';
import { standsIn } from '../outline.ts';
import { PUZZLE_WIDTH } from '../sizes.ts';
import { spineWidth, spreadOut } from './across.ts';
import { blocksOf, type MapSpine, mapSpine } from './blocks.ts';
import { fixedOf, withObstacles } from './obstacles.ts';
import { rowsByUse } from './rows.ts';

export const FINAL_ROUNDS = 60;

export interface TidyOptions {
  readonly view?: MapView;
  /** What is tidied: what stands on the mat of these, or has one of these in it. All, when it is left out. */
  readonly only?: ReadonlySet<NodeId>;
  /** 'document': the search begins from where things stand now, and moves what is worth it. 'scratch': as if nothing stood anywhere. */
  readonly from: 'document' | 'scratch';
}

export interface Task {
  readonly game: Game;
  /** With rows in every tray. */
  readonly ordered: Game;
  readonly view: MapView;
  readonly moves: ReadonlySet<NodeId>;
  /** Left edge of what stands fast and is tied to what moves, from that of the spine. */
  readonly fixedX: ReadonlyMap<NodeId, number>;
  readonly now: MapLayout;
  readonly spine: MapSpine;
  readonly joined: Joined;
  readonly start: Columns;
  /** From the arrangement to the mat; undefined when nothing stands fast, for then the whole can go anywhere. */
  readonly shift: { readonly x: number; readonly y: number } | undefined;
  /** Whether it begins from where things stand. */
  readonly stands: boolean;
}

export function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.floor(sorted.length / 2)] ?? 0;
}

export const isPinned = (game: Game, id: NodeId): boolean => game.positions.get(id)?.pinned === true;

function rootsToMove(game: Game, now: MapLayout, only: ReadonlySet<NodeId> | undefined): Set<NodeId> {
  const wanted = only && new Set([...only].map((id) => standsIn(now, id)));
  const moves = new Set<NodeId>();
  for (const [id, slot] of now.slots) {
    if (slot.parent === undefined && !isPinned(game, id) && (wanted?.has(id) ?? true)) moves.add(id);
  }
  return moves;
}

/** Left edge of the spine on the mat: of the pinned puzzles, else of those that move; without any, the middle of what stands fast, else of what moves. */
function spineX(now: MapLayout, moves: ReadonlySet<NodeId>, fixed: ReadonlySet<NodeId>): number {
  const puzzlesOf = (ids: ReadonlySet<NodeId>) =>
    [...ids].flatMap((id) => {
      const slot = now.slots.get(id);
      return slot?.kind === 'puzzle' ? [slot.x] : [];
    });
  const pinned = puzzlesOf(fixed);
  const puzzles = pinned.length > 0 ? pinned : puzzlesOf(moves);
  if (puzzles.length > 0) return Math.round(median(puzzles));
  const middles = [...(fixed.size > 0 ? fixed : moves)].map((id) => {
    const slot = now.slots.get(id);
    return (slot?.x ?? 0) + (slot?.width ?? 0) / 2;
  });
  return Math.round((Math.min(...middles) + Math.max(...middles)) / 2);
}

/** So far from the line of the others, a bar still stands on it. */
const ON_LINE = 2;

/** Left edge of the line on which most of the puzzles that stay stand; undefined when they stand on none. */
function lineOf(now: MapLayout, fixed: ReadonlySet<NodeId>): number | undefined {
  const edges = [...fixed].flatMap((id) => {
    const slot = now.slots.get(id);
    return slot?.kind === 'puzzle' ? [slot.x] : [];
  });
  const line = median(edges);
  const on = edges.filter((x) => Math.abs(x - line) <= ON_LINE);
  return on.length >= 2 && 2 * on.length > edges.length ? line : undefined;
}

/** Where each bar that moves comes among those that stay on the line: right below the last that is played before it. */
function heightsOnLine(
  now: MapLayout,
  numbers: ReadonlyMap<NodeId, number>,
  line: number,
  fixed: ReadonlySet<NodeId>,
): (id: NodeId) => number {
  const numberOf = (id: NodeId) => numbers.get(id) ?? Number.POSITIVE_INFINITY;
  const standing = [...fixed].flatMap((id) => {
    const slot = now.slots.get(id);
    const isOn = slot?.kind === 'puzzle' && Math.abs(slot.x - line) <= ON_LINE;
    return isOn ? [{ number: numberOf(id), y: slot.y }] : [];
  });
  return (id) => {
    const earlier = standing.filter(({ number }) => number < numberOf(id)).map(({ y }) => y);
    return earlier.length > 0 ? Math.max(...earlier) + 1 : Math.min(...standing.map(({ y }) => y)) - 1;
  };
}

/** The sides on which the blocks stand now, each from top to bottom. */
function standingColumns(spine: MapSpine, now: MapLayout, left: number): Columns {
  const middle = left + spineWidth(spine) / 2;
  const slotOf = (i: number) => now.slots.get(spine.blocks[i]?.parts[0]?.id ?? '');
  const bars = spine.blocks.slice(0, spine.bars).map((_, i) => i);
  const others = spine.blocks
    .map((_, i) => i)
    .filter((i) => i >= spine.bars && !spine.held?.has(i))
    .sort((a, b) => (slotOf(a)?.y ?? 0) - (slotOf(b)?.y ?? 0) || a - b);
  const isLeft = (i: number) => (slotOf(i)?.x ?? 0) + (slotOf(i)?.width ?? 0) / 2 < middle;
  return { left: others.filter(isLeft), spine: bars, right: others.filter((i) => !isLeft(i)) };
}

/** Undefined when there is nothing to move. `apart`: what stands fast is kept at a distance (withObstacles). */
export function taskOf(
  game: Game,
  numbers: ReadonlyMap<NodeId, number>,
  view: MapView,
  { only, from }: TidyOptions,
  apart: boolean,
): Task | undefined {
  const now = layOut(game, view);
  const moves = rootsToMove(game, now, only);
  if (moves.size === 0) return undefined;
  const fixed = new Set<NodeId>();
  for (const [id, slot] of now.slots) if (slot.parent === undefined && !moves.has(id)) fixed.add(id);
  const ordered = rowsByUse(game, numbers);
  const first = layOut(
    spreadOut(ordered, () => 0),
    view,
  );
  const areBars = [...moves].every((id) => now.slots.get(id)?.kind === 'puzzle');
  /** A selection of bars joins the line of the others. */
  const line = only && areBars ? lineOf(now, fixed) : undefined;
  const hasBars = [...moves].some((id) => now.slots.get(id)?.kind === 'puzzle');
  /** A selection with a spine of its own is arranged where it is, wherever what it is linked with stands; one without comes beside the bars that use it. */
  const tied = only && line === undefined && hasBars ? new Set<NodeId>() : fixed;
  const x = line ?? spineX(now, moves, tied);
  const stands = from === 'document' && [...moves].some((id) => game.positions.has(id));

  const free = blocksOf(ordered, first, numbers, moves);
  const bars = free.blocks.slice(0, free.bars).map((_, i) => i);
  const joinedFree = join(free);
  const freeStart = stands
    ? standingColumns(free, now, x)
    : firstColumns(joinedFree, { left: [], spine: bars, right: [] });
  if (fixed.size === 0) {
    const common = { game, ordered, view, moves, now, spine: free, joined: joinedFree, start: freeStart };
    return { ...common, fixedX: new Map(), shift: undefined, stands };
  }

  const { y } = judge(joinedFree, freeStart, FINAL_ROUNDS);
  const down = Math.round(
    median(free.blocks.map(({ parts }, i) => (now.slots.get(parts[0]?.id ?? '')?.y ?? 0) - (y[i] ?? 0))),
  );
  const held = new Map<NodeId, Held>();
  const fixedX = new Map<NodeId, number>();
  for (const id of tied) {
    const slot = now.slots.get(id);
    if (!slot) continue;
    fixedX.set(id, slot.x - x);
    const middle = slot.x + slot.width / 2;
    const onSpine = slot.kind === 'puzzle' && middle > x && middle < x + PUZZLE_WIDTH;
    held.set(id, {
      y: slot.y - down,
      ...(!onSpine && { side: middle < x + PUZZLE_WIDTH / 2 ? 'left' : 'right' }),
    });
  }
  const bound = blocksOf(ordered, first, numbers, moves, held);
  const standing = fixedOf(ordered, view, now, fixed).map((one) => ({
    ...one,
    rect: { ...one.rect, x: one.rect.x - x, y: one.rect.y - down },
    top: one.top - down,
    bottom: one.bottom - down,
  }));
  const parted = withObstacles(bound, first, standing, apart);
  const spine = mapSpine(parted.blocks, bound.bars, bound.ties, parted.held);
  const joined = join(spine);
  const onLine = line === undefined ? undefined : heightsOnLine(now, numbers, line, fixed);
  const heightOf = (i: number) => {
    const id = free.blocks[i]?.parts[0]?.id ?? '';
    return onLine?.(id) ?? now.slots.get(id)?.y ?? 0;
  };
  const inOrder = bars.every((bar) => bar === 0 || heightOf(bar - 1) <= heightOf(bar));
  const merged = (column: 'left' | 'spine' | 'right') => {
    const heights = new Float64Array(spine.blocks.length);
    for (const [i, at] of y.entries()) {
      heights[i] = stands && (column !== 'spine' || inOrder) ? heightOf(i) - down : at;
    }
    for (const [i, at] of parted.held) heights[i] = at.y;
    return mergeHeld(parted.columns[column], freeStart[column], heights);
  };
  const start: Columns = { left: merged('left'), spine: merged('spine'), right: merged('right') };
  return { game, ordered, view, moves, fixedX, now, spine, joined, start, shift: { x, y: down }, stands };
}
