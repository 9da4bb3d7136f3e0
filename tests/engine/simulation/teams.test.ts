import { describe, expect, it } from 'vitest';
import { rowOf } from '../../../src/engine/rows.ts';
import { Batch, canPlay } from '../../../src/engine/simulation/batch.ts';
import type { Clock } from '../../../src/engine/simulation/clock.ts';
import { usesOf } from '../../../src/engine/simulation/plan.ts';
import { Player } from '../../../src/engine/simulation/play.ts';
import { PLAIN, type Rules, statedRules } from '../../../src/engine/simulation/rules.ts';
import { type Game, type GameNode, KINDS } from '../../../src/game/model.ts';
import { fixed, gameOf, type NodeDraft } from '../../game-of.ts';
import { randomGame } from '../../random-game.ts';
import { busyMinutes, CLOSE, clockFor, expectSound, withLesson } from './played.ts';

const NEVER = Number.POSITIVE_INFINITY;
const ALL_AT_ONCE: Rules = { ...PLAIN, teams: 4, sharing: true, checking: true };

/** A random game in which every second thing that can be is shared, and every third step is checked. */
function shareIn(game: Game, lesson: Readonly<Record<string, number>>): Game {
  const nodes = [...game.nodes.values()].map((node, i): GameNode => {
    const checked = i % 3 === 0 ? { checked: true } : {};
    if (i % 2 === 0 && (node.kind === 'place' || node.kind === 'container' || node.kind === 'tool')) {
      return { ...node, ...checked, shared: 1 + (i % 3) };
    }
    return { ...node, ...checked };
  });
  return withLesson({ ...game, nodes: new Map(nodes.map((node) => [node.id, node])) }, lesson);
}

/** Games that can be won, with four teams. */
function* games(count: number, lesson: Readonly<Record<string, number>> = {}): Generator<Clock> {
  for (let seed = 0, found = 0; found < count; seed++) {
    const clock = clockFor(shareIn(randomGame(seed, 26), { pupils: 12, teams: 4, ...lesson }));
    if (!canPlay(clock.network)) continue;
    found++;
    yield clock;
  }
}

/** How many teams use a thing at once, at most; only uses that last are seen. */
function mostAtOnce(clock: Clock, player: Player, thing: number): number {
  const { size } = clock.network;
  const uses = usesOf(clock);
  const isTool = KINDS[clock.network.kinds[thing] ?? 0] === 'tool';
  const moments: { minute: number; team: number; change: number }[] = [];
  for (let team = 0; team < player.teams; team++) {
    for (let step = 0; step < size; step++) {
      if (!rowOf(uses, step).includes(thing)) continue;
      const slot = team * size + step;
      const begin = player.begin[slot] ?? NEVER;
      const end = Math.min(player.free[slot] ?? NEVER, player.ends[team] ?? NEVER);
      // A tool that is not found yet is done without.
      const isWithout = isTool && begin < (player.reached[team * size + thing] ?? NEVER);
      if (isWithout || begin + CLOSE > end) continue;
      moments.push({ minute: begin, team, change: 1 }, { minute: end, team, change: -1 });
    }
  }
  moments.sort((a, b) => a.minute - b.minute || a.change - b.change);
  const using = new Int32Array(player.teams);
  let most = 0;
  for (const { team, change } of moments) {
    using[team] = (using[team] ?? 0) + change;
    most = Math.max(most, using.filter((steps) => steps > 0).length);
  }
  return most;
}

describe('several teams', () => {
  it('play as one team does where nothing joins them', () => {
    for (const clock of games(20)) {
      const one = new Player(clock, PLAIN, 0);
      const four = new Player(clock, { ...PLAIN, teams: 4 }, 0);
      for (let run = 0; run < 6; run++) {
        one.play(run);
        four.play(run);
        expect(four.log(run, 0)).toEqual(one.log(run, 0));
      }
      const enough = { ...clock, shared: clock.shared.map((count) => (count > 0 ? 4 : 0)) };
      const sharing = new Player(enough, { ...PLAIN, teams: 4, sharing: true }, 0);
      for (let run = 0; run < 6; run++) {
        four.play(run);
        sharing.play(run);
        for (let team = 0; team < 4; team++) expect(sharing.log(run, team)).toEqual(four.log(run, team));
      }
    }
  });

  it('never use more copies than there are, and account for every pupil-minute', () => {
    let limited = 0;
    for (const clock of games(40)) {
      for (const hints of [0, 2]) {
        const rules = { ...ALL_AT_ONCE, hints };
        const player = new Player(clock, rules, 0);
        const batch = new Batch(clock, rules);
        const runs = 6;
        let idle = 0;
        for (let run = 0; run < runs; run++) {
          player.play(run);
          for (let team = 0; team < 4; team++) {
            const log = player.log(run, team);
            expect(log.end).toBeLessThan(NEVER);
            expectSound(clock, log);
            idle += clock.lesson.team * log.end - busyMinutes(log);
          }
          for (let thing = 0; thing < clock.network.size; thing++) {
            const copies = clock.shared[thing] ?? 0;
            if (copies === 0 || copies >= 4) continue;
            const most = mostAtOnce(clock, player, thing);
            expect(most).toBeLessThanOrEqual(copies);
            if (most === copies) limited++;
          }
        }
        batch.run(runs);
        const result = batch.result();
        expect(Math.abs(result.idle * runs * 4 - idle)).toBeLessThan(CLOSE * runs * 4);
        expect(result.ends).toHaveLength(runs * 4);
        for (const minutes of [...result.queued, result.queuedForAdult])
          expect(minutes).toBeGreaterThanOrEqual(0);
      }
    }
    expect(limited).toBeGreaterThan(50);
  });

  const chest: NodeDraft[] = [
    { id: 'chest', kind: 'container', shared: 1 },
    { id: 'first', kind: 'fastener', on: 'chest', type: 'latch', hands: 1, ...fixed(2) },
    { id: 'second', kind: 'fastener', on: 'chest', type: 'latch', hands: 1, ...fixed(3) },
    { id: 'prize', kind: 'prize', in: 'chest' },
  ];

  it('open a shared box one after the other, each both of its locks at once', () => {
    const clock = clockFor(withLesson(gameOf(chest), { pupils: 6, teams: 3 }));
    const player = new Player(clock, statedRules(clock), 0);
    const firsts = new Set<number>();
    for (let run = 0; run < 30; run++) {
      player.play(run);
      expect([...player.ends].sort((a, b) => a - b)).toEqual([3, 6, 9]);
      firsts.add(player.ends.indexOf(3));
    }
    // Who comes first is drawn: every team is first now and then.
    expect(firsts.size).toBe(3);
    expect(player.queued[clock.network.index.get('chest') ?? -1]).toBe(30 * 2 * (3 + 6));
  });

  it('wait for a lamp that is needed through a clue, and do other things meanwhile', () => {
    const game = gameOf(
      [
        { id: 'lamp', kind: 'tool', shared: 1 },
        { id: 'faint', kind: 'clue' },
        { id: 'read', kind: 'puzzle', hands: 1, ...fixed(4) },
        { id: 'other', kind: 'puzzle', hands: 1, ...fixed(4) },
        { id: 'both', kind: 'puzzle', hands: 1, ...fixed(1) },
        { id: 'prize', kind: 'prize' },
      ],
      ['lamp>faint', 'faint>read', 'read>both', 'other>both', 'both>prize'],
    );
    const clock = clockFor(withLesson(game, { pupils: 2, teams: 2 }));
    const player = new Player(clock, statedRules(clock), 0);
    for (let run = 0; run < 20; run++) {
      player.play(run);
      // One team begins with the lamp and the other, one pupil each, with the other task whatever it chose: nobody loses time.
      const ends = [...player.ends].sort((a, b) => a - b);
      expect([
        [9, 9],
        [9, 13],
      ]).toContainEqual(ends);
    }
  });
});

