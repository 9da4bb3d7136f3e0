/** Findings from simulated lessons: for each the smallest game that shows it, and one that nearly does. */
import { expect, test } from 'vitest';
import { compile } from '../../src/engine/network.ts';
import { Batch } from '../../src/engine/simulation/batch.ts';
import { bottleneckOf } from '../../src/engine/simulation/bottleneck.ts';
import { clockOf } from '../../src/engine/simulation/clock.ts';
import type { StepCosts } from '../../src/engine/simulation/costs.ts';
import type { Figures } from '../../src/engine/simulation/figures.ts';
import { statedRules } from '../../src/engine/simulation/rules.ts';
import { assess } from '../../src/findings/assess.ts';
import { isLateFinding, TIMED_RULES, timedFindings } from '../../src/findings/timed/index.ts';
import { leadsToPrize } from '../../src/findings/timed/needless-step.ts';
import { aloneIn } from '../../src/findings/timed/one-at-a-time.ts';
import type { TimedCode, TimedFindingWith } from '../../src/findings/timed/timed-finding.ts';
import { waitersWhile } from '../../src/findings/timed/waiters.ts';
import type { Game } from '../../src/game/model.ts';
import { HELP_KINDS } from '../../src/helps/index.ts';
import { findingSentence } from '../../src/words/findings/index.ts';
import { timedSentence } from '../../src/words/findings/timed.ts';
import { heatSentence } from '../../src/words/heat.ts';
import { waitingSentence } from '../../src/words/lesson-time.ts';
import { plain } from '../../src/words/sentence.ts';
import { fixed, gameOf, type NodeDraft } from '../game-of.ts';

type Lesson = NonNullable<Game['head']['lesson']>;

function lesson(game: Game, of: Lesson): Game {
  return { ...game, head: { ...game.head, lesson: of } };
}

function figuresOf(game: Game, costs?: StepCosts): Figures {
  const clock = clockOf(game, compile(game));
  const batch = new Batch(clock, statedRules(clock));
  batch.run(400);
  return {
    clock,
    simulated: batch.result(),
    coarse: false,
    chain: new Int32Array(0),
    costs,
    whole: undefined,
    byHints: undefined,
    byChoosing: undefined,
  };
}

function found<Code extends TimedCode>(game: Game, code: Code): TimedFindingWith<Code> | undefined {
  const isIt = (one: { readonly code: TimedCode }): one is TimedFindingWith<Code> => one.code === code;
  return timedFindings(figuresOf(game)).find(isIt);
}

/** Puzzles one after another, each of so many minutes, then the prize. */
function row(count: number, each: number, fields: object = {}): Game {
  const puzzles = Array.from(
    { length: count },
    (_, i): NodeDraft => ({ id: `z${i}`, kind: 'puzzle', ...fixed(each), ...fields }),
  );
  const links = puzzles.slice(1).map(({ id }, i) => `z${i}>${id}`);
  return gameOf([...puzzles, { id: 'map', kind: 'prize' }], [...links, `z${count - 1}>map`]);
}

test('a game too long for the lesson, to the minute', () => {
  const game = row(2, 10);
  expect(found(lesson(game, { minutes: 20 }), 'tooLong')).toBeUndefined();
  const late = lesson(game, { minutes: 19 });
  const finding = found(late, 'tooLong');
  expect(finding?.values).toEqual({ inTime: 0, median: 20, lesson: 19 });
  expect(finding && plain(timedSentence(late, finding))).toBe(
    'No lesson finishes before the bell. Half take 20 minutes or more, and the lesson has 19 minutes.',
  );
});

test('a lesson without minutes is told once, and not as too long', () => {
  const game = lesson(row(2, 10), { minutes: 0 });
  expect(found(game, 'tooLong')).toBeUndefined();
  const told = assess(game).findings.filter(({ code }) => code === 'noMinutes');
  expect(told).toHaveLength(1);
  expect(told.map((finding) => plain(findingSentence(game, finding)))).toEqual([
    'The lesson has no minutes of play. The bell rings before anybody can begin.',
  ]);
});

test('more teams than pupils', () => {
  const codes = (pupils: number, teams: number) =>
    assess(lesson(row(2, 1), { pupils, teams })).findings.map(({ code }) => code);
  expect(codes(3, 4)).toContain('moreTeamsThanPupils');
  expect(codes(4, 4)).not.toContain('moreTeamsThanPupils');
  expect(codes(0, 1)).not.toContain('moreTeamsThanPupils');
});

