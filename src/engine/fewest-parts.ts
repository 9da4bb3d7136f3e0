/**
 * For fewest.ts: what is left to be chosen once the forced events are contracted, in parts that share nothing.
 * Cost: linear.
 */
import type { Flow } from './flow.ts';
import { Pairs, type Rows, reversed } from './rows.ts';

/** A part, its events renumbered from 0; what is reached already is not in it. */
export interface Part {
  readonly count: number;
  /** 1 for a step that is not yet paid for. */
  readonly cost: Uint8Array;
  /** 1 for what must be reached. */
  readonly required: Uint8Array;
  readonly all: Rows;
  readonly some: Rows;
  readonly k: Int32Array;
  readonly allOf: Rows;
  readonly someOf: Rows;
  /** True when events may wait for each other in a ring. */
  readonly rings: boolean;
}

export function partsOf(flow: Flow, isStep: Uint8Array, forced: Uint8Array): Part[] {
  const reached = reachedByForced(flow, isStep, forced);
  const open = stillWanted(flow, forced, reached);
  return components(flow, open).map((members) => partOf(flow, isStep, forced, reached, members));
}

/** 1 at each position that is reached when of the steps only the forced ones ever are. */
function reachedByForced(flow: Flow, isStep: Uint8Array, forced: Uint8Array): Uint8Array {
  const reached = new Uint8Array(flow.count);
  for (let changed = true; changed; changed = changed && flow.rings) {
    changed = false;
    for (let at = 0; at < flow.count; at++) {
      if (reached[at] === 1 || (isStep[at] === 1 && forced[at] !== 1)) continue;
      const { all, some } = flow;
      let comes = true;
      for (let i = all.starts[at] ?? 0; comes && i < (all.starts[at + 1] ?? 0); i++) {
        comes = reached[all.items[i] ?? 0] === 1;
      }
      let wanted = flow.k[at] ?? 0;
      for (let i = some.starts[at] ?? 0; comes && i < (some.starts[at + 1] ?? 0); i++) {
        wanted -= reached[some.items[i] ?? 0] ?? 0;
      }
      if (!comes || wanted > 0) continue;
      reached[at] = 1;
      changed = true;
    }
  }
  return reached;
}

/** Positions, ascending, of all that what is forced and not yet reached may rest on. */
function stillWanted(flow: Flow, forced: Uint8Array, reached: Uint8Array): Int32Array {
  const wanted = new Uint8Array(flow.count);
  const stack: number[] = [];
  const want = (at: number) => {
    if (reached[at] === 1 || wanted[at] === 1) return;
    wanted[at] = 1;
    stack.push(at);
  };
  for (let at = 0; at < flow.count; at++) if (forced[at] === 1) want(at);
  for (let at = stack.pop(); at !== undefined; at = stack.pop()) {
    for (const rows of [flow.all, flow.some]) {
      for (let i = rows.starts[at] ?? 0; i < (rows.starts[at + 1] ?? 0); i++) want(rows.items[i] ?? 0);
    }
  }
  const positions: number[] = [];
  for (let at = 0; at < flow.count; at++) if (wanted[at] === 1) positions.push(at);
  return Int32Array.from(positions);
}

/** Positions that hang together through what they wait for, each list ascending. */
function components(flow: Flow, positions: Int32Array): number[][] {
  const parent = new Int32Array(flow.count).fill(-1);
  for (const at of positions) parent[at] = at;
  const rootOf = (at: number): number => {
    let root = at;
    while (parent[root] !== root) {
      const up = parent[root] ?? root;
      parent[root] = parent[up] ?? up;
      root = up;
    }
    return root;
  };
  for (const at of positions) {
    for (const rows of [flow.all, flow.some]) {
      for (let i = rows.starts[at] ?? 0; i < (rows.starts[at + 1] ?? 0); i++) {
        const other = rows.items[i] ?? 0;
        if ((parent[other] ?? -1) >= 0) parent[rootOf(other)] = rootOf(at);
      }
    }
  }
  const byRoot = new Map<number, number[]>();
  for (const at of positions) {
    const list = byRoot.get(rootOf(at));
    if (list) list.push(at);
    else byRoot.set(rootOf(at), [at]);
  }
  return [...byRoot.values()];
}

function partOf(
  flow: Flow,
  isStep: Uint8Array,
  forced: Uint8Array,
  reached: Uint8Array,
  members: readonly number[],
): Part {
  const count = members.length;
  const local = new Map(members.map((at, i) => [at, i]));
  const all = new Pairs(flow.all.items.length);
  const some = new Pairs(flow.some.items.length);
  const k = new Int32Array(count);
  for (const [i, at] of members.entries()) {
    for (let j = flow.all.starts[at] ?? 0; j < (flow.all.starts[at + 1] ?? 0); j++) {
      const other = local.get(flow.all.items[j] ?? 0);
      if (other !== undefined) all.add(i, other);
    }
    let wanted = flow.k[at] ?? 0;
    const from = flow.some.starts[at] ?? 0;
    const to = flow.some.starts[at + 1] ?? 0;
    for (let j = from; j < to; j++) wanted -= reached[flow.some.items[j] ?? 0] ?? 0;
    if (wanted <= 0) continue;
    k[i] = wanted;
    for (let j = from; j < to; j++) {
      const other = local.get(flow.some.items[j] ?? 0);
      if (other !== undefined) some.add(i, other);
    }
  }
  const allRows = all.rows(count);
  const someRows = some.rows(count);
  return {
    count,
    cost: Uint8Array.from(members, (at) => (isStep[at] === 1 && forced[at] !== 1 ? 1 : 0)),
    required: Uint8Array.from(members, (at) => forced[at] ?? 0),
    all: allRows,
    some: someRows,
    k,
    allOf: reversed(allRows, count),
    someOf: reversed(someRows, count),
    rings: flow.rings,
  };
}
