/** What is said of how long a game takes: for any game sentences without a figure that is none, and all from one result. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { figuresOf } from '../../app/engine/figures.ts';
import { heatOf } from '../../app/flow/heat.ts';
import { compile } from '../../src/engine/network.ts';
import { canPlay } from '../../src/engine/simulation/batch.ts';
import { clockOf } from '../../src/engine/simulation/clock.ts';
import type { Figures } from '../../src/engine/simulation/figures.ts';
import { assess } from '../../src/findings/assess.ts';
import type { TimedFinding } from '../../src/findings/timed/timed-finding.ts';
import type { Game } from '../../src/game/model.ts';
import { timedSentence } from '../../src/words/findings/timed.ts';
import { heatSentence } from '../../src/words/heat.ts';
import {
  chanceSentence,
  choosingSentence,
  hintsAlike,
  methodSentence,
  rangeSentence,
  waitingSentence,
} from '../../src/words/lesson-time.ts';
import { plain } from '../../src/words/sentence.ts';
import { verdictOf } from '../../src/words/verdict.ts';
import { fixed, gameOf } from '../game-of.ts';
import { gameArbitrary } from '../random-game.ts';

function toldOf(game: Game): { figures: Figures; findings: readonly TimedFinding[]; texts: string[] } {
  const clock = clockOf(game, compile(game));
  let last: { figures: Figures; findings: readonly TimedFinding[] } | undefined;
  for (const answer of figuresOf(clock, { coarse: 10, runs: 30 })) {
    if (answer) last = { figures: { clock, ...answer.figures }, findings: answer.findings };
  }
  if (!last) throw new Error('an answer');
  const { figures, findings } = last;
  const { first, second } = verdictOf(assess(game), undefined, { simulated: figures.simulated, findings });
  const state = { figures, complete: figures, isOld: false, failed: false, findings };
  const seen = (reading: 'cost' | 'waiting') =>
    plain(heatSentence(game, figures, reading, heatOf(state, reading)?.most));
  const texts = [
    chanceSentence(figures),
    rangeSentence(figures),
    choosingSentence(figures.byChoosing ?? []),
    plain(waitingSentence(game, figures)),
    methodSentence(game, figures),
    seen('cost'),
    seen('waiting'),
    plain(first),
    plain(second),
    ...findings.map((finding) => plain(timedSentence(game, finding))),
  ];
  return { figures, findings, texts };
}

const lessons = fc.record({
  pupils: fc.integer({ min: 0, max: 40 }),
  teams: fc.integer({ min: 0, max: 12 }),
  minutes: fc.constantFrom(0, 1, 30, 100),
  adults: fc.integer({ min: 0, max: 2 }),
  hints: fc.integer({ min: 0, max: 20 }),
});

test('no sentence has a figure that is none, whatever the game and the lesson', () => {
  let told = 0;
  fc.assert(
    fc.property(gameArbitrary({ size: 14 }), lessons, fc.boolean(), (random, lesson, checked) => {
      const nodes = [...random.nodes].map(
        ([id, node]) => [id, checked ? { ...node, checked } : node] as const,
      );
      const game: Game = { ...random, nodes: new Map(nodes), head: { ...random.head, lesson } };
      if (!canPlay(compile(game))) return;
      told += 1;
      for (const text of toldOf(game).texts) expect(text).not.toMatch(/NaN|Infinity|∞|undefined|null|-\d/);
    }),
    { seed: 1012, numRuns: 120 },
  );
  expect(told).toBeGreaterThan(10);
});

const puzzle = gameOf(
  [
    { id: 'sums', kind: 'puzzle', ...fixed(12) },
    { id: 'cup', kind: 'prize' },
  ],
  ['sums>cup'],
);

test('of one puzzle that takes twelve minutes', () => {
  const { texts } = toldOf(puzzle);
  expect(texts.slice(0, 5)).toEqual([
    'All lessons finish before the bell.',
    'Nearly always 12 minutes.',
    'In time: all, no matter what a team takes up first: any step, a lock, or what is newest.',
    'A pupil waits 6 minutes in all, longest while sums is worked: then 3 of 6 pupils wait.',
    'Worked out from 30 simulated lessons: each step takes a time between its estimates, and a team of 6 pupils takes up whatever can be done, without hints.',
  ]);
});

test('the chances by hints and by ways of choosing begin with the one that the verdict tells', () => {
  const { figures } = toldOf({ ...puzzle, head: { lesson: { hints: 5 } } });
  expect(figures.byHints).toHaveLength(6);
  expect(figures.byHints?.[0]).toBe(figures.simulated.inTime);
  expect(figures.byChoosing?.[0]).toBe(figures.simulated.inTime);
});

test('chances by hints that one word tells are one line', () => {
  expect(hintsAlike([0.96, 0.97, 0.98, 0.99])).toBe('Hints change little: nearly all, with none to three.');
  expect(hintsAlike([0.78, 0.81, 0.79, 0.8])).toBe('Hints change little: about 8 in 10, with none to three.');
  expect(hintsAlike([0.7, 0.8, 0.8, 0.8])).toBeUndefined();
  expect(hintsAlike([])).toBeUndefined();
});