test('more than half of a team stands about while one of them works', () => {
  const one = lesson(row(1, 6, { hands: 1 }), { pupils: 12, teams: 3 });
  const finding = found(one, 'standAbout');
  expect(finding?.nodes).toEqual(['z0']);
  expect(finding?.values.waiting).toBeCloseTo(3);
  expect(finding && plain(timedSentence(one, finding))).toBe(
    'While z0 is worked, about 3 of 4 pupils wait, for 6 minutes. That is more than half of a team with nothing to do.',
  );
  // Two of four are half, not more; and three minutes are borne.
  expect(found(lesson(row(1, 6, { hands: 2 }), { pupils: 12, teams: 3 }), 'standAbout')).toBeUndefined();
  expect(found(lesson(row(1, 3, { hands: 1 }), { pupils: 12, teams: 3 }), 'standAbout')).toBeUndefined();
});

test('a mean of a little more than half that is told as half is not more than half', () => {
  const figures = figuresOf(lesson(row(1, 6, { hands: 2 }), { pupils: 12, teams: 3 }));
  const { simulated } = figures;
  const waits = (pupils: number) =>
    timedFindings({
      ...figures,
      simulated: {
        ...simulated,
        idleWhile: simulated.idleWhile.map((_, i) => (i === step ? 6 * pupils : 0)),
      },
    }).some(({ code }) => code === 'standAbout');
  const step = figures.clock.network.index.get('z0') ?? -1;
  expect(waits(2.2)).toBe(false);
  expect(waits(2.6)).toBe(true);
});

test('what is there for the joy of opening is never called a bottleneck', () => {
  const ofLock = (fields: object) =>
    lesson(
      gameOf(
        [
          { id: 'tin', kind: 'container' },
          { id: 'hook', kind: 'fastener', on: 'tin', type: 'latch', hands: 1, ...fixed(9), ...fields },
          { id: 'map', kind: 'prize', in: 'tin' },
        ],
        [],
      ),
      { pupils: 8, teams: 2 },
    );
  const told = (fields: object) => {
    const game = ofLock(fields);
    const costs = { minutes: new Float64Array(3), decides: new Float64Array(3) };
    costs.minutes[compile(game).index.get('hook') ?? -1] = 9;
    const figures = figuresOf(game, costs);
    const most = bottleneckOf(figures.clock, figures.simulated.idleWhile, 0);
    return {
      codes: timedFindings(figures).map(({ code }) => code),
      heat: (['cost', 'waiting'] as const).map((reading) =>
        plain(heatSentence(game, figures, reading, most)),
      ),
      waiting: plain(waitingSentence(game, figures)),
      helps: HELP_KINDS.flatMap(({ tries }): readonly object[] => tries(assess(game))).length,
    };
  };
  const plainLock = told({});
  expect(plainLock.codes).toContain('standAbout');
  expect(plainLock.heat[0]).toContain('costs most');
  expect(plainLock.waiting).toContain('longest while');
  const fun = told({ forFun: true });
  expect(fun.codes).not.toContain('standAbout');
  expect(fun.heat).toEqual([
    'No step costs anything by itself but what is there for fun.',
    'Nobody has to wait, except beside what is there for fun.',
  ]);
  expect(fun.waiting).toBe('A pupil waits 6.8 minutes in all.');
  expect(fun.helps).toBeLessThan(plainLock.helps);
});

test('of several steps at which more than half stand about, the one with the most waiting is told first', () => {
  const game = lesson(
    gameOf(
      [
        { id: 'a', kind: 'puzzle', hands: 1, ...fixed(4) },
        { id: 'b', kind: 'puzzle', hands: 1, ...fixed(9) },
        { id: 'map', kind: 'prize' },
      ],
      ['a>b', 'b>map'],
    ),
    { pupils: 8, teams: 2 },
  );
  expect(found(game, 'standAbout')?.values.steps).toEqual(['b', 'a']);
});

