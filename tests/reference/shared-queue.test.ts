/**
 * Teams that wait for a shared thing, or for an adult to check, against closed forms and a few lines of bookkeeping of their own.
 * First come, first served: who comes i-th is served when the first of the c servers is free, so that of N who come at once the i-th
 * (from 0) waits ⌊i/c⌋ services. For one server that is s · N(N − 1)/2 in all. For arrivals at different times the recursion of
 * Kiefer and Wolfowitz (1955, On the Theory of Queues with Many Servers, Transactions of the American Mathematical Society 78).
 */
import { describe, expect, it } from 'vitest';
import { compile } from '../../src/engine/network.ts';
import { Batch } from '../../src/engine/simulation/batch.ts';
import { clockOf } from '../../src/engine/simulation/clock.ts';
import type { Simulated } from '../../src/engine/simulation/model.ts';
import { PLAIN, type Rules, statedRules } from '../../src/engine/simulation/rules.ts';
import type { GameHead } from '../../src/game/model.ts';
import { fixed, gameOf, type NodeDraft } from '../game-of.ts';

type Lesson = NonNullable<GameHead['lesson']>;

interface Room {
  readonly nodes: readonly NodeDraft[];
  readonly links: readonly string[];
  readonly lesson: Lesson;
}

/** A lesson of single pupils: nobody has anything to do while they wait. */
function single(teams: number, more: Lesson = {}): Lesson {
  return { pupils: teams, teams, minutes: 1000, ...more };
}

/** A walk, then minutes at the lamp, of which there are `lamps`; the prize is handed over after that. */
function lampRoom(teams: number, lamps: number, minutes: number, walk: NodeDraft['minutes']): Room {
  return {
    nodes: [
      { id: 'walk', kind: 'puzzle', minutes: walk },
      { id: 'lamp', kind: 'tool', shared: lamps },
      { id: 'read', kind: 'puzzle', ...fixed(minutes) },
      { id: 'win', kind: 'prize' },
    ],
    links: ['walk>read', 'lamp>read', 'read>win'],
    lesson: single(teams),
  };
}

/** A puzzle whose answer an adult checks. */
function deskRoom(teams: number, adults: number, checkMinutes: number, work: NodeDraft['minutes']): Room {
  return {
    nodes: [
      { id: 'sum', kind: 'puzzle', minutes: work, checked: true },
      { id: 'win', kind: 'prize' },
    ],
    links: ['sum>win'],
    lesson: single(teams, { adults, checkMinutes }),
  };
}

/** One lesson of all its teams; `alone` takes what joins them away and leaves every draw the same. */
function play({ nodes, links, lesson }: Room, alone: Partial<Rules> = {}, runs = 1) {
  const game = { ...gameOf(nodes, links), head: { lesson } };
  const network = compile(game);
  const clock = clockOf(game, network);
  const batch = new Batch(clock, { ...PLAIN, ...statedRules(clock), ...alone });
  batch.run(runs);
  const result: Simulated = batch.result();
  return {
    ends: [...result.ends],
    adult: result.queuedForAdult,
    /** Of all teams together: pupil-minutes that are counted to a step, and minutes in queues for it. */
    waited: (id: string) => {
      const step = network.index.get(id) ?? -1;
      const of = (values: Float64Array) => (values[step] ?? Number.NaN) * result.ends.length;
      return {
        idle: of(result.idleWhile),
        queueing: of(result.queueing.minutes),
        checking: of(result.checking.minutes),
      };
    },
    queued: (id: string) => result.queued[network.index.get(id) ?? -1] ?? Number.NaN,
  };
}

/** When each who comes leaves, and the minutes that all of them waited: first come, first served by `servers`. */
function served(arrivals: readonly number[], service: number, servers: number) {
  const free = new Array<number>(servers).fill(0);
  let waited = 0;
  const leaves = arrivals
    .toSorted((a, b) => a - b)
    .map((arrival) => {
      free.sort((a, b) => a - b);
      const begin = Math.max(arrival, free[0] ?? 0);
      waited += begin - arrival;
      free[0] = begin + service;
      return begin + service;
    });
  return { leaves, waited };
}

function expectEqual(seen: readonly number[], expected: readonly number[]) {
  expect(seen).toHaveLength(expected.length);
  for (const [i, value] of expected.entries()) expect(seen[i]).toBeCloseTo(value, 5);
}

const AT_ONCE = { low: 0, likely: 0, high: 0 };
const SPREAD = { low: 1, likely: 3, high: 12 };

