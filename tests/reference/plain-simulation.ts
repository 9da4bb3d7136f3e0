/**
 * A simulated lesson by the plain model (one team, no hints, nothing shared), said as plainly as possible and straight from the
 * document: objects, lists and maps, and at every instant a look at every thing anew. Shares nothing with src/engine.
 * The oracle of the comparison in plain-simulation.test.ts, and the base of the bench's ratio.
 */
import { handsOf, minutesOf } from '../../src/game/defaults.ts';
import type { Estimate, Game, Kind, NodeId } from '../../src/game/model.ts';
import { naiveGame } from '../engine/naive.ts';

/** Where chance comes from. The same arguments give the same answer. */
export interface Chance {
  /** Minutes that the step takes in this run. */
  draw(run: number, step: PlainThing): number;
  /** One of the open steps (at least one; sorted by id), at this choice of the run, counted from 0; `possible`: since when they are open. */
  choose(
    run: number,
    choice: number,
    open: readonly PlainThing[],
    possible: ReadonlyMap<NodeId, number>,
  ): PlainThing;
}

export interface PlainThing {
  readonly id: NodeId;
  readonly kind: Kind;
  readonly isStep: boolean;
  readonly estimate: Estimate;
  readonly hands: number;
  readonly atMinute: number;
  /** How many of `sources` must be reached. */
  readonly need: number;
  /** A lock that nothing opens. */
  readonly isClosed: boolean;
  holder: PlainThing | undefined;
  readonly sources: PlainThing[];
  readonly fasteners: PlainThing[];
  readonly followers: PlainThing[];
}

export interface PlainGame {
  readonly things: readonly PlainThing[];
  readonly prizes: readonly PlainThing[];
  readonly team: number;
  readonly minutes: number;
}

/** Minutes of play by id; what does not happen in the run is missing. */
export interface PlainRun {
  /** When every prize was reached; Infinity for never. */
  readonly end: number;
  /** From when a step could have been taken up. */
  readonly possible: ReadonlyMap<NodeId, number>;
  readonly begin: ReadonlyMap<NodeId, number>;
  /** How many it kept busy. */
  readonly pupils: ReadonlyMap<NodeId, number>;
  readonly reached: ReadonlyMap<NodeId, number>;
  /** Pupil-minutes without anything to do, up to the end. */
  readonly idle: number;
  /** How much of that fell while this step was being worked. */
  readonly idleWhile: ReadonlyMap<NodeId, number>;
}

/** Two sums of minutes that are no further apart are equal. */
const SAME = 1e-6;

export function plainGame(game: Game): PlainGame {
  const { nodes, parent, needs, prizes, steps } = naiveGame(game);
  const things = new Map<NodeId, PlainThing>();
  for (const [id, node] of nodes) {
    const sources = needs.get(id) ?? [];
    things.set(id, {
      id,
      kind: node.kind,
      isStep: steps.includes(id),
      estimate: minutesOf(node),
      hands: handsOf(node),
      atMinute: node.atMinute ?? 0,
      need: node.need === undefined || node.need === 'all' ? sources.length : node.need,
      isClosed: node.kind === 'fastener' && node.type !== 'latch' && sources.length === 0,
      holder: undefined,
      sources: [],
      fasteners: [],
      followers: [],
    });
  }
  for (const thing of things.values()) {
    const above = things.get(parent.get(thing.id) ?? '');
    thing.holder = above;
    if (above !== undefined && thing.kind === 'fastener') {
      above.fasteners.push(thing);
      thing.followers.push(above);
    } else above?.followers.push(thing);
    for (const id of needs.get(thing.id) ?? []) {
      const source = things.get(id);
      if (source === undefined) continue;
      thing.sources.push(source);
      source.followers.push(thing);
    }
  }
  const { pupils = 24, teams = 4, minutes = 40 } = game.head.lesson ?? {};
  return {
    things: [...things.values()],
    prizes: [...things.values()].filter(({ id }) => prizes.includes(id)),
    team: Math.max(1, Math.floor(pupils / Math.max(1, teams) + 0.5)),
    minutes,
  };
}

