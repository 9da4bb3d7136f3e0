import { describe, expect, it } from 'vitest';
import { canPlay } from '../../../src/engine/simulation/batch.ts';
import type { Clock } from '../../../src/engine/simulation/clock.ts';
import { costsOf } from '../../../src/engine/simulation/costs.ts';
import { Player } from '../../../src/engine/simulation/play.ts';
import { PLAIN } from '../../../src/engine/simulation/rules.ts';
import { fixed, gameOf, type NodeDraft } from '../../game-of.ts';
import { randomGame } from '../../random-game.ts';
import { clockFor, withLesson } from './played.ts';

function costs(clock: Clock, runs: number) {
  const byId = new Map<string, { cost: number; decides: number }>();
  for (const each of costsOf(clock, PLAIN, runs)) {
    if (each) byId.set(clock.network.ids[each.step] ?? '', { cost: each.cost, decides: each.decides });
  }
  return byId;
}

describe('what a step costs', () => {
  it('is what the mean end loses when the step is played without time', () => {
    for (let seed = 0; seed < 12; seed++) {
      const clock = clockFor(withLesson(randomGame(seed, 25), { pupils: 4, teams: 1 }));
      if (!canPlay(clock.network)) continue;
      const runs = 20;
      for (const [id, { cost, decides }] of costs(clock, runs)) {
        const step = clock.network.index.get(id) ?? -1;
        const low = clock.low.slice();
        const likely = clock.likely.slice();
        const high = clock.high.slice();
        for (const estimates of [low, likely, high]) estimates[step] = 0;
        const player = new Player(clock, PLAIN, 0);
        const changed = new Player({ ...clock, low, likely, high }, PLAIN, 0);
        let saved = 0;
        for (let run = 0; run < runs; run++) {
          player.play(run);
          changed.play(run);
          saved += (player.ends[0] ?? 0) - (changed.ends[0] ?? 0);
        }
        expect(cost).toBeCloseTo(saved / runs, 9);
        expect(decides).toBeGreaterThanOrEqual(0);
        expect(decides).toBeLessThanOrEqual(1);
      }
    }
  });

  const searches = (hands: number): NodeDraft[] => [
    { id: 'a', kind: 'place', hands, ...fixed(2) },
    { id: 'b', kind: 'place', hands, ...fixed(3) },
    { id: 'ka', kind: 'key', in: 'a' },
    { id: 'kb', kind: 'key', in: 'b' },
    { id: 'z', kind: 'puzzle', hands: 1, ...fixed(1) },
    { id: 'prize', kind: 'prize' },
  ];
  const links = ['ka>z', 'kb>z', 'z>prize'];

  it('counts what drag does not: with hands for only one, each search costs all its time', () => {
    const enough = costs(clockFor(withLesson(gameOf(searches(1), links), { pupils: 2, teams: 1 })), 8);
    expect(enough).toEqual(
      new Map([
        ['a', { cost: 0, decides: 0 }],
        ['b', { cost: 1, decides: 1 }],
        ['z', { cost: 1, decides: 1 }],
      ]),
    );
    const few = costs(clockFor(withLesson(gameOf(searches(1), links), { pupils: 1, teams: 1 })), 8);
    // Whichever comes second waited for the pupil of the first.
    expect(few).toEqual(
      new Map([
        ['a', { cost: 2, decides: 1 }],
        ['b', { cost: 3, decides: 1 }],
        ['z', { cost: 1, decides: 1 }],
      ]),
    );
  });
});
