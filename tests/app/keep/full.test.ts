/** A browser whose store is full: games still open, nothing on the page is lost, and the right thing is said. */
import { beforeAll, beforeEach, expect, test, vi } from 'vitest';
import { openFiles } from '../../../app/keep/arriving.ts';
import { beginGame, deleteGame, startKeeping } from '../../../app/keep/keeping.ts';
import { passingShelf } from '../../../app/keep/shelf.ts';
import { useKeep } from '../../../app/keep/state.ts';
import { useGame } from '../../../app/store/game.ts';
import { SMALL } from '../../../e2e/files.ts';
import { NEWS } from '../../../src/words/keep.ts';

const room = vi.hoisted(() => ({ full: false }));

vi.mock(import('../../../app/keep/database.ts'), async () => ({
  openShelf: async () => {
    const shelf = passingShelf();
    return {
      ...shelf,
      lasts: true,
      write: async (...kept) => {
        if (room.full) throw new DOMException('', 'QuotaExceededError');
        return shelf.write(...kept);
      },
    };
  },
}));

const file = (id: string, title: string) =>
  new File([JSON.stringify({ ...SMALL, id, title })], `${id}.latchmap.json`);
const title = () => useGame.getState().game.head.title;
const news = () => useKeep.getState().news?.sentence;
const rename = () => useGame.getState().apply([{ type: 'rename', id: 'sum', name: 'Count the leaves' }]);

beforeAll(() => startKeeping());
beforeEach(async () => {
  room.full = false;
  await beginGame();
});

test('a file that is dropped is opened all the same', async () => {
  room.full = true;
  await openFiles([file('a', 'Tea'), file('b', 'Coffee')]);
  expect(title()).toBe('Tea');
  expect(news()).toBe(NEWS.noRoomFor('Tea'));
  expect(useKeep.getState().failures).toEqual([{ file: 'b.latchmap.json', lines: [NEWS.noRoom] }]);
  expect(useKeep.getState().storage).toBe('full');
});

test('it is stored with its next change, once there is room', async () => {
  room.full = true;
  await openFiles([file('c', 'Cocoa')]);
  const id = useKeep.getState().open?.id;
  expect(useKeep.getState().games.map((game) => game.id)).not.toContain(id);
  room.full = false;
  rename();
  await openFiles([file('d', 'Water')]);
  expect(title()).toBe('Water');
  expect(useKeep.getState().games.map((game) => game.id)).toContain(id);
});

test('changes that are on the page alone stay on the page, unless their game is deleted', async () => {
  await openFiles([file('e', 'Juice')]);
  room.full = true;
  rename();
  await openFiles([file('f', 'Milk')]);
  expect(title()).toBe('Juice');
  expect(news()).toBe(NEWS.onlyHere('Juice'));
  await deleteGame(useKeep.getState().open?.id ?? '');
  expect(title()).toBeUndefined();
});
