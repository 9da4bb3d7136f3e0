/** Teams wait for each other: before a thing that they share, one finding for each, or for the adults. */
import { teamsPlayed } from '../../engine/simulation/batch.ts';
import type { NodeId } from '../../game/model.ts';
import type { TimedRule } from './timed-finding.ts';

export interface QueueForThing {
  readonly thing: NodeId;
  /** How many of it there are. */
  readonly shared: number;
  readonly teams: number;
  /** That one team waits for it. */
  readonly minutes: number;
}

export interface QueueForAdult {
  readonly adults: number;
  readonly teams: number;
  readonly minutes: number;
}

/** Minutes that a team may wait for others. Common practice, no source. */
const BEARABLE = 2;

export const queueForThing: TimedRule<'queueForThing', QueueForThing> = {
  code: 'queueForThing',
  find({ clock, simulated }) {
    const { teams } = clock.lesson;
    return clock.network.ids.flatMap((thing, i) => {
      const minutes = (simulated.queued[i] ?? 0) / teamsPlayed(teams);
      if (minutes < BEARABLE) return [];
      const values = { thing, shared: clock.shared[i] ?? 1, teams, minutes };
      return [{ code: 'queueForThing', level: 'look', nodes: [thing], links: [], values }];
    });
  },
};

export const queueForAdult: TimedRule<'queueForAdult', QueueForAdult> = {
  code: 'queueForAdult',
  find({ clock, simulated }) {
    const { teams, adults } = clock.lesson;
    const minutes = simulated.queuedForAdult / teamsPlayed(teams);
    if (minutes < BEARABLE) return [];
    return [
      { code: 'queueForAdult', level: 'look', nodes: [], links: [], values: { adults, teams, minutes } },
    ];
  },
};
