/**
 * Which block stands on which side of the spine, and in which order: simulated annealing (Kirkpatrick, Gelatt and Vecchi 1983)
 * from a fixed seed, on the sum of vertical distances, crossings, lines that cross the spine, and the height of the whole.
 */
import type { Tie } from './blocks.ts';
import { type Columns, type Joined, packed, settle, wanted } from './columns.ts';

/** In pixels of vertical distance that each is worth. */
const ACROSS_SPINE = 500;
const CROSSING = 24;
const HEIGHT = 3;
const ROUNDS = 3;

/** Numbers in [0, 1): a linear congruential generator modulo 2^32, its constants from Press et al., Numerical Recipes. Good enough to wander with. */
function randomFrom(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 2 ** 32;
  };
}

/** Pairs of lines in one channel whose ends are in opposite order. */
function crossings(lines: { near: number; far: number }[]): number {
  lines.sort((a, b) => a.near - b.near || a.far - b.far);
  let count = 0;
  for (const [i, a] of lines.entries()) {
    for (let j = i + 1; j < lines.length; j++) {
      if ((lines[j]?.far ?? 0) < a.far - 1) count++;
    }
  }
  return count;
}

function heightOf(joined: Joined, columns: Columns, y: Float64Array): number {
  let top = Number.POSITIVE_INFINITY;
  let bottom = Number.NEGATIVE_INFINITY;
  for (const column of [columns.left, columns.spine, columns.right]) {
    for (const i of column) {
      top = Math.min(top, y[i] ?? 0);
      bottom = Math.max(bottom, (y[i] ?? 0) + (joined.blocks[i]?.height ?? 0));
    }
  }
  return bottom > top ? bottom - top : 0;
}

export interface Judged {
  readonly columns: Columns;
  readonly y: Float64Array;
  readonly cost: number;
}

export function judge(joined: Joined, columns: Columns, rounds = ROUNDS): Judged {
  const y = packed(joined, columns);
  settle(joined, columns, y, rounds);
  const side = new Map<number, 'left' | 'right'>();
  for (const i of columns.left) side.set(i, 'left');
  for (const i of columns.right) side.set(i, 'right');
  const channels = {
    left: [] as { near: number; far: number }[],
    right: [] as { near: number; far: number }[],
  };
  let cost = HEIGHT * heightOf(joined, columns, y);
  const end = (tie: Tie, which: 'from' | 'to') =>
    which === 'from' ? (y[tie.from] ?? 0) + tie.fromY : (y[tie.to] ?? 0) + tie.toY;
  for (const tie of joined.ties) {
    const a = end(tie, 'from');
    const b = end(tie, 'to');
    cost += Math.abs(a - b);
    const sideA = side.get(tie.from);
    const sideB = side.get(tie.to);
    if (sideA && sideB && sideA !== sideB) cost += ACROSS_SPINE;
    else if (sideA && !sideB) channels[sideA].push({ near: b, far: a });
    else if (sideB && !sideA) channels[sideB].push({ near: a, far: b });
  }
  cost += CROSSING * (crossings(channels.left) + crossings(channels.right));
  return { columns, y, cost };
}

/** Two sides that are about as high, in the order of first use, each block where it adds least. */
function firstColumns(joined: Joined): Columns {
  const spine = joined.blocks.slice(0, joined.puzzles).map((_, i) => i);
  let columns: Columns = { left: [], spine, right: [] };
  for (let i = joined.puzzles; i < joined.blocks.length; i++) {
    const left = judge(joined, { ...columns, left: [...columns.left, i] });
    const right = judge(joined, { ...columns, right: [...columns.right, i] });
    columns = left.cost <= right.cost ? left.columns : right.columns;
  }
  return columns;
}

const without = (column: readonly number[], block: number) => column.filter((i) => i !== block);

function inserted(column: readonly number[], block: number, place: number): readonly number[] {
  return [...column.slice(0, place), block, ...column.slice(place)];
}

/** One block moved to another place: on either side, where its links lead or a place beside that. */
function neighbour(joined: Joined, { columns, y }: Judged, random: () => number): Columns {
  const block = joined.puzzles + Math.floor(random() * (joined.blocks.length - joined.puzzles));
  const wasLeft = columns.left.includes(block);
  const toLeft = random() < 0.5 ? !wasLeft : wasLeft;
  const left = without(columns.left, block);
  const right = without(columns.right, block);
  const column = toLeft ? left : right;
  const want = wanted(joined, y, block).y;
  const natural = column.filter((i) => (y[i] ?? 0) < want).length;
  const shift = Math.floor(random() * 5) - 2;
  const place = Math.min(column.length, Math.max(0, natural + shift));
  const moved = inserted(column, block, place);
  return toLeft ? { ...columns, left: moved, right } : { ...columns, left, right: moved };
}

/** Work of one search, in blocks and links looked at: a count and not a clock, so that a game always gets the same arrangement. */
const WORK = 80_000;
const TRIALS_EACH = 60;
const START = 300;
const END = 4;

/** The best columns found. `cancelled` is asked before each trial; when it says yes, the best so far is given. */
export function search(joined: Joined, cancelled: () => boolean): Judged {
  let current = judge(joined, firstColumns(joined));
  let best = current;
  const movable = joined.blocks.length - joined.puzzles;
  const work = joined.blocks.length + joined.ties.length;
  const trials = Math.min(TRIALS_EACH * movable, Math.ceil(WORK / work));
  const random = randomFrom(20_011);
  for (let trial = 0; trial < trials && !cancelled(); trial++) {
    const heat = START * (END / START) ** (trial / trials);
    const next = judge(joined, neighbour(joined, current, random));
    if (next.cost <= current.cost || random() < Math.exp((current.cost - next.cost) / heat)) current = next;
    if (current.cost < best.cost) best = current;
  }
  return best;
}
