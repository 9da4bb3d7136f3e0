import { expect, test } from 'vitest';
import { passingShelf } from '../../../app/keep/shelf.ts';

const kept = {
  id: '__proto__',
  title: 'One',
  basedOn: undefined,
  edited: 1,
  filed: undefined,
  changes: 0,
  deleted: undefined,
};

test('gives back what was put there, and its list follows', async () => {
  const shelf = passingShelf();
  await shelf.write(kept, 'text');
  await shelf.note({ ...kept, deleted: 5 });
  expect(await shelf.read(kept.id)).toEqual({ kept: { ...kept, deleted: 5 }, text: 'text' });
  await shelf.remove(kept.id);
  expect(await shelf.list()).toEqual([]);
});

test('an entry alone makes no game', async () => {
  const shelf = passingShelf();
  await shelf.note(kept);
  expect(await shelf.read(kept.id)).toBeUndefined();
});
