/** How many changes have not been saved to a file. */
import { beforeEach, expect, test } from 'vitest';
import { changesSince, type Mark, markNow } from '../../../app/keep/changes.ts';
import { useGame } from '../../../app/store/game.ts';
import { openGame } from '../open-game.ts';

const { apply, undo, redo } = useGame.getState();
const history = () => useGame.getState().history;
const rename = (name: string, tag?: string) => apply([{ type: 'rename', id: 'sum', name }], tag);
const since = (mark: Mark) => changesSince(history(), mark);

beforeEach(() => openGame());

test('an undo takes a change back, a redo does it again, and typing in one field is one', () => {
  const opened = markNow(history(), 2);
  expect(since(opened)).toBe(2);
  rename('A');
  rename('B', 'typing');
  rename('Be', 'typing');
  expect(since(opened)).toBe(4);
  undo();
  expect(since(opened)).toBe(3);
  redo();
  expect(since(opened)).toBe(4);
});

test('what is undone of what was saved is a change', () => {
  rename('A');
  rename('B');
  const saved = markNow(history(), 0);
  expect(since(saved)).toBe(0);
  undo();
  undo();
  expect(since(saved)).toBe(2);
  redo();
  expect(since(saved)).toBe(1);
  rename('C');
  expect(since(saved)).toBeUndefined();
});
