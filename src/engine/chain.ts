/**
 * The longest chain: how many steps must follow one another before the last prize, and which.
 * Method: the times of times.ts with every step counting 1 and nothing given out late; then back from the prize along what each
 * start waited for. Cost: as times.ts.
 */
import type { Flow } from './flow.ts';
import type { Network } from './network.ts';
import { type Times, timesOf } from './times.ts';

export interface Chain {
  readonly length: number;
  /** Node indices, first to last. */
  readonly steps: Int32Array;
}

/** Nothing when the game is not solvable. */
export function longestChain(network: Network, flow: Flow): Chain {
  if (!flow.solvable) return { length: 0, steps: new Int32Array(0) };
  const isStep = (at: number): boolean => {
    const event = flow.event[at] ?? 0;
    return event < network.size && network.isStep[event] === 1;
  };
  const ones = Float64Array.from(flow.event, (_, at) => (isStep(at) ? 1 : 0));
  const times = timesOf(flow, ones, new Float64Array(flow.count));
  const back: number[] = [];
  for (const at of walkBack(flow, times)) if (isStep(at)) back.push(flow.event[at] ?? 0);
  return { length: back.length, steps: Int32Array.from(back).reverse() };
}

/** Positions from the prize that finishes last, the first of several, back along what each start rests on, to what starts by itself. */
export function* walkBack(flow: Flow, { start, finish, rank }: Times): Generator<number> {
  let at = flow.prizes[0] ?? 0;
  for (const prize of flow.prizes) if ((finish[prize] ?? 0) > (finish[at] ?? 0)) at = prize;
  for (let before: number | undefined = at; before !== undefined; ) {
    at = before;
    yield at;
    // What has a smaller rank and the same time is what the start rests on, even among things that take no time.
    const isGround = (other: number) => finish[other] === start[at] && (rank[other] ?? 0) < (rank[at] ?? 0);
    before = findIn(flow.all, at, isGround) ?? findIn(flow.some, at, isGround);
  }
}

function findIn(rows: Flow['all'], owner: number, wanted: (item: number) => boolean): number | undefined {
  for (let i = rows.starts[owner] ?? 0; i < (rows.starts[owner + 1] ?? 0); i++) {
    const item = rows.items[i] ?? 0;
    if (wanted(item)) return item;
  }
  return undefined;
}
