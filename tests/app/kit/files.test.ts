/** Files of the kit: nothing that was here is lost, each file is one undo, and each that is no kit says why. */
import { beforeEach, expect, test } from 'vitest';
import { takeFiles } from '../../../app/kit/files.ts';
import { useKit } from '../../../app/kit/kit-state.ts';
import { NOTHING_OWNED } from '../../../app/kit/owned.ts';
import { NO_THINGS, POOR_CUPBOARD } from '../../../e2e/kits.ts';
import { writeKit } from '../../../src/kit/write.ts';
import { KIT } from '../../../src/words/screen-kit.ts';

const state = () => useKit.getState();
const labels = () => state().owned.kit.items.map(({ label }) => label);
const file = (name: string, text: string) => new File([text], name);
const MINE = 'What;Label;How many\r\nkey lock;my own;3';

beforeEach(() => useKit.setState({ owned: NOTHING_OWNED, past: [], future: [], news: undefined }));

test('what comes is added; on demand what the file does not have goes, and undo brings it back', async () => {
  await takeFiles([file('mine.csv', MINE)]);
  expect(state().news?.act).toBeUndefined();
  await takeFiles([file('cupboard.csv', POOR_CUPBOARD)]);
  expect(labels()).toHaveLength(10);
  expect(state().news?.act?.label).toBe(KIT.onlyFile);
  state().news?.act?.run();
  expect(labels()).toHaveLength(9);
  expect(labels()).not.toContain('my own');
  expect(state().news?.lines).toEqual([
    'What I have is now as “cupboard.csv” says. Undo brings the rest back.',
  ]);
  state().undo();
  expect(labels()).toHaveLength(10);
  state().undo();
  expect(labels()).toEqual(['my own']);
});

test('a table of things says nothing of places', async () => {
  await takeFiles([file('room.csv', 'Place\r\nGlobe'), file('mine.csv', MINE)]);
  await takeFiles([file('cupboard.csv', POOR_CUPBOARD)]);
  state().news?.act?.run();
  expect(state().owned.kit.places.map(({ name }) => name)).toEqual(['Globe']);
});

test('a kit that was saved and is opened again changes nothing', async () => {
  await takeFiles([file('cupboard.csv', POOR_CUPBOARD)]);
  const { kit } = state().owned;
  await takeFiles([file('my-kit.json', writeKit(kit))]);
  expect(state().owned.kit).toEqual(kit);
  expect(state().past).toHaveLength(1);
  expect(state().news?.lines).toEqual([KIT.added('my-kit.json', 0, 0)]);
});

test('a table without ids, opened again, doubles nothing; two like lines are two things', async () => {
  await takeFiles([file('cupboard.csv', POOR_CUPBOARD), file('room.csv', 'Place;Zone\nGlobe;Maps')]);
  const { kit } = state().owned;
  await takeFiles([file('cupboard.csv', POOR_CUPBOARD), file('room.csv', 'Place\nglobe')]);
  expect(state().owned.kit).toEqual(kit);
  await takeFiles([file('twice.csv', `${MINE}\r\nkey lock;my own;3`)]);
  expect(labels().filter((label) => label === 'my own')).toHaveLength(2);
});

test('a table in the code page of Windows is read as it was written', async () => {
  const bytes = Uint8Array.from('Thing;Label;How many\nbox;Kiste f\u00fcr T\u00fcr;1', (sign) =>
    sign.charCodeAt(0),
  );
  await takeFiles([new File([bytes], 'kiste.csv')]);
  expect(labels()).toEqual(['Kiste für Tür']);
});

test('of several files the good ones are taken, and of each other one it is said what is wrong', async () => {
  await takeFiles([file('short.csv', NO_THINGS), file('mine.csv', MINE), file('empty.json', '')]);
  expect(labels()).toEqual(['my own']);
  const { lines, trouble } = state().news ?? { lines: [] };
  expect(trouble).toBe(true);
  expect(lines.filter((line) => line.endsWith('was not taken.'))).toEqual([
    KIT.notTaken('short.csv'),
    KIT.notTaken('empty.json'),
  ]);
  expect(lines.some((line) => line.includes('Thing'))).toBe(true);
});
