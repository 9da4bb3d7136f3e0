/**
 * The simulator against the same model written as plainly as possible (plain-simulation.ts). Fed with the same draws both must play
 * every run alike, to the last lock; with other draws, from another generator and by another method, the distributions must agree.
 */
import { describe, expect, it } from 'vitest';
import { compile } from '../../src/engine/network.ts';
import { Batch, canPlay } from '../../src/engine/simulation/batch.ts';
import { type Clock, clockOf } from '../../src/engine/simulation/clock.ts';
import { costsOf } from '../../src/engine/simulation/costs.ts';
import { Draws } from '../../src/engine/simulation/draws.ts';
import { Player } from '../../src/engine/simulation/play.ts';
import { PLAIN } from '../../src/engine/simulation/rules.ts';
import type { Game, GameNode, NodeId } from '../../src/game/model.ts';
import { naiveGame, naiveReach } from '../engine/naive.ts';
import { randomGame, seededRandom } from '../random-game.ts';
import {
  type Chance,
  costPlainly,
  type PlainThing,
  plainGame,
  plainMoment,
  playPlainly,
  simulatePlainly,
} from './plain-simulation.ts';
import { seededChance } from './seeded-chance.ts';

const STREAM = 0;

/** A random game that can be won, with hands and pupils of all sorts: more hands than the team has, fewer, one alone. */
function randomLesson(seed: number): Game {
  const random = seededRandom(seed);
  const draw = (below: number) => Math.floor(random() * below);
  for (let tries = 0; ; tries++) {
    const game = randomGame(seed + 1000 * tries, 16 + (seed % 4) * 8, { prizes: 1 + (seed % 3) });
    if (!canPlay(compile(game))) continue;
    const nodes = new Map<NodeId, GameNode>();
    for (const [id, node] of game.nodes)
      nodes.set(id, draw(3) === 0 ? node : { ...node, hands: 1 + draw(5) });
    return { ...game, nodes, head: { lesson: { pupils: draw(16), teams: draw(4), minutes: 5 + draw(20) } } };
  }
}

/** The plain simulation's chance, from the numbers that the engine draws. */
function chanceOf(clock: Clock): Chance {
  const draws = new Draws(clock, 1, STREAM);
  const minutes = Float64Array.from(clock.low);
  let drawn = -1;
  const begin = (run: number) => {
    if (run !== drawn) draws.begin(run, minutes);
    drawn = run;
  };
  const indexOf = (id: NodeId) => clock.network.index.get(id) ?? -1;
  return {
    draw: (run, { id }) => {
      begin(run);
      return minutes[indexOf(id)] ?? Number.NaN;
    },
    choose: (run, choice, open) => {
      begin(run);
      const ranked = open.map((step) => ({ step, word: draws.choice(0, choice, indexOf(step.id)) }));
      const [first] = ranked.sort((a, b) => a.word - b.word);
      if (first === undefined) throw new RangeError('choose: nothing is open');
      return first.step;
    },
  };
}

const seeds = Array.from({ length: 40 }, (_, seed) => seed);

/** Every step is begun, every thing reached by as many pupils at the same minutes in both. */
function expectAlike(game: Game, player: Player, chance: Chance, runs = 30) {
  const { ids } = compile(game);
  const plain = plainGame(game);
  const byId = (values: ArrayLike<number>, none: number) =>
    new Map(ids.flatMap((id, i) => (values[i] === none ? [] : [[id, values[i] ?? Number.NaN]])));
  // Of a box the engine notes when it is at hand, even if it is a step.
  const noted = (minutes: ReadonlyMap<NodeId, number>) =>
    new Map(
      plain.things.flatMap(({ id, kind, isStep }) => {
        const minute = minutes.get(id);
        return isStep && kind !== 'container' && minute !== undefined ? [[id, minute]] : [];
      }),
    );
  for (let run = 0; run < runs; run++) {
    player.play(run);
    const log = player.log(run, 0);
    const { end, possible, begin, pupils, reached } = playPlainly(plain, chance, run);
    expect(log.end).toBeCloseTo(end, 9);
    expectSame(byId(log.begin, Infinity), begin);
    expectSame(byId(log.reached, Infinity), reached);
    expect(byId(log.pupils, 0)).toEqual(pupils);
    expectSame(noted(byId(log.possible, Infinity)), noted(possible));
  }
}

