import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fewestSteps } from '../../src/engine/fewest.ts';
import type { Fewest } from '../../src/engine/measures.ts';
import { assess } from '../../src/findings/assess.ts';
import type { TimedFinding } from '../../src/findings/timed/timed-finding.ts';
import { emptyGame, type Game } from '../../src/game/model.ts';
import { MAX_MINUTES } from '../../src/game/schema.ts';
import { type Part, plain, type Sentence } from '../../src/words/sentence.ts';
import { verdictOf } from '../../src/words/verdict.ts';
import { type Change, winnable } from '../findings/small-games.ts';
import { fixed } from '../game-of.ts';
import { gameArbitrary } from '../random-game.ts';

function verdict(game: Game, fewest?: Fewest | 'pending') {
  const assessment = assess(game);
  const known = fewest ?? fewestSteps(assessment.network, assessment.measures);
  const { tone, first, second } = verdictOf(assessment, known === 'pending' ? undefined : known);
  return { tone, first: plain(first), second: plain(second), parts: [...first, ...second] };
}

function topics(parts: Sentence): string[] {
  return parts.flatMap((part: Part) =>
    typeof part !== 'string' && 'topic' in part ? [`${part.topic}: ${part.text}`] : [],
  );
}

const spare: readonly Change[] = [
  { id: 'padlock', kind: 'fastener', on: 'chest', name: 'Lock', type: 'key', need: 1 },
  { id: 'spare', kind: 'key', in: 'sill' },
  { id: 'sill', kind: 'place' },
];

/** With what simulated lessons say. */
function verdictIn(minutes: number, inTime: number, median: number, findings: readonly TimedFinding[] = []) {
  const assessment = assess({ ...winnable(), head: { lesson: { minutes } } });
  const { tone, first, second } = verdictOf(assessment, undefined, {
    simulated: { inTime, median },
    findings,
  });
  return { tone, text: plain(first), second: plain(second), topics: topics(first) };
}

describe('the verdict on simulated lessons', () => {
  it('tells how many end in time, and leads to it', () => {
    const { tone, text, topics: words } = verdictIn(40, 0.82, 12);
    expect(tone).toBe('ok');
    expect(text).toBe(
      'It can be won. About 8 lessons in 10 finish before the bell. Without a hitch: 9.3 of 40 minutes. It has 4 steps.',
    );
    expect(words[0]).toBe('chance: About 8 lessons in 10');
  });

  it('calls a game too long when fewer than half end in time, whatever the shortest time', () => {
    const { tone, text } = verdictIn(10, 0.31, 12);
    expect(tone).toBe('look');
    expect(text).toBe(
      'Too long for the lesson. Only about 3 lessons in 10 finish before the bell. Without a hitch: 9.3 of 10 minutes. It has 4 steps.',
    );
  });

  it('does not deny with the shortest time what some lessons do', () => {
    expect(verdictIn(9, 0.31, 9.6).text).toBe(
      'Too long for the lesson. Only about 3 lessons in 10 finish before the bell. Half take 9.6 minutes or more. It has 4 steps.',
    );
    const often = verdictIn(9, 0.6, 8.8);
    expect(often.tone).toBe('ok');
    expect(often.text).toBe(
      'It can be won. About 6 lessons in 10 finish before the bell. Half take 8.8 minutes or more. It has 4 steps.',
    );
    expect(verdictIn(3, 0, 9.6).text).toBe(
      'Too long for the lesson. It can be won, but not before the bell: without a hitch it takes 9.3 minutes. It has 4 steps.',
    );
  });

  it('never says that it is too long and that half are in time', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 1, noNaN: true }),
        fc.integer({ min: 1, max: 20 }),
        (inTime, lesson) => {
          const { tone, text } = verdictIn(lesson, inTime, 9);
          expect(text.startsWith('Too long')).toBe(tone === 'look');
          expect(tone === 'look').toBe(inTime < 0.5);
          if (tone === 'look') expect(text).not.toMatch(/about [5-9] lessons|[Nn]early all|[Aa]ll lessons/);
          else expect(text).not.toMatch(/[Aa]bout [1-4] lessons?|[Jj]ust under|[Hh]ardly any|not before/);
        },
      ),
      { seed: 7 },
    );
  });

  it('counts their findings with the others', () => {
    const tooLong: TimedFinding = {
      code: 'tooLong',
      level: 'look',
      nodes: [],
      links: [],
      values: { inTime: 0.31, median: 12, lesson: 10 },
    };
    expect(verdictIn(10, 0.31, 12, [tooLong]).second).toBe('1 thing is worth a look.');
  });
});

