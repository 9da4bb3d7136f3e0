/** What an arrangement costs: vertical distances, crossings, lines from side to side, the height of the whole, and what is too long. */
import { leastHeight, packed, settle } from './columns.ts';
import type { Column, Columns, Joined } from './spine.ts';

const COLUMNS: readonly Column[] = ['left', 'spine', 'right'];

/** An arrangement with its upper edges. `cost` is in units. */
export interface Judged {
  readonly columns: Columns;
  readonly y: Float64Array;
  readonly cost: number;
}

/** A line in a channel by the heights of its ends: at the spine, and at the column. */
interface Line {
  readonly near: number;
  readonly far: number;
}

/** Pairs of lines in one channel whose ends are in opposite order by more than the slack. */
function crossings(lines: Line[], slack: number): number {
  lines.sort((a, b) => a.near - b.near || a.far - b.far);
  let count = 0;
  for (let i = 0; i < lines.length; i++) {
    const limit = (lines[i]?.far ?? 0) - slack;
    for (let j = i + 1; j < lines.length; j++) if ((lines[j]?.far ?? 0) < limit) count++;
  }
  return count;
}

function wholeHeight({ heights }: Joined, columns: Columns, y: Float64Array): number {
  let top = Number.POSITIVE_INFINITY;
  let bottom = Number.NEGATIVE_INFINITY;
  for (const column of COLUMNS) {
    const ids = columns[column];
    const first = ids[0];
    const last = ids.at(-1);
    if (first === undefined || last === undefined) continue;
    top = Math.min(top, y[first] ?? 0);
    bottom = Math.max(bottom, (y[last] ?? 0) + (heights[last] ?? 0));
  }
  return bottom > top ? bottom - top : 0;
}

function excessOf(joined: Joined, columns: Columns): number {
  let excess = 0;
  for (const column of COLUMNS) {
    const band = joined.spine.bands?.[column];
    if (band) excess += Math.max(0, leastHeight(joined, columns[column]) - (band.bottom - band.top));
  }
  return excess;
}

/** What the columns cost, with these upper edges. */
export function costOf(joined: Joined, columns: Columns, y: Float64Array): number {
  const { costs, spine } = joined;
  const side = new Int8Array(y.length);
  for (const i of columns.left) side[i] = 1;
  for (const i of columns.right) side[i] = 2;
  const left: Line[] = [];
  const right: Line[] = [];
  const reach = costs.reach * spine.unit;
  let distance = 0;
  let across = 0;
  for (const { from, fromY, to, toY, weight } of joined.ties) {
    const a = (y[from] ?? 0) + fromY;
    const b = (y[to] ?? 0) + toY;
    distance += weight * Math.min(reach, Math.abs(a - b));
    const sideA = side[from] ?? 0;
    const sideB = side[to] ?? 0;
    if (sideA === sideB) continue;
    if (sideA > 0 && sideB > 0) across += weight;
    else if (sideA > 0) (sideA === 1 ? left : right).push({ near: b, far: a });
    else (sideB === 1 ? left : right).push({ near: a, far: b });
  }
  const lengths =
    distance + costs.height * wholeHeight(joined, columns, y) + costs.excess * excessOf(joined, columns);
  const slack = spine.unit / 16;
  return (
    lengths / spine.unit +
    costs.across * across +
    costs.crossing * (crossings(left, slack) + crossings(right, slack))
  );
}

/** The columns with the heights that they settle to. `rounds`: few while searching, some 60 at the end. */
export function judge(joined: Joined, columns: Columns, rounds: number): Judged {
  const y = packed(joined, columns);
  settle(joined, columns, y, rounds);
  return { columns, y, cost: costOf(joined, columns, y) };
}
