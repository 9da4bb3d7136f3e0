import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { Batch, canPlay, simulate } from '../../../src/engine/simulation/batch.ts';
import { momentOf } from '../../../src/engine/simulation/moment.ts';
import { Player } from '../../../src/engine/simulation/play.ts';
import { PLAIN, type Rules } from '../../../src/engine/simulation/rules.ts';
import { gameArbitrary, randomGame } from '../../random-game.ts';
import { busyMinutes, CLOSE, clockFor, expectSound, withLesson } from './played.ts';

const lessons = fc.record({ pupils: fc.nat(30), teams: fc.nat(6) });
const choosing = fc.constantFrom('any', 'locksFirst', 'newestFirst' as const);

describe('every batch of runs', () => {
  it('accounts for every pupil-minute, begins nothing early and nothing twice', () => {
    fc.assert(
      fc.property(gameArbitrary(), lessons, choosing, (game, lesson, choice) => {
        const clock = clockFor(withLesson(game, lesson));
        if (!canPlay(clock.network)) return;
        const rules: Rules = { ...PLAIN, choosing: choice };
        const batch = new Batch(clock, rules);
        const player = new Player(clock, rules, 0);
        let idle = 0;
        let longest = 0;
        const runs = 12;
        for (let run = 0; run < runs; run++) {
          player.play(run);
          const log = player.log(run, 0);
          expectSound(clock, log);
          expect(Number.isFinite(log.end)).toBe(true);
          idle += clock.lesson.team * log.end - busyMinutes(log);
          longest = Math.max(longest, log.end);
        }
        batch.run(runs);
        const result = batch.result();
        expect(Math.abs(result.idle * runs - idle)).toBeLessThan(CLOSE * runs);
        expect(result.ends[runs - 1]).toBe(longest);
        for (const waited of result.idleWhile) expect(waited).toBeLessThanOrEqual(result.idle + CLOSE);
        const { minutes, busy, idle: waiting } = result.profile;
        expect(minutes.length).toBeLessThanOrEqual(240);
        for (let i = 0; i < minutes.length; i++) {
          const playing = result.ends.filter((end) => end > (minutes[i] ?? 0)).length / runs;
          expect((busy[i] ?? 0) + (waiting[i] ?? 0)).toBeCloseTo(playing * clock.lesson.team, 9);
        }
      }),
      { numRuns: 300, seed: 1 },
    );
  });

  it('continues a shorter one, and says the same of the same game', () => {
    for (let seed = 0; seed < 25; seed++) {
      const clock = clockFor(randomGame(seed, 30));
      if (!canPlay(clock.network)) continue;
      const parts = new Batch(clock);
      parts.run(7);
      const early = parts.result();
      parts.run(33);
      const whole = simulate(clock, PLAIN, 40);
      expect(parts.result()).toEqual(whole);
      expect(early).toEqual(simulate(structuredClone(clock), PLAIN, 7));
    }
  });

  it('shows at every minute what the run did', () => {
    fc.assert(
      fc.property(gameArbitrary({ prizes: 1 }), lessons, fc.nat(500), (game, lesson, run) => {
        const clock = clockFor(withLesson(game, lesson));
        if (!canPlay(clock.network)) return;
        const player = new Player(clock, PLAIN, 0);
        player.play(run);
        const log = player.log(run, 0);
        const changes = [...new Set([...log.begin, ...log.free, ...log.reached, ...log.possible, 0, log.end])]
          .filter((minute) => minute <= log.end)
          .sort((a, b) => a - b);
        let busy = 0;
        let waiting = 0;
        for (const [i, from] of changes.entries()) {
          const to = changes[i + 1] ?? from;
          if (to - from < 1e-4) continue;
          const moment = momentOf(clock, log, (from + to) / 2);
          expect(moment.busy + moment.waiting).toBe(clock.lesson.team);
          busy += moment.busy * (to - from);
          waiting += moment.waiting * (to - from);
          // As long as somebody waits, nothing is left that could be taken up.
          if (moment.waiting > 0) expect(moment.states).not.toContain('open');
        }
        expect(Math.abs(busy - busyMinutes(log))).toBeLessThan(0.1);
        expect(Math.abs(busy + waiting - clock.lesson.team * log.end)).toBeLessThan(0.1);
        const after = momentOf(clock, log, log.end + 1);
        expect([after.busy, after.waiting]).toEqual([0, 0]);
        for (const prize of clock.network.prizes) expect(after.states[prize]).toBe('done');
      }),
      { numRuns: 300, seed: 2 },
    );
  });
});
