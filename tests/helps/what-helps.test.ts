/** What is said to help is held against simulations made afresh, and nothing is proposed that may not be. */
import { describe, expect, it } from 'vitest';
import { compile } from '../../src/engine/network.ts';
import { Batch, simulate } from '../../src/engine/simulation/batch.ts';
import { clockOf } from '../../src/engine/simulation/clock.ts';
import { PLAIN, statedRules } from '../../src/engine/simulation/rules.ts';
import { assess } from '../../src/findings/assess.ts';
import { identityOf } from '../../src/findings/finding.ts';
import { applyEdits, applyPatchesTo } from '../../src/game/edits/index.ts';
import type { Game } from '../../src/game/model.ts';
import type { Help } from '../../src/helps/help.ts';
import { changesOf } from '../../src/helps/index.ts';
import { changed } from '../../src/helps/sound.ts';
import { difference, isBeyondNoise, lessonFigures } from '../../src/helps/trial.ts';
import { type WhatHelps, whatHelps } from '../../src/helps/what-helps.ts';
import { helpLabel, helpSentence, noneIsEnough, nothingHelps } from '../../src/words/helps.ts';
import { plain } from '../../src/words/sentence.ts';
import { winnable } from '../findings/small-games.ts';
import { fixed, gameOf, type NodeDraft } from '../game-of.ts';
import { gameOf as exampleGame, SLUGS } from '../games/example.ts';
import { randomGame } from '../random-game.ts';
import { jammed } from './jam.ts';

function worked(
  game: Game,
  runs?: number,
): { readonly result: WhatHelps | undefined; readonly done: number[] } {
  const done: number[] = [];
  let found: { readonly result: WhatHelps | undefined } | undefined;
  for (const answer of whatHelps(game, runs)) {
    if (answer === undefined) continue;
    if ('done' in answer) done.push(answer.done);
    else found = answer;
  }
  if (!found) throw new Error('no result');
  return { result: found.result, done };
}

function helpful(game: Game, runs?: number): WhatHelps {
  const { result } = worked(game, runs);
  if (!result) throw new Error('it cannot be won');
  return result;
}

function applied(game: Game, help: Help): Game {
  const result = applyEdits(game, help.edits);
  if (!result.ok) throw new Error(`refused: ${JSON.stringify(result.refusal)}`);
  expect(applyPatchesTo(result.game, result.inverse)).toEqual(game);
  return result.game;
}

function fresh(game: Game, runs?: number) {
  const clock = clockOf(game, compile(game));
  const simulated = simulate(clock, statedRules(clock), runs);
  if (!simulated) throw new Error('it cannot be won');
  return lessonFigures(simulated);
}

function changes(game: Game): Help[] {
  const assessment = assess(game);
  return changesOf(assessment).filter((help) => changed(assessment, help));
}

const codes = (helps: readonly Help[]) => new Set(helps.map(({ code }) => code));

