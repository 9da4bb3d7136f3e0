/** What a game loses by what is left out today: whole against today, in steps, minutes and chance. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { measure } from '../../src/engine/measures.ts';
import { compile } from '../../src/engine/network.ts';
import { assess } from '../../src/findings/assess.ts';
import { lossBy, lossOf } from '../../src/findings/loss.ts';
import type { Game } from '../../src/game/model.ts';
import { lossClause, lossSentence, wouldLose } from '../../src/words/left-out.ts';
import { plain } from '../../src/words/sentence.ts';
import { verdictOf } from '../../src/words/verdict.ts';
import { fixed, gameOf } from '../game-of.ts';
import { gameArbitrary } from '../random-game.ts';
import { type Change, winnable } from './small-games.ts';

/** A second lock on the chest with its own puzzle: six minutes, and both can be left out. */
const ROPE: readonly Change[] = [
  { id: 'tide', kind: 'puzzle', name: 'Tide puzzle', answer: 'UD', ...fixed(12) },
  {
    id: 'rope',
    kind: 'fastener',
    on: 'chest',
    name: 'Rope lock',
    type: 'direction',
    code: 'UD',
    ...fixed(2),
  },
];
const LINKS = ['tide>rope'];
const without = (...ids: string[]): Game =>
  winnable(
    ROPE.map((node) => (ids.includes(node.id) ? { ...node, leftOut: true } : node)),
    LINKS,
  );

function told(game: Game, chances?: { readonly now: number; readonly whole: number }): string {
  const loss = lossOf(assess(game));
  return loss ? plain(lossSentence(game, loss, chances)) : '';
}

describe('what is lost by what is left out', () => {
  it('is nothing to be said of a game that is used whole', () => {
    expect(lossOf(assess(without()))).toBeUndefined();
    expect(verdictOf(assess(without()), undefined).today).toEqual([]);
  });

  it('is told in steps and minutes, and in the verdict in a clause', () => {
    const game = without('tide', 'rope');
    const all = measure(compile(without()));
    const now = measure(compile(game));
    expect(lossOf(assess(game))).toEqual({
      things: ['rope', 'tide'],
      steps: 2,
      minutes: all.shortest - now.shortest,
      solvable: { now: true, whole: true },
    });
    expect(told(game)).toBe('Without Rope lock and Tide puzzle today: 2 steps and 4.7 minutes less.');
    const { today } = verdictOf(assess(game), undefined);
    expect(plain(today ?? [])).toBe('Today 2 steps and 4.7 minutes less.');
    expect(today).toContainEqual({ topic: 'leftOut', text: '2 steps and 4.7 minutes less' });
  });

  it('is told with the chances once these are known', () => {
    const game = without('tide', 'rope');
    expect(told(game, { now: 0.91, whole: 0.68 })).toContain(
      'less. About 9 lessons in 10 finish before the bell, with them about 7 in 10.',
    );
    expect(told(game, { now: 1, whole: 1 })).toContain(
      'All lessons finish before the bell, with them or without.',
    );
  });

  it('is told where nothing is lost, and where it is more', () => {
    const spare = winnable([
      { id: 'lens', kind: 'tool', name: 'Lens', decoy: true, ...fixed(0), leftOut: true },
    ]);
    expect(told(spare)).toBe('Without Lens today: the same steps and time.');
    expect(lossClause({ things: ['x'], steps: 0, minutes: 0, solvable: { now: true, whole: true } })).toEqual(
      [],
    );
    const loss = { things: ['x'], steps: 3, minutes: -2, solvable: { now: true, whole: true } };
    expect(plain(lossClause(loss))).toBe('Today 3 steps fewer, and 2 minutes more.');
    expect(plain(lossClause({ ...loss, steps: -1 }))).toBe('Today 1 step and 2 minutes more.');
  });

  it('is known before anything is left out', () => {
    const whole = assess(without());
    const before = lossBy(whole, ['tide', 'rope']);
    const then = lossOf(assess(without('tide', 'rope')));
    expect(before).toEqual({ ...then, things: ['tide', 'rope'], stops: false });
    expect(before && wouldLose(before)).toBe('Not today: 2 steps and 4.7 minutes less.');
    const key = lossBy(whole, ['tag']);
    expect(key && wouldLose(key)).toBe('Not today: a prize could not be reached.');
    expect(lossBy(whole, ['nothing of the kind'])).toBeUndefined();
  });

  it('is not what leaving out would do to a game that then gives its prize away', () => {
    const game = gameOf(
      [
        { id: 'chest', kind: 'container', name: 'Chest' },
        { id: 'lock', kind: 'fastener', name: 'Lock', on: 'chest', type: 'number', code: '472' },
        { id: 'sum', kind: 'puzzle', name: 'Sum', answer: '472' },
        { id: 'cup', kind: 'prize', name: 'Cup', in: 'chest' },
      ],
      ['sum>lock'],
    );
    const chest = lossBy(assess(game), ['chest']);
    expect(chest && wouldLose(chest)).toBe('Not today: it could not be won, or a prize would be given away.');
  });

  it('says where a prize hangs on it', () => {
    const game = winnable([{ id: 'tag', kind: 'key', in: 'tin', leftOut: true }]);
    expect(told(game)).toMatch(/^Without tag today: .* With it every prize could be reached\.$/);
  });

  it('is the difference to the game without the marks, on random games', () => {
    fc.assert(
      fc.property(gameArbitrary(), (game) => {
        const loss = lossOf(assess(game));
        const marked = [...game.nodes.values()].filter(({ leftOut }) => leftOut === true);
        expect(loss !== undefined).toBe(marked.length > 0);
        if (!loss) return;
        const nodes = new Map([...game.nodes].map(([id, { leftOut: _, ...node }]) => [id, node] as const));
        const all = measure(compile({ ...game, nodes }));
        const now = measure(compile(game));
        expect([...loss.things].sort()).toEqual(marked.map(({ id }) => id).sort());
        expect(now.steps + loss.steps).toBe(all.steps);
        expect(loss.solvable).toEqual({ now: now.solvable, whole: all.solvable });
        if (loss.minutes !== undefined) expect(now.shortest + loss.minutes).toBeCloseTo(all.shortest, 6);
        else expect(now.solvable && all.solvable).toBe(false);
      }),
      { seed: 41, numRuns: 200 },
    );
  });
});