describe('the verdict', () => {
  it('on a game that can be won tells time and steps, and leads to them', () => {
    const { tone, first, second, parts } = verdict(winnable());
    expect(tone).toBe('ok');
    expect(first).toBe('It can be won. Without a hitch: 9.3 of 40 minutes. All 4 steps are needed.');
    expect(second).toBe('');
    expect(topics(parts)).toEqual(['time: 9.3 of 40 minutes', 'steps: 4 steps']);
  });

  it('counts what is worth a look', () => {
    const one = verdict(winnable([{ id: 'extra', kind: 'clue' }]));
    expect(one.second).toBe('1 thing is worth a look.');
    const two = verdict(
      winnable([
        { id: 'extra', kind: 'clue' },
        { id: 'other', kind: 'tool' },
      ]),
    );
    expect(two.second).toBe('2 things are worth a look.');
    expect(topics(two.parts)).toContain('look: 2 things');
  });

  it('tells how many steps are enough', () => {
    const game = winnable(spare, ['spare>padlock']);
    expect(verdict(game).first).toMatch(/ 2 of 5 steps are enough\.$/);
  });

  it('says no more than is known of the fewest steps', () => {
    expect(verdict(winnable(), 'pending').first).toMatch(/ It has 4 steps\.$/);
    const open = verdict(winnable(), { steps: 4, exact: false, bound: 3 });
    expect(open.first).toMatch(/ 4 of 4 steps are enough, at least 3 are needed\.$/);
  });

  it('says when the shortest time is longer than the lesson', () => {
    const game: Game = { ...winnable(), head: { lesson: { minutes: 8 } } };
    const { tone, first } = verdict(game);
    expect(tone).toBe('look');
    expect(first).toBe(
      'Too long for the lesson. It can be won, but without a hitch it takes 9.3 minutes, and the lesson has 8 minutes. All 4 steps are needed.',
    );
  });

  it('gives a lesson of no minutes in minutes', () => {
    const { first } = verdict({ ...winnable(), head: { lesson: { minutes: 0 } } });
    expect(first).toContain('and the lesson has 0 minutes.');
  });

  it('has a figure for the longest times there can be', () => {
    const slow = { minutes: { low: MAX_MINUTES, likely: MAX_MINUTES, high: MAX_MINUTES } };
    const game = winnable([{ id: 'sums', kind: 'puzzle', answer: '472', atMinute: MAX_MINUTES, ...slow }]);
    expect(verdict(game).first).toContain('it takes 2000001 minutes');
  });

  it('says so where a time too long reads like that of the lesson', () => {
    const slow = winnable([{ id: 'sums', kind: 'puzzle', answer: '472', ...fixed(36.3) }]);
    const { first } = verdict({ ...slow });
    expect(first).toContain('it takes a little more than 40 minutes, and the lesson has 40 minutes.');
  });

  it('on a single step does not speak of all steps', () => {
    const game = winnable([
      { id: 'map', kind: 'prize', in: 'shelf' },
      {
        id: 'wheels',
        kind: 'fastener',
        on: 'tin',
        type: 'number',
        code: '472',
        minutes: { low: 0, likely: 0, high: 0 },
      },
      {
        id: 'padlock',
        kind: 'fastener',
        name: 'Lock',
        on: 'chest',
        type: 'key',
        minutes: { low: 0, likely: 0, high: 0 },
      },
      { id: 'sums', kind: 'puzzle', answer: '472', minutes: { low: 0, likely: 0, high: 0 } },
    ]);
    expect(verdict(game).first).toMatch(/ Its only step is needed\.$/);
  });

  it('on a game that cannot be won names the cause and how far it goes', () => {
    const { tone, first, second } = verdict(winnable([{ id: 'tag', kind: 'key', in: 'chest' }]));
    expect(tone).toBe('stops');
    expect(first).toBe('It cannot be won. The key tag lies in chest, the box that it opens.');
    expect(second).toBe('3 of 4 steps can be done.');
  });

  it('on a wrong code counts no steps: the order of play goes on behind the lock', () => {
    const { tone, first, second } = verdict(
      winnable([{ id: 'wheels', kind: 'fastener', name: 'Lock', on: 'tin', type: 'number', code: '471' }]),
    );
    expect(first).toBe('It cannot be won. The number lock on tin is set to 471, but sums gives 472.');
    expect(tone).toBe('stops');
    expect(second).toBe('');
  });

  it('never counts other steps than the order of play', () => {
    fc.assert(
      fc.property(gameArbitrary(), (game) => {
        const { first, second } = verdict(game, 'pending');
        const told = /(\d+) of \d+ steps? can be done/.exec(`${first} ${second}`)?.[1];
        if (told !== undefined) expect(assess(game).measures.order).toHaveLength(Number(told));
      }),
      { seed: 20240611, numRuns: 200 },
    );
  });

  it('names the key that is not used today as what its lock lacks', () => {
    const { first } = verdict(winnable([{ id: 'tag', kind: 'key', in: 'tin', leftOut: true }]));
    expect(first).toBe(
      'It cannot be won. tag is not used today, and nothing else opens the key lock on chest.',
    );
  });

  it('counts what else stops it', () => {
    const game = winnable([
      { id: 'wheels', kind: 'fastener', name: 'Lock', on: 'tin', type: 'number', code: '471' },
      { id: 'bolt', kind: 'fastener', on: 'chest', type: 'word' },
    ]);
    const { second, parts } = verdict(game);
    expect(second).toBe('1 more thing stops it.');
    expect(topics(parts)).toContain('stops: 1 more thing');
  });

  it('without a prize still says that all steps can be done', () => {
    const { tone, first, second } = verdict(
      winnable([{ id: 'map', kind: 'clue', in: 'chest', decoy: true }]),
    );
    expect(tone).toBe('open');
    expect(first).toBe('Nothing to win yet. There is no prize.');
    expect(second).toBe('All 5 steps can be done.');
  });

  it('on an empty map speaks of no fault', () => {
    const { tone, first, second } = verdict(emptyGame, 'pending');
    expect(tone).toBe('open');
    expect(first).toBe('Nothing to win yet. Here it says whether the game can be won.');
    expect(second).toBe('');
  });
});