describe('a lock that all wait for', () => {
  const game = jammed();
  const all = helpful(game);

  it('is made better by the first suggestion, and by each; the figures are those of simulations made afresh', () => {
    expect(all.before).toEqual(fresh(game));
    const [first] = all.helpful;
    expect(first?.after.inTime).toBeGreaterThan(all.before.inTime + 0.3);
    expect(first?.after.waiting).toBeLessThan(all.before.waiting - 2);
    expect(all.helpful.length).toBeGreaterThan(2);
    for (const { help, after } of all.helpful) expect(after).toEqual(fresh(applied(game, help)));
  });

  it('lists six at most, each kind twice at most', () => {
    expect(all.helpful.length).toBeLessThanOrEqual(6);
    for (const code of codes(all.helpful.map(({ help }) => help))) {
      expect(all.helpful.filter(({ help }) => help.code === code).length).toBeLessThanOrEqual(2);
    }
  });

  it('says first where none of them is enough', () => {
    const told = (before: number, ...after: readonly number[]) => {
      const figures = (inTime: number) => ({ ...all.before, inTime });
      const list = all.helpful.slice(0, after.length);
      const helpful = list.map((one, i) => ({ ...one, after: figures(after[i] ?? 0) }));
      return noneIsEnough({ ...all, before: figures(before), helpful });
    };
    expect(told(0.1, 0.49, 0.3)).toBe('No single change is enough; several together may be.');
    expect(told(0.1, 0.5, 0.3)).toBeUndefined();
    expect(told(0.6, 0.4)).toBeUndefined();
  });

  it('says the same again', () => {
    expect(helpful(game)).toEqual(all);
  });

  it('is told in a sentence with both figures, and what a press does', () => {
    const longer = { code: 'shorten', values: { step: 'jam', by: 'minute' }, edits: [] } as const;
    const told = helpSentence(game, all, {
      help: longer,
      after: { inTime: 0.81, waiting: 3.2, median: 19 },
      effect: { inTime: { mean: 0.77, error: 0.01 }, waiting: { mean: -10.4, error: 0.1 } },
    });
    expect(plain(told)).toBe(
      'The number lock on trunk a minute shorter: about 8 lessons in 10 finish in time instead of hardly any; a pupil waits 3.2 minutes instead of 14.',
    );
    expect(helpLabel(game, longer)).toBe('Make it a minute shorter');
  });

  it('says nothing of a chance that is told by the same words, but of the waiting, else of the time that half of them take', () => {
    const before = { inTime: 0.97, waiting: 5, median: 33 };
    const told = (waiting: number) =>
      plain(
        helpSentence(
          game,
          { ...all, before },
          {
            help: { code: 'shorten', values: { step: 'jam', by: 'minute' }, edits: [] },
            after: { inTime: 0.99, waiting, median: 31 },
            effect: { inTime: { mean: 0.02, error: 0.001 }, waiting: { mean: waiting - 5, error: 0.1 } },
          },
        ),
      );
    expect(told(3.2)).toBe(
      'The number lock on trunk a minute shorter: a pupil waits 3.2 minutes instead of 5.',
    );
    expect(told(5)).toBe(
      'The number lock on trunk a minute shorter: half of the lessons take 31 minutes instead of 33.',
    );
  });
});

it('a lamp for four teams: another one comes first', () => {
  const lamp = gameOf(
    [
      { id: 'lamp', kind: 'tool', shared: 1 },
      { id: 'ink', kind: 'clue', ...fixed(6), hands: 2 },
      { id: 'sum', kind: 'puzzle', answer: '4', ...fixed(3) },
      { id: 'tin', kind: 'container' },
      { id: 'lock', kind: 'fastener', on: 'tin', type: 'number', code: '4' },
      { id: 'medal', kind: 'prize', in: 'tin' },
    ],
    ['lamp>ink', 'ink>sum', 'sum>lock'],
  );
  const game: Game = { ...lamp, head: { lesson: { pupils: 16, teams: 4, minutes: 24 } } };
  const { helpful: list, before } = helpful(game);
  expect(list[0]?.help).toMatchObject({ code: 'shareMore', values: { thing: 'lamp', shared: 2 } });
  expect(list[0]?.after.waiting).toBeLessThan(before.waiting);
  for (const { help, after } of list) expect(after).toEqual(fresh(applied(game, help)));
});