describe('with the same draws', () => {
  it.each(seeds)('random game %i is played alike', (seed) => {
    const game = randomLesson(seed);
    const clock = clockOf(game, compile(game));
    expectAlike(game, new Player(clock, PLAIN, STREAM), chanceOf(clock));
  });

  it.each(seeds.slice(0, 20))('random game %i is played alike, locks first', (seed) => {
    const game = randomLesson(seed);
    const clock = clockOf(game, compile(game));
    const chance = chanceOf(clock);
    expectAlike(game, new Player(clock, { ...PLAIN, choosing: 'locksFirst' }, STREAM), {
      ...chance,
      choose: (run, choice, open, possible) => {
        const locks = open.filter(({ kind }) => kind === 'fastener');
        return chance.choose(run, choice, locks.length > 0 ? locks : open, possible);
      },
    });
  });

  it.each(seeds.slice(0, 20))('random game %i is played alike, newest first', (seed) => {
    const game = randomLesson(seed);
    const clock = clockOf(game, compile(game));
    const chance = chanceOf(clock);
    expectAlike(game, new Player(clock, { ...PLAIN, choosing: 'newestFirst' }, STREAM), {
      ...chance,
      choose: (run, choice, open, possible) => {
        const since = ({ id }: PlainThing) => possible.get(id) ?? Number.NaN;
        const newest = Math.max(...open.map(since));
        return chance.choose(
          run,
          choice,
          open.filter((step) => since(step) >= newest - 1e-6),
          possible,
        );
      },
    });
  });

  it.each(seeds)('random game %i has the same figures', (seed) => {
    const game = randomLesson(seed);
    const network = compile(game);
    const clock = clockOf(game, network);
    const batch = new Batch(clock, PLAIN, STREAM);
    batch.run(60);
    batch.run(41);
    const figures = batch.result();
    const plain = simulatePlainly(plainGame(game), chanceOf(clock), 101);
    expect(figures.runs).toBe(101);
    for (const [i, end] of plain.ends.entries()) expect(figures.ends[i]).toBeCloseTo(end, 9);
    for (const name of ['median', 'p10', 'p90', 'inTime', 'idle'] as const) {
      expect(figures[name], name).toBeCloseTo(plain[name], 9);
    }
    for (const [i, id] of network.ids.entries()) {
      expect(figures.idleWhile[i], id).toBeCloseTo(plain.idleWhile.get(id) ?? 0, 9);
      for (const name of ['p10', 'median', 'p90'] as const) {
        expectMinute(figures.reached[name][i], plain.reached.get(id)?.[name], id);
      }
    }
  });

  it.each(seeds.slice(0, 20))('random game %i has as many open, busy and idle at each minute', (seed) => {
    const RUNS = 30;
    const game = randomLesson(seed);
    const clock = clockOf(game, compile(game));
    const batch = new Batch(clock, PLAIN, STREAM);
    batch.run(RUNS);
    const { minutes, ...profile } = batch.result().profile;
    const plain = plainGame(game);
    const chance = chanceOf(clock);
    const runs = Array.from({ length: RUNS }, (_, run) => playPlainly(plain, chance, run));
    const moments = Array.from(minutes, (minute) => runs.map((run) => plainMoment(plain, run, minute)));
    for (const name of ['open', 'busy', 'idle'] as const) {
      const means = moments.map((each) => each.reduce((sum, moment) => sum + moment[name], 0) / RUNS);
      expect(means.length).toBeGreaterThan(1);
      const off = means.map((mean, at) => Math.abs(mean - (profile[name][at] ?? Number.NaN)));
      expect(Math.max(...off), name).toBeLessThan(1e-9);
    }
  });
});

describe('what steps cost', () => {
  const RUNS = 25;

  it.each(seeds.slice(0, 15))('is the same in random game %i', (seed) => {
    const game = randomLesson(seed);
    const clock = clockOf(game, compile(game));
    const plain = plainGame(game);
    const chance = chanceOf(clock);
    const reached = naiveReach(naiveGame(game));
    const costs = [...costsOf(clock, PLAIN, RUNS, STREAM)].filter((cost) => cost !== undefined);
    const steps = plain.things.filter(({ id, isStep }) => isStep && reached.has(id));
    expect(costs.map(({ step }) => clock.network.ids[step])).toEqual(steps.map(({ id }) => id));
    for (const { step, cost } of costs) {
      const id = clock.network.ids[step] ?? '';
      expect(cost, id).toBeCloseTo(costPlainly(plain, chance, RUNS, id), 9);
    }
  });
});

function expectMinute(seen: number | undefined, expected: number | undefined, id: NodeId) {
  if (expected === Infinity) expect(seen, id).toBe(Infinity);
  else expect(seen, id).toBeCloseTo(expected ?? Number.NaN, 9);
}

function expectSame(seen: ReadonlyMap<NodeId, number>, expected: ReadonlyMap<NodeId, number>) {
  expect([...seen.keys()].sort()).toEqual([...expected.keys()].sort());
  const off = [...expected].map(([id, minute]) => Math.abs(minute - (seen.get(id) ?? Number.NaN)));
  expect(Math.max(0, ...off)).toBeLessThan(1e-9);
}

/** The largest difference between the shares of two sorted samples that are below a value: the Kolmogorov–Smirnov distance. */
function distance(a: readonly number[], b: readonly number[]): number {
  let largest = 0;
  let i = 0;
  let j = 0;
  while (i < a.length && j < b.length) {
    const value = Math.min(a[i] ?? 0, b[j] ?? 0);
    while (i < a.length && (a[i] ?? 0) <= value + 1e-6) i++;
    while (j < b.length && (b[j] ?? 0) <= value + 1e-6) j++;
    largest = Math.max(largest, Math.abs(i / a.length - j / b.length));
  }
  return largest;
}

describe('with other draws', () => {
  const RUNS = 800;

  it.each(seeds.slice(0, 15))('random game %i ends as often at each minute', (seed) => {
    const game = randomLesson(seed);
    const batch = new Batch(clockOf(game, compile(game)), PLAIN, STREAM);
    batch.run(RUNS);
    const plain = simulatePlainly(plainGame(game), seededChance(seed), RUNS);
    // Of two samples of one distribution, one pair in 100,000 is further apart than 2.47 · √(2/n) (Smirnov 1939).
    expect(distance([...batch.result().ends], plain.ends)).toBeLessThan(2.47 * Math.sqrt(2 / RUNS));
  });
});