describe('the adult', () => {
  const checked = (adults: number) => {
    const nodes: NodeDraft[] = [
      { id: 'z', kind: 'puzzle', hands: 1, checked: true, ...fixed(4) },
      { id: 'prize', kind: 'prize' },
    ];
    const lesson = { pupils: 3, teams: 3, adults, checkMinutes: 2 };
    const clock = clockFor(withLesson(gameOf(nodes, ['z>prize']), lesson));
    const batch = new Batch(clock, statedRules(clock));
    batch.run(5);
    return batch.result();
  };

  it('checks one after the other, while pupils are free', () => {
    const one = checked(1);
    expect([...one.ends.subarray(0, 15)]).toEqual([6, 6, 6, 6, 6, 8, 8, 8, 8, 8, 10, 10, 10, 10, 10]);
    expect(one.queuedForAdult).toBe(2 + 4);
    expect(one.idle).toBe((2 + 4 + 6) / 3);
    expect(checked(2).ends[14]).toBe(8);
    expect(checked(3).ends[14]).toBe(6);
  });

  it('who is not there checks nothing, and nobody waits for it', () => {
    expect([...checked(0).ends]).toEqual(new Array(15).fill(4));
  });

  const stuck = (hints: number, adults = 1) => {
    const nodes: NodeDraft[] = [
      { id: 'a', kind: 'puzzle', hands: 1, hintAfter: 3, ...fixed(10) },
      { id: 'b', kind: 'puzzle', hands: 1, hintAfter: 3, ...fixed(3.5) },
      { id: 'c', kind: 'puzzle', hands: 1, hintAfter: 3, ...fixed(2) },
      { id: 'prize', kind: 'prize' },
    ];
    const lesson = { pupils: 2, teams: 1, adults, hintMinutes: 1 };
    const clock = clockFor(withLesson(gameOf(nodes, ['a>b', 'b>c', 'c>prize']), lesson));
    const player = new Player(clock, { ...PLAIN, hints }, 0);
    player.play(0);
    return player.ends[0];
  };

  it('gives hints as long as there are any, and none makes a step longer', () => {
    expect(stuck(0)).toBe(15.5);
    // 'a' is done at 4 instead of 10.
    expect(stuck(1)).toBe(9.5);
    // The second hint, due when 'b' lacks half a minute, saves nothing.
    expect(stuck(2)).toBe(9.5);
    expect(stuck(3, 0)).toBe(15.5);
  });

  it('gives a team no hint more than it has', () => {
    for (const clock of games(15, { hintMinutes: 0.01 })) {
      const size = clock.network.size;
      const rules: Rules = { ...PLAIN, hints: 1 };
      const without = new Player({ ...clock, hintAfter: clock.hintAfter.map(() => NEVER) }, rules, 0);
      const given = new Player(clock, rules, 0);
      for (let run = 0; run < 20; run++) {
        without.play(run);
        given.play(run);
        let shortened = 0;
        for (let step = 0; step < size; step++) {
          const took = (given.free[step] ?? NEVER) - (given.begin[step] ?? NEVER);
          const would = (without.free[step] ?? NEVER) - (without.begin[step] ?? NEVER);
          // Infinity where the work was cut short by the end of the play, NaN where it was never begun.
          if (would < NEVER && took < would - CLOSE) shortened++;
          expect(took > would + CLOSE && would < NEVER && took < NEVER).toBe(false);
        }
        expect(shortened).toBeLessThanOrEqual(1);
      }
    }
  });
});