test('one step at a time all the way, and not where two can be done at once', () => {
  const single = lesson(row(5, 4), { pupils: 24, teams: 4 });
  expect(found(single, 'oneAtATime')?.values).toEqual({ alone: 20, end: 20, team: 6 });
  const abreast = Array.from(
    { length: 5 },
    (_, i): NodeDraft => ({ id: `z${i}`, kind: 'puzzle', ...fixed(4) }),
  );
  const wide = gameOf(
    [...abreast, { id: 'map', kind: 'prize' }],
    abreast.map(({ id }) => `${id}>map`),
  );
  expect(found(lesson(wide, { pupils: 24, teams: 4 }), 'oneAtATime')).toBeUndefined();
  expect(found(lesson(single, { pupils: 8, teams: 4 }), 'oneAtATime')).toBeUndefined();
  expect(found(lesson(row(3, 4), { pupils: 24, teams: 4 }), 'oneAtATime')).toBeUndefined();
});

test('one step at a time is nothing to say where hardly anybody waits for it', () => {
  const of = (hands: number) => found(lesson(row(5, 4, { hands }), { pupils: 16, teams: 4 }), 'oneAtATime');
  expect(of(4)).toBeUndefined();
  expect(of(3)?.values).toEqual({ alone: 20, end: 20, team: 4 });
  // One of eight waits: that is less than a quarter.
  const eight = lesson(row(5, 4, { hands: 7 }), { pupils: 16, teams: 2 });
  expect(found(eight, 'oneAtATime')).toBeUndefined();
});

test('the minutes alone are those in which one step is worked and no other could be', () => {
  const game = gameOf(
    [
      { id: 'a', kind: 'puzzle' },
      { id: 'b', kind: 'puzzle' },
      { id: 'cup', kind: 'prize' },
      { id: 'd', kind: 'puzzle' },
    ],
    ['a>d', 'b>d', 'd>cup'],
  );
  const clock = clockOf(lesson(game, { pupils: 4, teams: 1 }), compile(game));
  const never = Number.POSITIVE_INFINITY;
  type Times = readonly [possible: number, begin: number, free: number, reached: number, pupils: number];
  const alone = (end: number, times: Readonly<Record<string, Times>>) => {
    const all = clock.network.ids.map((id): Times => times[id] ?? [never, never, never, never, 0]);
    const column = (at: 0 | 1 | 2 | 3) => Float64Array.from(all, (of) => of[at]);
    const [possible, begin, free, reached] = [column(0), column(1), column(2), column(3)];
    const pupils = Int32Array.from(all, (of) => of[4]);
    return aloneIn(clock, { run: 0, end, possible, begin, free, reached, pupils, away: [] });
  };
  // From 3 to 5 there are two, from 9 on none.
  const two = { a: [0, 0, 5, 5, 1], b: [3, 4, 9, 9, 3] } as const;
  expect(alone(10, two)).toEqual({ minutes: 7, waiting: 3 * 3 + 4 });
  // Possible from 5 and begun at 8: until then there is nothing that could be done.
  expect(alone(10, { a: [0, 0, 5, 5, 2], b: [5, 8, 10, 10, 2] })).toEqual({ minutes: 7, waiting: 14 });
  // Until what it leads to is reached, it could be done; from then on it is passed over.
  expect(alone(10, { a: [0, 0, 4, 4, 4], b: [0, never, never, never, 0], d: [4, 4, 10, 10, 1] })).toEqual({
    minutes: 0,
    waiting: 0,
  });
  expect(alone(10, { a: [0, 0, 6, 6, 2], b: [0, never, never, never, 0], d: [1, 1, 4, 4, 2] })).toEqual({
    minutes: 2,
    waiting: 4,
  });
});

test('one lamp for four teams, and a lamp for each', () => {
  const dark = (shared: number) =>
    lesson(
      gameOf(
        [
          { id: 'lamp', kind: 'tool', shared },
          { id: 'read', kind: 'puzzle', ...fixed(6) },
          { id: 'map', kind: 'prize' },
        ],
        ['lamp>read', 'read>map'],
      ),
      { pupils: 12, teams: 4 },
    );
  const finding = found(dark(1), 'queueForThing');
  // Four teams that come at once wait 0, 6, 12 and 18 minutes.
  expect(finding?.values).toEqual({ thing: 'lamp', shared: 1, teams: 4, minutes: 9 });
  expect(finding && plain(timedSentence(dark(1), finding))).toBe(
    'Lamp is there only once for 4 teams. Each team waits about 9 minutes for it on average.'.replace(
      'Lamp',
      'lamp',
    ),
  );
  expect(found(dark(4), 'queueForThing')).toBeUndefined();
});

