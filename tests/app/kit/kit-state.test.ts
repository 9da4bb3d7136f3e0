/** One history for kit and game, while my kit is open. */
import { beforeEach, expect, test } from 'vitest';
import { useKit } from '../../../app/kit/kit-state.ts';
import { NOTHING_OWNED } from '../../../app/kit/owned.ts';
import { TEMPLATES } from '../../../app/kit/templates.ts';
import { tap, writeCount } from '../../../app/kit/write.ts';
import { useGame } from '../../../app/store/game.ts';
import { openGame } from '../open-game.ts';

const kit = () => useKit.getState();
const total = () => kit().owned.kit.items.reduce((sum, { count }) => sum + count, 0);
const name = () => useGame.getState().game.nodes.get('sum')?.name;
const rename = (to: string, tag?: string) => kit().changeGame([{ type: 'rename', id: 'sum', name: to }], tag);
const [number3] = TEMPLATES;
const tapOnce = () => number3 && tap(number3);

beforeEach(() => {
  useKit.setState({ owned: NOTHING_OWNED, past: [], future: [] });
  openGame();
});

test('the last change is taken back first, whether it was to the kit or to the game', () => {
  tapOnce();
  rename('Count');
  tapOnce();
  const states: unknown[] = [];
  while (kit().past.length > 0) {
    states.push([total(), name()]);
    kit().undo();
  }
  expect(states).toEqual([
    [2, 'Count'],
    [1, 'Count'],
    [1, 'Add the rows'],
  ]);
  expect([total(), name()]).toEqual([0, 'Add the rows']);
  for (let i = 0; i < 3; i++) kit().redo();
  expect([total(), name()]).toEqual([2, 'Count']);
  kit().redo();
  expect([total(), name()]).toEqual([2, 'Count']);
});

test('what is typed into one field is one undo, in the kit and in the game, and a field that is left ends it', () => {
  tapOnce();
  const id = kit().owned.kit.items[0]?.id ?? '';
  writeCount(id, 1, 'count');
  writeCount(id, 12, 'count');
  kit().settle();
  writeCount(id, 123, 'count');
  expect(kit().past).toHaveLength(3);
  kit().undo();
  expect(total()).toBe(12);
  kit().undo();
  expect(total()).toBe(1);
  rename('C', 'name');
  rename('Co', 'name');
  kit().settle();
  rename('Cou', 'name');
  kit().undo();
  expect(name()).toBe('Co');
  kit().undo();
  expect(name()).toBe('Add the rows');
  expect(total()).toBe(1);
});

test('what was done to the game on the map meanwhile is left to the map', () => {
  tapOnce();
  rename('Count');
  kit().leaveGame();
  useGame.getState().apply([{ type: 'rename', id: 'sum', name: 'On the map' }]);
  kit().undo();
  expect([total(), name()]).toEqual([0, 'On the map']);
  kit().redo();
  rename('In the kit');
  useGame.getState().apply([{ type: 'rename', id: 'sum', name: 'From elsewhere' }]);
  kit().undo();
  expect([total(), name()]).toEqual([0, 'From elsewhere']);
});

test('another game can be opened between two changes', () => {
  rename('Count');
  openGame();
  kit().undo();
  expect(name()).toBe('Add the rows');
  expect(kit().past).toEqual([]);
});
