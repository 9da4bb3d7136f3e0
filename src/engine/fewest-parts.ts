/**
 * For fewest.ts: what is left to be chosen once the forced events are contracted, in parts that share nothing.
 * Cost: linear.
 */
import type { Flow } from './flow.ts';
import { Pairs, type Rows, reversed, rowOf } from './rows.ts';

/** A part, its events renumbered from 0; nothing in it waits for what is given. */
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
  const given = givenByForced(flow, isStep, forced);
  const open = stillWanted(flow, forced, given);
  return components(flow, open, given).map((members) => partOf(flow, isStep, forced, given, members));
}

/**
 * 1 at each position that others may count on when of the steps only the forced ones are taken. Without rings all that is forced
 * is among them, reached yet or not: every winning set reaches it, so it has to be seen to once, by itself, and what
 * lies behind it falls into parts of its own. With rings that could let two things rest on each other.
 */
function givenByForced(flow: Flow, isStep: Uint8Array, forced: Uint8Array): Uint8Array {
  const given = flow.rings ? new Uint8Array(flow.count) : forced.slice();
  for (let changed = true; changed; changed = changed && flow.rings) {
    changed = false;
    for (let at = 0; at < flow.count; at++) {
      if (given[at] === 1 || (isStep[at] === 1 && forced[at] !== 1) || !comes(flow, at, given)) continue;
      given[at] = 1;
      changed = true;
    }
  }
  return given;
}

/** All that an event waits for, and enough of its choice, is given. */
function comes(flow: Flow, at: number, given: Uint8Array): boolean {
  const { all, some, k } = flow;
  for (let i = all.starts[at] ?? 0; i < (all.starts[at + 1] ?? 0); i++) {
    if (given[all.items[i] ?? 0] !== 1) return false;
  }
  let wanted = k[at] ?? 0;
  for (let i = some.starts[at] ?? 0; wanted > 0 && i < (some.starts[at + 1] ?? 0); i++) {
    wanted -= given[some.items[i] ?? 0] ?? 0;
  }
  return wanted <= 0;
}

/** Positions, ascending, of what is forced and does not come by what is given, and of all that it may rest on. */
function stillWanted(flow: Flow, forced: Uint8Array, given: Uint8Array): Int32Array {
  const wanted = new Uint8Array(flow.count);
  const queue: number[] = [];
  for (let at = 0; at < flow.count; at++) {
    if (forced[at] !== 1 || comes(flow, at, given)) continue;
    wanted[at] = 1;
    queue.push(at);
  }
  // The list grows while it is walked.
  for (const at of queue) {
    for (const rows of [flow.all, flow.some]) {
      for (const need of rowOf(rows, at)) {
        if (given[need] === 1 || wanted[need] === 1) continue;
        wanted[need] = 1;
        queue.push(need);
      }
    }
  }
  const positions: number[] = [];
  for (let at = 0; at < flow.count; at++) if (wanted[at] === 1) positions.push(at);
  return Int32Array.from(positions);
}

/** Positions that hang together through what they wait for, each list ascending. */
function components(flow: Flow, positions: Int32Array, given: Uint8Array): number[][] {
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
        if (given[other] !== 1 && (parent[other] ?? -1) >= 0) parent[rootOf(other)] = rootOf(at);
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
  given: Uint8Array,
  members: readonly number[],
): Part {
  const count = members.length;
  const local = new Map(members.map((at, i) => [at, i]));
  const all = new Pairs(flow.all.items.length);
  const some = new Pairs(flow.some.items.length);
  const k = new Int32Array(count);
  for (const [i, at] of members.entries()) {
    for (let j = flow.all.starts[at] ?? 0; j < (flow.all.starts[at + 1] ?? 0); j++) {
      const need = flow.all.items[j] ?? 0;
      if (given[need] !== 1) all.add(i, local.get(need) ?? 0);
    }
    let wanted = flow.k[at] ?? 0;
    const from = flow.some.starts[at] ?? 0;
    const to = flow.some.starts[at + 1] ?? 0;
    for (let j = from; j < to; j++) wanted -= given[flow.some.items[j] ?? 0] ?? 0;
    if (wanted <= 0) continue;
    k[i] = wanted;
    for (let j = from; j < to; j++) {
      const need = flow.some.items[j] ?? 0;
      if (given[need] !== 1) some.add(i, local.get(need) ?? 0);
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
