import { describe, expect, it } from 'vitest';
import { reportOf } from '../../../src/engine/report.ts';
import { simulate } from '../../../src/engine/simulation/batch.ts';
import { momentOf } from '../../../src/engine/simulation/moment.ts';
import { PLAIN, statedRules } from '../../../src/engine/simulation/rules.ts';
import { fixed, gameOf, type NodeDraft } from '../../game-of.ts';
import { longGame } from './long-game.ts';
import { clockFor, withLesson } from './played.ts';

const search: NodeDraft[] = [
  { id: 'spot', kind: 'place' },
  { id: 'prize', kind: 'prize', in: 'spot' },
];

describe('games that nobody would plan', () => {
  it('are not simulated when they cannot be won', () => {
    const never = [
      gameOf([]),
      gameOf([{ id: 'spot', kind: 'place' }]),
      gameOf([
        { id: 'box', kind: 'container' },
        { id: 'lock', kind: 'fastener', on: 'box', type: 'key' },
        { id: 'prize', kind: 'prize', in: 'box' },
      ]),
      gameOf(
        [
          { id: 'z', kind: 'puzzle', need: 2 },
          { id: 'key', kind: 'key' },
          { id: 'prize', kind: 'prize' },
        ],
        ['key>z', 'z>prize'],
      ),
      gameOf(
        [
          { id: 'a', kind: 'puzzle' },
          { id: 'b', kind: 'puzzle' },
          { id: 'prize', kind: 'prize' },
        ],
        ['a>b', 'b>a', 'b>prize'],
      ),
    ];
    for (const game of never) {
      expect(simulate(clockFor(game), PLAIN, 5)).toBeUndefined();
      expect(reportOf(game)).not.toHaveProperty('waiting');
    }
  });

  it('are counted truly with more pupils than whole numbers of 32 bits hold', () => {
    const few = simulate(clockFor(withLesson(gameOf(search), { pupils: 1_000_000, teams: 1 })), PLAIN, 50);
    const many = simulate(clockFor(withLesson(gameOf(search), { pupils: 2 ** 32, teams: 1 })), PLAIN, 50);
    expect(many?.median).toBe(few?.median);
    expect(many?.team).toBeGreaterThan(1_000_000);
    expect(many?.idle).toBeGreaterThan(few?.idle ?? 0);
  });

  it('end at once without steps, or with steps that take no time', () => {
    const nothing = { minutes: { low: 0, likely: 0, high: 0 } };
    const games = [
      gameOf([{ id: 'prize', kind: 'prize' }]),
      gameOf(search.map((node) => ({ ...node, ...nothing }))),
      gameOf(search.map((node) => ({ ...node, minutes: { low: 0, likely: 0, high: 1e-12 } }))),
    ];
    for (const game of games) {
      const result = simulate(clockFor(withLesson(game, { minutes: 0 })), PLAIN, 20);
      expect(result).toMatchObject({ inTime: 1, profile: { minutes: expect.anything() } });
      expect(result?.median).toBeCloseTo(0, 9);
      expect(result?.idle).toBeCloseTo(0, 9);
    }
  });

  it('have figures that are numbers, whatever the lesson says', () => {
    const game = {
      ...gameOf(
        search.map((node) => ({ ...node, checked: true, shared: node.kind === 'place' ? 1 : undefined })),
      ),
    };
    const lessons = [
      { pupils: 0, teams: 0, minutes: 0, adults: 0, hints: 0 },
      { pupils: 3, teams: 9 },
      { pupils: 1_000_000, teams: 1, adults: 1_000_000, hints: 1_000_000 },
      { pupils: 10, teams: 100_000 },
      { pupils: 5, teams: 2, hintMinutes: 0, checkMinutes: 0 },
    ];
    for (const lesson of lessons) {
      const clock = clockFor(withLesson(game, lesson));
      for (const rules of [PLAIN, statedRules(clock), { ...statedRules(clock), hints: 2 }]) {
        const result = simulate(clock, rules, 3);
        for (const figure of [
          result?.median,
          result?.p10,
          result?.p90,
          result?.inTime,
          result?.idle,
          ...(result?.idleWhile ?? []),
        ]) {
          expect(Number.isFinite(figure)).toBe(true);
        }
      }
    }
    expect(simulate(clockFor(withLesson(game, { minutes: 0 })), PLAIN, 20)?.inTime).toBe(0);
  });

  it('add times of very different size without standing still', () => {
    const game = gameOf(
      [
        { id: 'letter', kind: 'clue', atMinute: 1_000_000 },
        { id: 'a', kind: 'puzzle', minutes: { low: 0, likely: 1e-9, high: 1_000_000 } },
        { id: 'b', kind: 'puzzle', ...fixed(1e-9) },
        { id: 'prize', kind: 'prize' },
      ],
      ['letter>b', 'a>b', 'b>prize'],
    );
    const result = simulate(clockFor(game), PLAIN, 50);
    expect(result?.median).toBeCloseTo(1_000_000, 3);
    expect(result?.profile.minutes.length).toBeLessThanOrEqual(240);
  });

  it('may have 3,000 nodes: every prize is reached, and the report rests on fewer runs and says so', () => {
    const game = longGame(100, 5);
    const clock = clockFor(game);
    const result = simulate(clock, PLAIN, 3);
    expect(result?.ends.every(Number.isFinite)).toBe(true);
    expect(result && momentOf(clock, result.typical, result.median / 2).busy).toBe(6);
    const wide = reportOf(longGame(20, 6));
    // 722 nodes, 1,200,000 nodes in all runs.
    expect(wide.runs).toEqual({ minutes: 1662, cost: 0 });
    expect(wide).not.toHaveProperty('cost');
    expect(Object.keys(wide.waiting?.byStep ?? {})).toHaveLength(wide.steps.total);
  });
});
