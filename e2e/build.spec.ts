/** A teacher's first game: dragged together, broken, mended, saved and opened again. */
import { downloaded, expect, fileOf, openFiles, test } from './fixtures.ts';
import { bringIn, dragTo, link, thing, verdict } from './hands.ts';

/** A game without what tells its copies apart. */
function contentOf(text: string): unknown {
  const { id: _id, revision: _revision, basedOn: _basedOn, ...content } = JSON.parse(text);
  return content;
}

test('a game is built by dragging alone, and the verdict turns with it', async ({ page }) => {
  const says = (words: string | RegExp) => expect(verdict(page)).toContainText(words);
  const save = () =>
    downloaded(page, () => page.getByRole('banner').getByRole('button', { name: 'Save to a file' }).click());

  await says('Nothing to win yet.');
  const place = await bringIn(page, 'Place', { x: 220, y: 130 });
  await says('Nothing to win yet. There is no prize.');
  const tin = await bringIn(page, 'Box', { x: 800, y: 130 });
  const chest = await bringIn(page, 'Box', { x: 800, y: 420 });
  const prize = await bringIn(page, 'Prize', thing(page, chest));
  await says('can be had without a single step');

  const tinLock = await bringIn(page, 'Lock', thing(page, tin));
  const keyLock = await bringIn(page, 'Lock', thing(page, chest));
  const codeLock = await bringIn(page, 'Lock', thing(page, chest));
  await says('Nothing opens');
  const key = await bringIn(page, 'Key', thing(page, place));
  const clue = await bringIn(page, 'Clue', thing(page, place));
  const innerKey = await bringIn(page, 'Key', thing(page, tin));
  const innerClue = await bringIn(page, 'Clue', thing(page, tin));
  const puzzle = await bringIn(page, 'Puzzle', { x: 480, y: 400 });

  await link(page, key, tinLock);
  await link(page, innerKey, keyLock);
  await link(page, clue, puzzle);
  await link(page, innerClue, puzzle);
  await says('It cannot be won.');
  await link(page, puzzle, codeLock);
  await says(/It can be won\..*All 5 steps are needed\./);

  await test.step('a key in the box that it opens stops the game', async () => {
    await dragTo(page, key, thing(page, tin));
    await says('It cannot be won. The key New key lies in New box, the box that it opens.');
    await page.keyboard.press('Escape');
    const findings = page.getByRole('complementary');
    await expect(findings).toContainText(
      'The key New key lies in New box, the box that it opens. Nobody can reach it.',
    );
    await expect(thing(page, tinLock)).toContainText('cannot open');
    await findings.getByRole('button', { name: 'Put it in New hiding place' }).click();
    await says('It can be won.');
  });

  const saved = await save();
  expect(contentOf(saved.text)).toMatchObject({
    nodes: expect.arrayContaining([
      expect.objectContaining({ id: key, kind: 'key', in: place }),
      expect.objectContaining({ id: codeLock, kind: 'fastener', on: chest }),
      expect.objectContaining({ id: prize, kind: 'prize', in: chest }),
    ]),
    links: expect.arrayContaining([expect.objectContaining({ from: puzzle, to: codeLock })]),
  });

  await test.step('after a reload, the file opens the game that is here', async () => {
    const address = page.url();
    await page.reload();
    await says('It can be won.');
    await openFiles(page, fileOf(saved.name, saved.text));
    await expect(page.getByText('is already here, just as in the file.')).toBeVisible();
    expect(page.url()).toBe(address);
    await page.getByRole('button', { name: 'Games' }).click();
    const again = await downloaded(page, () =>
      page.getByRole('dialog').getByRole('button', { name: 'Save to a file' }).click(),
    );
    expect(contentOf(again.text)).toEqual(contentOf(saved.text));
  });

  await test.step('in the browser of a colleague, it is the same game', async () => {
    const browser = page.context().browser();
    const colleague = await browser?.newPage({ baseURL: new URL(page.url()).origin });
    if (!colleague) throw new Error('no browser');
    await colleague.goto('/');
    await openFiles(colleague, fileOf(saved.name, saved.text));
    await expect(verdict(colleague)).toContainText('It can be won.');
    await colleague.getByRole('button', { name: 'Games' }).click();
    const theirs = await downloaded(colleague, () =>
      colleague.getByRole('dialog').getByRole('button', { name: 'Save to a file' }).click(),
    );
    expect(contentOf(theirs.text)).toEqual(contentOf(saved.text));
    await colleague.close();
  });
});

test('undo and redo by keyboard go back to nothing and forth again', async ({ page }) => {
  const nodes = page.locator('.react-flow__node');
  const place = await bringIn(page, 'Place', { x: 300, y: 200 });
  await bringIn(page, 'Clue', thing(page, place));
  const boxOf = () => thing(page, place).boundingBox();
  const first = await boxOf();
  await dragTo(page, place, { x: 700, y: 500 });
  await page.keyboard.press('Escape');
  await expect.poll(boxOf).not.toEqual(first);
  const moved = await boxOf();
  for (const left of [2, 1, 0]) {
    await page.keyboard.press('Control+z');
    await expect(nodes).toHaveCount(left);
  }
  await page.keyboard.press('Control+z');
  await expect(page.getByRole('button', { name: 'Undo' })).toBeDisabled();
  await expect(nodes).toHaveCount(0);
  for (let i = 0; i < 3; i++) await page.keyboard.press('Control+Shift+z');
  await expect(nodes).toHaveCount(2);
  await expect.poll(boxOf).toEqual(moved);
});