describe('what is proposed', () => {
  const games: readonly Game[] = [
    jammed(),
    winnable(),
    ...SLUGS.map(exampleGame),
    ...Array.from({ length: 60 }, (_, seed) => randomGame(seed, 14)),
  ];

  it('can be won, keeps right codes right, and brings up nothing new', () => {
    let tried = 0;
    for (const game of games) {
      const before = assess(game);
      if (!before.canBeWon) continue;
      const known = new Set(before.findings.map(identityOf));
      const wrong = (assessment: typeof before) =>
        assessment.context.codes().filter(({ state }) => state === 'wrong').length;
      for (const help of changes(game)) {
        const after = assess(applied(game, help));
        expect(after.canBeWon).toBe(true);
        expect(wrong(after)).toBeLessThanOrEqual(wrong(before));
        expect(after.findings.filter((finding) => !known.has(identityOf(finding)))).toEqual([]);
        tried += 1;
      }
    }
    expect(tried).toBeGreaterThan(200);
  });

  it('is nothing for a game that cannot be won, or that a wrong code stops', () => {
    expect(worked(winnable([], ['-sums>wheels'])).result).toBeUndefined();
    const wrong = winnable([{ id: 'wheels', kind: 'fastener', code: '999' }]);
    expect(assess(wrong).measures.solvable).toBe(true);
    expect(worked(wrong).result).toBeUndefined();
  });

  it('shortens by a minute, or below two minutes by half, and keeps the order of the estimates', () => {
    const game = winnable([
      { id: 'shelf', kind: 'place', minutes: { low: 0.5, likely: 1, high: 9 } },
      { id: 'sums', kind: 'puzzle', minutes: { low: 1, likely: 2, high: 9 } },
    ]);
    const minutes = changesOf(assess(game)).flatMap((help) =>
      help.code === 'shorten'
        ? [[help.values, applied(game, help).nodes.get(help.values.step)?.minutes]]
        : [],
    );
    expect(minutes).toEqual([
      [
        { step: 'shelf', by: 'half' },
        { low: 0.25, likely: 0.5, high: 4.5 },
      ],
      [
        { step: 'sums', by: 'minute' },
        { low: 0.5, likely: 1, high: 8 },
      ],
    ]);
  });

  const choice = (
    fields: Readonly<Record<string, unknown>>,
    links: readonly string[],
    kind: 'clue' | 'tool',
  ) => {
    const third: NodeDraft = { id: 'c', kind, ...fields };
    return gameOf(
      [
        { id: 'shelf', kind: 'place' },
        { id: 'a', kind: 'clue', in: 'shelf' },
        { id: 'b', kind: 'clue', in: 'shelf' },
        third,
        { id: 'sum', kind: 'puzzle', answer: '4' },
        { id: 'tin', kind: 'container' },
        { id: 'lock', kind: 'fastener', on: 'tin', type: 'number', code: '4' },
        { id: 'medal', kind: 'prize', in: 'tin' },
      ],
      [...links, 'sum>lock'],
    );
  };
  const three = ['a>sum', 'b>sum', 'c>sum'];

  it('asks for any 2 of 3 things to read, never of two, of a tool, or of parts of an answer', () => {
    const asks = (game: Game) => changes(game).filter(({ code }) => code === 'askForFewer');
    const [one] = asks(choice({}, three, 'clue'));
    expect(one?.values).toEqual({ puzzle: 'sum', need: 2, of: 3 });
    expect(asks(choice({}, ['a>sum', 'b>sum'], 'clue'))).toEqual([]);
    expect(asks(choice({}, three, 'tool'))).toEqual([]);
    expect(asks(choice({ answer: '7' }, three, 'clue'))).toEqual([]);
    const parts = choice({ answer: '7' }, ['a>sum', 'b>sum', 'c>lock'], 'clue');
    expect(asks(parts)).toEqual([]);
  });

  it('has no more teams than pupils, no more of a thing than teams, and at least one team', () => {
    const with_ = (lesson: Readonly<Record<string, number>>, shared: number): Game => ({
      ...winnable([{ id: 'shelf', kind: 'place', shared }]),
      head: { lesson },
    });
    const values = (game: Game, code: Help['code']) =>
      changesOf(assess(game)).flatMap((help) => (help.code === code ? [help.values] : []));
    expect(values(with_({ pupils: 2, teams: 2 }, 2), 'setTeams')).toEqual([{ teams: 1, before: 2 }]);
    expect(values(with_({ pupils: 4, teams: 1 }, 1), 'setTeams')).toEqual([{ teams: 2, before: 1 }]);
    expect(values(with_({ pupils: 4, teams: 2 }, 2), 'shareMore')).toEqual([]);
    expect(values(with_({ pupils: 4, teams: 3 }, 2), 'shareMore')).toEqual([{ thing: 'shelf', shared: 3 }]);
  });

  it('has only teams that are nearly of the size that is played', () => {
    const teams = (pupils: number, before: number) =>
      changesOf(assess({ ...winnable(), head: { lesson: { pupils, teams: before } } })).flatMap((help) =>
        help.code === 'setTeams' ? [help.values.teams] : [],
      );
    // In 7 teams three of 24 would have 4 pupils where 3 are played; in 5, one has 4 where 5 are.
    expect(teams(24, 6)).toEqual([5]);
    expect(teams(24, 7)).toEqual([8, 6]);
    // Halves and thirds are too far, quarters are not.
    expect(teams(3, 1)).toEqual([]);
    expect(teams(9, 5)).toEqual([4]);
    expect(teams(10, 4)).toEqual([5]);
    expect(teams(3, 3)).toEqual([]);
    expect(teams(2, 2)).toEqual([1]);
  });

  it('leaves out a lock with what leads to it alone, never a clue without which a puzzle is asked for', () => {
    const left = (game: Game) =>
      changes(game).flatMap((help) => (help.code === 'leaveOut' ? [help.values] : []));
    expect(left(jammed())).toEqual([
      { step: 'letters', others: ['list', 'riddle'] },
      { step: 'wheels', others: ['letter', 'map', 'maze', 'sums'] },
    ]);
    const slow = gameOf(
      [
        { id: 'ink', kind: 'clue', ...fixed(6) },
        { id: 'sum', kind: 'puzzle' },
        { id: 'medal', kind: 'prize' },
      ],
      ['ink>sum', 'sum>medal'],
    );
    expect(changesOf(assess(slow)).filter(({ code }) => code === 'leaveOut')).toEqual([]);
  });

  it('never moves a key past puzzles that would then stand there for nothing', () => {
    const game = winnable();
    const proposed = changes(game).filter(({ code }) => code === 'putEarlier');
    expect(changesOf(assess(game)).map(({ code }) => code)).toContain('putEarlier');
    expect(proposed).toEqual([]);
  });

  it('takes a box out of a locked one, and hangs a lock from a hasp elsewhere', () => {
    const game = gameOf(
      [
        { id: 'sill', kind: 'place' },
        { id: 'notes', kind: 'clue', in: 'sill', answer: '11' },
        { id: 'slip', kind: 'clue', in: 'sill', answer: '22' },
        { id: 'crate', kind: 'container', in: 'sill' },
        { id: 'one', kind: 'fastener', on: 'crate', type: 'number', code: '11' },
        { id: 'two', kind: 'fastener', on: 'crate', type: 'number', code: '22' },
        { id: 'tin', kind: 'container', in: 'crate' },
        { id: 'three', kind: 'fastener', on: 'tin', type: 'number', code: '33' },
        { id: 'card', kind: 'clue', in: 'crate', answer: '33' },
        { id: 'medal', kind: 'prize', in: 'tin' },
      ],
      ['notes>one', 'slip>two', 'card>three'],
    );
    const proposed = changes(game);
    const out = proposed.find(({ code }) => code === 'takeOut');
    expect(out?.values).toEqual({ box: 'tin', from: 'crate', holder: 'sill' });
    const hung = proposed.filter(({ code }) => code === 'rehang').map(({ values }) => values);
    expect(hung).toEqual([
      { lock: 'one', from: 'crate', box: 'tin' },
      { lock: 'two', from: 'crate', box: 'tin' },
    ]);
  });
});