/** One run, instant by instant. */
export function playPlainly({ things, prizes, team }: PlainGame, chance: Chance, run: number): PlainRun {
  const possible = new Map<NodeId, number>();
  const begin = new Map<NodeId, number>();
  const pupils = new Map<NodeId, number>();
  const reached = new Map<NodeId, number>();
  const idleWhile = new Map<NodeId, number>();
  let working: { readonly step: PlainThing; readonly until: number }[] = [];
  let now = 0;
  let free = team;
  let idle = 0;
  let choices = 0;

  const has = (thing: PlainThing | undefined) => thing === undefined || reached.has(thing.id);
  const isDue = (minute: number) => minute <= now + SAME;
  const isMet = ({ sources, need }: PlainThing) => sources.filter(has).length >= need;
  const isAtHand = (thing: PlainThing) => isDue(thing.atMinute) && has(thing.holder) && isMet(thing);
  const couldBeReached = (thing: PlainThing) => {
    if (thing.kind === 'container') return isAtHand(thing) && thing.fasteners.every(has);
    if (thing.kind !== 'fastener') return isAtHand(thing);
    const { holder, isClosed, atMinute } = thing;
    return !isClosed && holder !== undefined && isAtHand(holder) && isDue(atMinute) && isMet(thing);
  };

  for (;;) {
    for (const { step } of working.filter(({ until }) => isDue(until))) {
      reached.set(step.id, now);
      free += pupils.get(step.id) ?? 0;
    }
    working = working.filter(({ until }) => !isDue(until));
    for (let before = -1; before < reached.size; ) {
      before = reached.size;
      for (const thing of things) {
        if (!thing.isStep && !reached.has(thing.id) && couldBeReached(thing)) reached.set(thing.id, now);
      }
    }

    let open = things.filter((thing) => thing.isStep && !begin.has(thing.id) && couldBeReached(thing));
    for (const { id } of open) if (!possible.has(id)) possible.set(id, now);
    if (prizes.every(has)) return { end: now, possible, begin, pupils, reached, idle, idleWhile };
    open = open.filter(({ followers }) => followers.length === 0 || !followers.every(has));
    while (free > 0 && open.length > 0) {
      const step = chance.choose(run, choices++, open, possible);
      open = open.filter((other) => other !== step);
      const hands = Math.min(step.hands, free);
      free -= hands;
      begin.set(step.id, now);
      pupils.set(step.id, hands);
      working.push({ step, until: now + chance.draw(run, step) });
    }

    const next = Math.min(
      ...working.map(({ until }) => until),
      ...things.map(({ atMinute }) => atMinute).filter((minute) => !isDue(minute)),
    );
    if (next === Infinity) return { end: next, possible, begin, pupils, reached, idle, idleWhile };
    idle += free * (next - now);
    for (const { step } of working) {
      idleWhile.set(step.id, (idleWhile.get(step.id) ?? 0) + free * (next - now));
    }
    now = next;
  }
}

export interface PlainFigures {
  /** Sorted. */
  readonly ends: readonly number[];
  readonly median: number;
  readonly p10: number;
  readonly p90: number;
  readonly inTime: number;
  readonly idle: number;
  readonly idleWhile: ReadonlyMap<NodeId, number>;
  /** By which minute a thing is reached in so many of the runs; Infinity where it is in fewer. */
  readonly reached: ReadonlyMap<NodeId, Readonly<Record<'p10' | 'median' | 'p90', number>>>;
}

/** Runs 0 to count − 1 of a game that can be won, and what is reported of them. */
export function simulatePlainly(game: PlainGame, chance: Chance, count: number): PlainFigures {
  const runs = Array.from({ length: count }, (_, run) => playPlainly(game, chance, run));
  const ends = runs.map(({ end }) => end).sort((a, b) => a - b);
  const idleWhile = new Map<NodeId, number>();
  for (const run of runs) {
    for (const [id, minutes] of run.idleWhile) idleWhile.set(id, (idleWhile.get(id) ?? 0) + minutes / count);
  }
  const reached = game.things.map(({ id }) => {
    const minutes = runs.map((run) => run.reached.get(id) ?? Infinity).sort((a, b) => a - b);
    return [id, spreadOf(minutes)] as const;
  });
  return {
    ends,
    ...spreadOf(ends),
    reached: new Map(reached),
    inTime: ends.filter((end) => end <= game.minutes + SAME).length / count,
    idle: runs.reduce((sum, { idle }) => sum + idle, 0) / count,
    idleWhile,
  };
}

/** By nearest rank, the upper one where two are in the middle. */
function spreadOf(sorted: readonly number[]) {
  const at = (position: number) => sorted[position] ?? Infinity;
  return {
    p10: at(Math.ceil(sorted.length * 0.1) - 1),
    median: at(Math.floor(sorted.length / 2)),
    p90: at(Math.ceil(sorted.length * 0.9) - 1),
  };
}

/** What is going on in a run at a minute; nothing from its end on. */
export function plainMoment(
  game: PlainGame,
  { end, possible, begin, pupils, reached }: PlainRun,
  minute: number,
) {
  const has = (minutes: ReadonlyMap<NodeId, number>, { id }: PlainThing) =>
    (minutes.get(id) ?? Infinity) <= minute;
  if (end <= minute) return { open: 0, busy: 0, idle: 0 };
  const isPassedOver = ({ followers }: PlainThing) =>
    followers.length > 0 && followers.every((follower) => has(reached, follower));
  const open = game.things.filter(
    (thing) => has(possible, thing) && !has(begin, thing) && !isPassedOver(thing),
  );
  const working = game.things.filter((thing) => has(begin, thing) && !has(reached, thing));
  const busy = working.reduce((sum, { id }) => sum + (pupils.get(id) ?? 0), 0);
  return { open: open.length, busy, idle: game.team - busy };
}

/** Minutes that a step costs: the mean over the runs of the end less the end of the same run with no time for the step. */
export function costPlainly(game: PlainGame, chance: Chance, count: number, id: NodeId): number {
  const without: Chance = {
    draw: (run, step) => (step.id === id ? 0 : chance.draw(run, step)),
    choose: (...choice) => chance.choose(...choice),
  };
  let sum = 0;
  for (let run = 0; run < count; run++) {
    sum += playPlainly(game, chance, run).end - playPlainly(game, without, run).end;
  }
  return sum / count;
}
