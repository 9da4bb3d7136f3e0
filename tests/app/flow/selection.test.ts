/** What is selected, lifted or pointed at is there; and whose name is asked for. */
import { beforeEach, expect, test } from 'vitest';
import { useGame } from '../../../app/store/game.ts';
import { useView } from '../../../app/store/view.ts';
import { openGame } from '../open-game.ts';

beforeEach(() => openGame());

test('what goes, by an edit or by an undo, is no longer selected', () => {
  const { apply, undo } = useGame.getState();
  apply([{ type: 'add', nodes: [{ id: 'new', kind: 'clue', name: 'Letter' }], links: [], positions: [] }]);
  useView.getState().askName('new');
  useView.getState().select(['new', 'note'], ['l1']);
  useView.getState().lift('new');
  useView.getState().point(['new', 'sum']);
  undo();
  expect([...useView.getState().nodes]).toEqual(['note']);
  expect([...useView.getState().links]).toEqual(['l1']);
  expect(useView.getState().lifted).toBeUndefined();
  expect([...useView.getState().pointed]).toEqual(['sum']);
  apply([{ type: 'remove', nodes: ['note'], links: [] }]);
  expect([useView.getState().nodes.size, useView.getState().links.size]).toEqual([0, 0]);
});

test('an edit that takes nothing away leaves the selection the same object', () => {
  useView.getState().select(['note'], ['l1']);
  const before = useView.getState();
  useGame.getState().apply([{ type: 'rename', id: 'note', name: 'Letter' }]);
  expect(useView.getState().nodes).toBe(before.nodes);
  expect(useView.getState().links).toBe(before.links);
});

test('asking for a name selects the thing alone; selecting something else withdraws the request', () => {
  useView.getState().select(['sum', 'tin'], ['l1']);
  useView.getState().askName('note');
  expect([...useView.getState().nodes, ...useView.getState().links]).toEqual(['note']);
  expect(useView.getState().naming).toBe('note');
  useView.getState().askName(undefined);
  expect(useView.getState().naming).toBeUndefined();
  expect([...useView.getState().nodes]).toEqual(['note']);
  useView.getState().askName('note');
  useView.getState().select(['sum']);
  expect(useView.getState().naming).toBeUndefined();
  useView.getState().askName('sum');
  useGame.getState().apply([{ type: 'remove', nodes: ['sum'], links: [] }]);
  expect(useView.getState().naming).toBeUndefined();
});