it('goes on from nothing to all, and says so where nothing helps', () => {
  const { result, done } = worked(
    gameOf([
      { id: 'shelf', kind: 'place', ...fixed(1) },
      { id: 'medal', kind: 'prize', in: 'shelf' },
    ]),
    50,
  );
  expect(done).toEqual([...done].sort((a, b) => a - b));
  expect(done.every((share) => share > 0 && share <= 1)).toBe(true);
  expect(result?.helpful.filter(({ help }) => help.code !== 'setTeams' && help.code !== 'shorten')).toEqual(
    [],
  );
  if (result)
    expect(nothingHelps({ ...result, helpful: [] })).toMatch(/all lessons finish in time already\.$/);
});

describe('a difference', () => {
  it('is the mean of the differences run by run, with its standard error', () => {
    const { mean, error } = difference(Float64Array.of(1, 2, 3, 4), Float64Array.of(2, 4, 4, 6));
    expect(mean).toBeCloseTo(1.5, 12);
    // Differences 1, 2, 1, 2: their standard deviation is the root of a third, over the root of four.
    expect(error).toBeCloseTo(Math.sqrt(1 / 3) / 2, 12);
    expect(isBeyondNoise({ mean, error })).toBe(true);
    expect(isBeyondNoise({ mean: 0.1, error: 0.03 })).toBe(false);
    expect(isBeyondNoise({ mean: 0, error: 0 })).toBe(false);
  });

  it('adds up to the figures told', () => {
    const game = jammed();
    const clock = clockOf(game, compile(game));
    const batch = new Batch(clock, PLAIN);
    batch.run(30);
    const { ends, idles, teams } = batch.outcomes;
    expect([ends.length, idles.length, teams]).toEqual([30, 30, 1]);
    expect(idles.reduce((sum, minutes) => sum + minutes, 0) / 30).toBeCloseTo(batch.result().idle, 9);
    expect([...ends].sort((a, b) => a - b)).toEqual([...batch.result().ends]);
  });
});
