/** The pace held against the runs, counted by hand. */
import { describe, expect, it } from 'vitest';
import { canPlay } from '../../../src/engine/simulation/batch.ts';
import type { Clock } from '../../../src/engine/simulation/clock.ts';
import { type Pace, paceOf } from '../../../src/engine/simulation/pace.ts';
import { Player } from '../../../src/engine/simulation/play.ts';
import { PLAIN, type Rules, statedRules } from '../../../src/engine/simulation/rules.ts';
import { fixed, gameOf, type NodeDraft } from '../../game-of.ts';
import { jammed } from '../../helps/jam.ts';
import { randomGame } from '../../random-game.ts';
import { clockFor, expectSound, withLesson } from './played.ts';

function pace(clock: Clock, rules: Rules = PLAIN, runs = 400): Pace {
  const work = paceOf(clock, rules, runs);
  for (;;) {
    const { done, value } = work.next();
    if (done) return value;
  }
}

const BELL = 1e-6;

/** The ends of all runs, and when a node was reached in each; with a step given away where one is. */
function played(clock: Clock, runs: readonly number[], node: number, cut?: { step: number; minute: number }) {
  const player = new Player(clock, PLAIN, 0);
  return runs.map((run) => {
    player.play(run, -1, cut);
    return { run, end: player.ends[0] ?? Number.NaN, reached: player.reached[node] ?? Number.NaN };
  });
}

const first = (count: number) => Array.from({ length: count }, (_, run) => run);

describe('the pace of locks', () => {
  it('is by nearest rank over the runs that end by the bell, as counted by hand', () => {
    const clock = clockFor(jammed(24));
    const { locks, inTime, late } = pace(clock);
    const bell = 24 + BELL;
    expect(locks.map(({ lock }) => clock.network.ids[lock])).toEqual(['jam', 'letters', 'wheels']);
    for (const { lock, half, fourFifths } of locks) {
      const opened = played(clock, first(400), lock)
        .filter(({ end }) => end <= bell)
        .map(({ reached }) => reached)
        .sort((a, b) => a - b);
      expect(inTime).toBe(opened.length);
      expect(inTime + late).toBe(400);
      const open = (minute: number) => opened.filter((at) => at <= minute).length / opened.length;
      expect(open(half)).toBeGreaterThanOrEqual(0.5);
      expect(open(half - 1e-9)).toBeLessThan(0.5);
      expect(open(fourFifths)).toBeGreaterThanOrEqual(0.8);
      expect(open(fourFifths - 1e-9)).toBeLessThan(0.8);
    }
  });

  it('says nothing of locks where no lesson ends in time, and nothing of cuts where none is late', () => {
    expect(pace(clockFor(jammed(5)))).toMatchObject({ inTime: 0, late: 400, locks: [] });
    expect(pace(clockFor(jammed(90)))).toMatchObject({ inTime: 400, late: 0, cuts: [] });
  });

  it('leaves out a lock that fewer than half of the runs open', () => {
    const nodes: readonly NodeDraft[] = [
      { id: 'sum', kind: 'puzzle', hands: 6, ...fixed(4) },
      { id: 'medal', kind: 'prize' },
      { id: 'tin', kind: 'container' },
      { id: 'spare', kind: 'fastener', on: 'tin', type: 'latch', ...fixed(30) },
    ];
    const clock = clockFor(withLesson(gameOf(nodes, ['sum>medal']), { pupils: 6, teams: 1, minutes: 90 }));
    expect(pace(clock).inTime).toBe(400);
    const minutes = played(clock, first(400), clock.network.index.get('spare') ?? -1);
    const open = minutes.filter(({ reached }) => reached < Number.POSITIVE_INFINITY).length;
    expect(pace(clock).locks.length).toBe(open >= 200 ? 1 : 0);
  });
});

describe('what can be given away when it runs late', () => {
  const bell = 22;
  const clock = clockFor(jammed(bell));
  const { cuts, late } = pace(clock);

  it('lets four fifths of the late runs that have it before them end in time, and a minute later not', () => {
    expect(late).toBeGreaterThan(100);
    expect(cuts.length).toBeGreaterThan(0);
    for (const { step, minute } of cuts) {
      const runs = played(clock, first(400), step)
        .filter(({ end }) => end > bell + BELL)
        .slice(0, 100);
      const holds = (at: number) => {
        const before = runs.filter(({ reached }) => reached > at + BELL);
        if (before.length < 25) return false;
        const saved = played(
          clock,
          before.map(({ run }) => run),
          step,
          { step, minute: at },
        );
        return saved.filter(({ end }) => end <= bell + BELL).length >= 0.8 * before.length;
      };
      expect(holds(minute), `${clock.network.ids[step]} at ${minute}`).toBe(true);
      expect(minute).toBeLessThan(bell);
      if (minute + 1 < bell)
        expect(holds(minute + 1), `${clock.network.ids[step]} after ${minute}`).toBe(false);
    }
  });

  it('is the same again, and for teams that share too', () => {
    expect(pace(clock)).toEqual(pace(clock));
    const shared = gameOf(
      [
        { id: 'lamp', kind: 'tool', shared: 1 },
        { id: 'ink', kind: 'clue', minutes: { low: 2, likely: 4, high: 9 } },
        { id: 'sum', kind: 'puzzle', minutes: { low: 1, likely: 2, high: 6 } },
        { id: 'medal', kind: 'prize' },
      ],
      ['lamp>ink', 'ink>sum', 'sum>medal'],
    );
    const four = clockFor(withLesson(shared, { pupils: 12, teams: 4, minutes: 14 }));
    const told = pace(four, statedRules(four), 200);
    expect(told.inTime + told.late).toBe(800);
    expect(told.cuts.map(({ step }) => four.network.ids[step])).toContain('sum');
    for (const { minute } of told.cuts)
      expect(Number.isInteger(minute) && minute >= 1 && minute < 14).toBe(true);
  });
});

describe('a run in which a step is given away', () => {
  it('goes as it would until then, has the step done at that minute at the latest, and holds to the laws after', () => {
    let cut = 0;
    for (let seed = 0; seed < 40; seed++) {
      const clock = clockFor(withLesson(randomGame(seed, 20), { pupils: 3, teams: 1 }));
      if (!canPlay(clock.network)) continue;
      const plain = new Player(clock, PLAIN, 0);
      const player = new Player(clock, PLAIN, 0);
      for (let run = 0; run < 6; run++) {
        plain.play(run);
        const whole = plain.log(run, 0);
        const minute = whole.end / 2;
        for (const [step, isStep] of clock.network.isStep.entries()) {
          if (isStep !== 1) continue;
          player.play(run, -1, { step, minute });
          const log = player.log(run, 0);
          if ((whole.reached[step] ?? 0) <= minute) {
            expect(log).toEqual(whole);
            continue;
          }
          cut += 1;
          expect(log.end).toBeGreaterThanOrEqual(minute);
          if (log.end > minute) expect(log.reached[step]).toBeCloseTo(minute, 9);
          expect(log.reached.filter((at) => at < minute)).toEqual(whole.reached.filter((at) => at < minute));
          expect(log.begin.filter((at) => at < minute)).toEqual(whole.begin.filter((at) => at < minute));
        }
        // The player plays on as if nothing had been.
        player.play(run);
        expect(player.log(run, 0)).toEqual(whole);
        expectSound(clock, player.log(run, 0));
      }
    }
    expect(cut).toBeGreaterThan(200);
  });
});
