/** A step from which no way leads to a prize, and which still makes the game end later. One finding for each. */
import type { Network } from '../../engine/network.ts';
import type { NodeId } from '../../game/model.ts';
import type { TimedRule } from './timed-finding.ts';

export interface NeedlessStep {
  readonly step: NodeId;
  /** By which the game ends sooner without it. */
  readonly minutes: number;
}

/** Minutes that a red herring may cost. Common practice, no source. */
const TOLERABLE = 2;

/** 1 for each node from which a way leads to a prize: by a link, by what it holds, from a lock to its box. */
export function leadsToPrize({ size, prizes, needs, parent, fasteners }: Network): Uint8Array {
  const leads = new Uint8Array(size);
  const next = [...prizes];
  for (let node = next.pop(); node !== undefined; node = next.pop()) {
    if (leads[node] === 1) continue;
    leads[node] = 1;
    for (const rows of [needs, fasteners]) {
      next.push(...rows.items.subarray(rows.starts[node] ?? 0, rows.starts[node + 1] ?? 0));
    }
    const holder = parent[node] ?? -1;
    if (holder >= 0) next.push(holder);
  }
  return leads;
}

export const needlessStep: TimedRule<'needlessStep', NeedlessStep> = {
  code: 'needlessStep',
  find({ clock, costs }) {
    if (!costs) return [];
    const { ids, isStep } = clock.network;
    const leads = leadsToPrize(clock.network);
    return ids.flatMap((step, i) => {
      const minutes = costs.minutes[i] ?? 0;
      if (isStep[i] !== 1 || leads[i] === 1 || minutes < TOLERABLE || clock.forFun[i] === 1) return [];
      return [{ code: 'needlessStep', level: 'look', nodes: [step], links: [], values: { step, minutes } }];
    });
  },
};