describe('teams that come at once to a shared thing', () => {
  it.each([1, 2, 3, 4, 8])('%i of them wait s · N(N − 1)/2 for one', (teams) => {
    const minutes = 2.5;
    expect(play(lampRoom(teams, 1, minutes, AT_ONCE)).queued('lamp')).toBeCloseTo(
      (minutes * teams * (teams - 1)) / 2,
      9,
    );
  });

  it.each([
    [4, 2],
    [7, 3],
    [8, 5],
    [3, 6],
  ])('%i of them wait the closed form for %i', (teams, lamps) => {
    const minutes = 3;
    const { ends, queued } = play(lampRoom(teams, lamps, minutes, AT_ONCE));
    const full = Math.floor(teams / lamps);
    // full rounds of `lamps`, then the rest: s · (c · (0 + … + (full − 1)) + rest · full).
    expect(queued('lamp')).toBeCloseTo(
      minutes * ((lamps * full * (full - 1)) / 2 + (teams % lamps) * full),
      9,
    );
    expectEqual(
      ends,
      Array.from({ length: teams }, (_, i) => minutes * (Math.floor(i / lamps) + 1)),
    );
  });
});

describe('teams that come one by one', () => {
  it.each([
    [4, 1],
    [6, 1],
    [6, 2],
    [9, 4],
  ])('%i to %i of a shared thing', (teams, lamps) => {
    const room = lampRoom(teams, lamps, 2, SPREAD);
    const apart = play(room, { teams, sharing: false });
    const together = play(room);
    expect(new Set(apart.ends).size).toBe(teams);
    const { leaves, waited } = served(
      apart.ends.map((end) => end - 2),
      2,
      lamps,
    );
    expect(waited).toBeGreaterThan(0);
    expectEqual(together.ends, leaves);
    expect(together.queued('lamp')).toBeCloseTo(waited, 5);
  });

  it.each([
    [4, 1],
    [6, 1],
    [6, 2],
    [9, 3],
  ])('%i to %i adults who check', (teams, adults) => {
    const check = 1.5;
    const room = deskRoom(teams, adults, check, SPREAD);
    const apart = play(room, { teams, checking: false });
    const together = play(room);
    const { leaves, waited } = served(apart.ends, check, adults);
    expect(waited).toBeGreaterThan(0);
    expectEqual(together.ends, leaves);
    expect(together.adult).toBeCloseTo(waited, 5);
  });
});

describe('teams that come at once to an adult', () => {
  it.each([1, 2, 5])('%i of them wait c · N(N − 1)/2', (teams) => {
    const room = deskRoom(teams, 1, 0.75, fixed(4).minutes);
    expect(play(room).adult).toBeCloseTo((0.75 * teams * (teams - 1)) / 2, 9);
  });
});

describe('teams that wait twice', () => {
  it.each([
    [5, 1, 1],
    [8, 2, 1],
    [8, 3, 2],
  ])('%i of them for %i lamps, then for %i adults who check', (teams, lamps, adults) => {
    const room = lampRoom(teams, lamps, 2, SPREAD);
    const nodes = room.nodes.map((node) => (node.id === 'read' ? { ...node, checked: true } : node));
    const checked = { ...room, nodes, lesson: single(teams, { adults, checkMinutes: 2.5 }) };
    const apart = play(checked, { teams, sharing: false, checking: false });
    const together = play(checked);
    const atLamp = served(
      apart.ends.map((end) => end - 2),
      2,
      lamps,
    );
    const atDesk = served(atLamp.leaves, 2.5, adults);
    expect(atDesk.waited).toBeGreaterThan(0);
    expectEqual(together.ends, atDesk.leaves);
    expect(together.queued('lamp')).toBeCloseTo(atLamp.waited, 5);
    // Single pupils idle all the time that they wait, and each check takes its own minutes.
    const { idle, queueing, checking } = together.waited('read');
    expect(queueing).toBeCloseTo(atLamp.waited, 5);
    expect(checking).toBeCloseTo(atDesk.waited + 2.5 * teams, 5);
    expect(idle).toBeCloseTo(queueing + checking, 5);
    expect(apart.waited('read')).toEqual({ idle: 0, queueing: 0, checking: 0 });
    expect(together.adult).toBeCloseTo(atDesk.waited, 5);
  });
});

describe('teams that are all stuck at once', () => {
  it.each([
    [3, 1],
    [6, 1],
    [6, 2],
  ])('%i of them get hints from %i adults one after the other', (teams, adults) => {
    const hintMinutes = 1.5;
    const room: Room = {
      nodes: [
        { id: 'sum', kind: 'puzzle', ...fixed(9), hintAfter: 4 },
        { id: 'win', kind: 'prize' },
      ],
      links: ['sum>win'],
      lesson: single(teams, { adults, hintMinutes }),
    };
    expectEqual(play(room, { teams }).ends, new Array<number>(teams).fill(9));
    const { leaves } = served(new Array<number>(teams).fill(4), hintMinutes, adults);
    // Who has worked it out sooner than a hint would end it needs none.
    expectEqual(
      play(room, { teams, hints: 1 }).ends,
      leaves.map((end) => Math.min(9, end)),
    );
  });
});