test('the waiting is longest where teams queue, and that is what is said', () => {
  const said = (nodes: readonly NodeDraft[], links: readonly string[]) => {
    const game = lesson(gameOf(nodes, links), { pupils: 12, teams: 4, adults: 1, checkMinutes: 3 });
    const figures = figuresOf(game);
    const { idleWhile } = figures.simulated;
    const most = idleWhile.indexOf(Math.max(...idleWhile));
    return { words: plain(heatSentence(game, figures, 'waiting', most)), minutes: idleWhile[most] };
  };
  const read: NodeDraft = { id: 'read', kind: 'puzzle', name: 'Under the lens', hands: 3, ...fixed(6) };
  const lens: NodeDraft = { id: 'lens', kind: 'tool', name: 'Hand lens', shared: 1 };
  const map: NodeDraft = { id: 'map', kind: 'prize' };
  // All three pupils of a team wait 0, 6, 12 or 18 minutes.
  expect(said([lens, read, map], ['lens>read', 'read>map'])).toEqual({
    words: 'Waiting is longest while teams wait for Hand lens: 3 of 3 pupils wait.',
    minutes: 27,
  });
  // Four checks of 3 minutes, one after the other.
  expect(said([{ ...read, checked: true }, map], ['read>map'])).toEqual({
    words: 'Waiting is longest while Under the lens waits to be checked: 3 of 3 pupils wait.',
    minutes: 22.5,
  });
});

test('one adult who checks every step of many teams', () => {
  const checked = (adults: number) =>
    lesson(row(4, 5, { checked: true }), { pupils: 24, teams: 8, adults, checkMinutes: 2 });
  expect(found(checked(1), 'queueForAdult')?.values).toMatchObject({ adults: 1, teams: 8 });
  expect(found(checked(8), 'queueForAdult')).toBeUndefined();
  // While all wait for a check there is nothing to do, which is not one thing.
  expect(found(checked(1), 'oneAtATime')).toBeUndefined();
});

/** A red herring beside the way to the prize. */
const herring = gameOf(
  [
    { id: 'shelf', kind: 'place' },
    { id: 'note', kind: 'clue', in: 'shelf', decoy: true },
    { id: 'tin', kind: 'container', in: 'shelf' },
    { id: 'wheels', kind: 'fastener', on: 'tin', type: 'number' },
    { id: 'sums', kind: 'puzzle' },
    { id: 'map', kind: 'prize', in: 'tin' },
  ],
  ['sums>wheels'],
);

test('what leads to a prize, by links, holders and locks', () => {
  const network = compile(herring);
  const leads = leadsToPrize(network);
  expect(network.ids.filter((_, i) => leads[i] === 1)).toEqual(['map', 'shelf', 'sums', 'tin', 'wheels']);
});

test('a step that nobody needs is told once its cost is known, and only where it costs minutes', () => {
  const { index, size } = compile(herring);
  const costing = (minutes: number): StepCosts => ({
    minutes: new Float64Array(size).fill(minutes),
    decides: new Float64Array(size),
  });
  const codes = (costs?: StepCosts) =>
    timedFindings(figuresOf(herring, costs))
      .filter(isLateFinding)
      .map(({ nodes }) => nodes);
  expect(index.has('note')).toBe(true);
  expect(codes()).toEqual([]);
  expect(codes(costing(1.9))).toEqual([]);
  expect(codes(costing(2.5))).toEqual([['note']]);
});

test('nobody waits for what is no step, and never more than the whole team', () => {
  const figures = figuresOf(lesson(herring, { pupils: 9, teams: 2 }));
  figures.clock.network.ids.forEach((_, i) => {
    const waiting = waitersWhile(figures, i);
    expect(waiting).toBeGreaterThanOrEqual(0);
    expect(waiting).toBeLessThanOrEqual(figures.simulated.team);
    if (figures.clock.network.isStep[i] !== 1) expect(waiting).toBe(0);
  });
});

test('each kind has a code of its own', () => {
  expect(new Set(TIMED_RULES.map(({ code }) => code)).size).toBe(TIMED_RULES.length);
});
