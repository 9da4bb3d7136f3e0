import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { useGame } from '../../../app/store/game.ts';
import type { Game } from '../../../src/game/model.ts';
import { writeGame } from '../../../src/game/write.ts';
import { countingIds, gestureEdits, gesturesArbitrary } from '../../random-edits.ts';
import { gameArbitrary } from '../../random-game.ts';

const provenance = { id: 'g', revision: 0 };
const textOf = (game: Game) => writeGame({ provenance, game });
const now = () => useGame.getState();
const shown = () => textOf(now().game);

const tags = fc.array(fc.constantFrom(undefined, undefined, 'name a', 'name b'), {
  minLength: 12,
  maxLength: 12,
});

describe('the open game', () => {
  test('undone step by step it is every state before, redone it is every state after', () => {
    fc.assert(
      fc.property(gameArbitrary({ size: 12 }), gesturesArbitrary, tags, (game, gestures, tagged) => {
        now().open(game, provenance);
        const newId = countingIds();
        const states = [shown()];
        for (const [i, gesture] of gestures.entries()) {
          now().apply(gestureEdits(now().game, gesture, newId), tagged[i]);
          const { past } = now().history;
          states[past.length] = shown();
        }
        const end = states.slice(0, now().history.past.length + 1);
        for (let at = end.length - 2; at >= 0; at--) {
          now().undo();
          expect(shown()).toBe(end[at]);
        }
        expect(now().history.past).toEqual([]);
        for (let at = 1; at < end.length; at++) {
          now().redo();
          expect(shown()).toBe(end[at]);
        }
        expect(now().history.future).toEqual([]);
      }),
      { seed: 17, numRuns: 120 },
    );
  });

  test('edits with one tag are one undo, until the gesture is settled', () => {
    const named = (name: string) => [{ type: 'rename' as const, id: 'p', name }];
    const node = { id: 'p', kind: 'place' as const, name: '' };
    now().open(
      { head: {}, nodes: new Map([['p', node]]), links: new Map(), positions: new Map() },
      provenance,
    );
    for (const name of ['W', 'Wi', 'Win']) now().apply(named(name), 'name p');
    now().settle();
    now().apply(named('Window'), 'name p');
    expect(now().history.past).toHaveLength(2);
    now().undo();
    expect(now().game.nodes.get('p')?.name).toBe('Win');
    now().undo();
    expect(now().game.nodes.get('p')).toEqual(node);
  });

  test('what gives way to a grown tray goes back with the same undo', () => {
    const nodes = [
      { id: 'a', kind: 'container' as const, name: 'Green tin' },
      { id: 'b', kind: 'container' as const, name: 'Bait box' },
      ...['1', '2', '3', '4'].map((id) => ({ id, kind: 'clue' as const, name: `Card ${id}` })),
    ];
    const game: Game = {
      head: {},
      nodes: new Map(nodes.map((node) => [node.id, node])),
      links: new Map(),
      positions: new Map([
        ['a', { x: 0, y: 0 }],
        ['b', { x: 0, y: 100 }],
        ...['1', '2', '3', '4'].map((id, i) => [id, { x: 600, y: 60 * i }] as const),
      ]),
    };
    now().open(game, provenance);
    const before = shown();
    now().apply([{ type: 'place', ids: ['1', '2', '3', '4'], holder: 'a' }]);
    expect(now().game.positions.get('b')?.y).toBeGreaterThan(100);
    expect(now().history.past).toHaveLength(1);
    now().undo();
    expect(shown()).toBe(before);
  });

  test('another window’s game takes no edits and no undo', () => {
    now().open({ head: {}, nodes: new Map(), links: new Map(), positions: new Map() }, provenance);
    const edit = { type: 'setHead' as const, fields: { title: 'Mine' } };
    expect(now().apply([edit])).toBe(true);
    now().setReadOnly(true);
    expect(now().apply([{ ...edit, fields: { title: 'Yours' } }])).toBe(false);
    now().undo();
    expect(now().game.head.title).toBe('Mine');
    now().setReadOnly(false);
  });
});
