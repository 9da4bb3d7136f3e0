/** Games compiled for the simulation, and what any log of a run has to hold to. */
import { expect } from 'vitest';
import { compile } from '../../../src/engine/network.ts';
import { rowOf } from '../../../src/engine/rows.ts';
import { type Clock, clockOf } from '../../../src/engine/simulation/clock.ts';
import type { RunLog } from '../../../src/engine/simulation/model.ts';
import type { Game } from '../../../src/game/model.ts';

export function clockFor(game: Game): Clock {
  return clockOf(game, compile(game));
}

/** The same game with so many pupils in one team. */
export function withLesson(game: Game, lesson: Readonly<Record<string, number>>): Game {
  return { ...game, head: { ...game.head, lesson } };
}

/** Sums of minutes that may differ in their last digits. */
export const CLOSE = 1e-5;
const NEVER = Number.POSITIVE_INFINITY;

/** No step before its needs, none with more pupils than there are, and everything reached as soon as what it waits for. */
export function expectSound(clock: Clock, log: RunLog) {
  expect(faultsOf(clock, log)).toEqual([]);
}

function faultsOf(clock: Clock, log: RunLog): string[] {
  const { network } = clock;
  const { events } = network;
  const faults: string[] = [];
  const hold = (isTrue: boolean, fault: string, event: number) => {
    if (!isTrue) faults.push(`${fault}: ${network.ids[events.node[event] ?? 0]}`);
  };
  const came = (event: number): number => {
    if (event < network.size) return log.reached[event] ?? Number.NaN;
    const node = events.node[event] ?? 0;
    // Of a container that takes time the log tells when it could be tried, which is later.
    return network.isStep[node] === 1 ? expectedAt(event) : (log.possible[node] ?? Number.NaN);
  };
  const expectedAt = (event: number): number => {
    const all = [...rowOf(events.all, event)].map(came);
    const some = [...rowOf(events.some, event)].map(came).sort((a, b) => a - b);
    const k = events.k[event] ?? 0;
    const choice = k === 0 ? 0 : (some[k - 1] ?? NEVER);
    return Math.max(0, events.release[event] ?? 0, choice, ...all);
  };
  for (const prize of network.prizes) hold((log.reached[prize] ?? NEVER) <= log.end, 'not reached', prize);
  for (let event = 0; event < events.count; event++) {
    const isStep = event < network.size && network.isStep[event] === 1;
    if (event >= network.size && network.isStep[events.node[event] ?? 0] === 1) continue;
    const could = (isStep ? log.possible[event] : came(event)) ?? Number.NaN;
    const expected = expectedAt(event);
    if (expected <= log.end + CLOSE) hold(Math.abs(could - expected) <= CLOSE, 'early or late', event);
    else hold(could === NEVER, 'out of nothing', event);
    if (!isStep) continue;
    const begin = log.begin[event] ?? Number.NaN;
    const free = log.free[event] ?? Number.NaN;
    const reached = log.reached[event] ?? Number.NaN;
    const pupils = log.pupils[event] ?? Number.NaN;
    const most = Math.min(clock.lesson.team, clock.hands[event] ?? 0);
    if (begin < NEVER) hold(begin >= could && pupils >= 1 && pupils <= most, 'begun', event);
    else hold(free === NEVER && reached === NEVER && pupils === 0, 'never begun', event);
    hold(free >= begin && reached >= free, 'out of order', event);
  }
  return faults;
}

/** Pupil-minutes worked up to the end. */
export function busyMinutes(log: RunLog): number {
  let busy = 0;
  for (let node = 0; node < log.begin.length; node++) {
    const begin = log.begin[node] ?? 0;
    if (begin < log.end) {
      busy += (log.pupils[node] ?? 0) * (Math.min(log.free[node] ?? 0, log.end) - begin);
    }
  }
  return busy;
}
