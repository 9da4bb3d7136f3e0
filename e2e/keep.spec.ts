/** Keeping, opening and saving games. */
import { writeFile } from 'node:fs/promises';
import { BAD_FILES, changed, SMALL } from './files.ts';
import { downloaded, expect, fileOf, openFiles, test } from './fixtures.ts';

const SMALL_FILE = fileOf('tea.latchmap.json', JSON.stringify(SMALL));

test.describe('bad files', () => {
  test('it is said what is wrong, and the open game stays', async ({ page }) => {
    await openFiles(page, SMALL_FILE);
    await expect(page).toHaveURL(/#game=/);
    const before = page.url();
    const news = page.getByRole('region', { name: 'What happened to a game' });
    for (const { what, text, says } of BAD_FILES) {
      await test.step(what, async () => {
        await openFiles(page, fileOf(`${what}.json`, text));
        await expect(news).toContainText(`“${what}.json” was not opened.`);
        await expect(news).toContainText(says);
        expect(page.url()).toBe(before);
      });
    }
  });

  test('50 MB of junk are answered unread', async ({ page }, testInfo) => {
    const path = testInfo.outputPath('junk.json');
    await writeFile(path, Buffer.alloc(50_000_000, '[{"'));
    await openFiles(page, path);
    await expect(page.getByText('“junk.json” was not opened.')).toBeVisible();
    await expect(page.getByText(/too large/)).toBeVisible();
  });

  test('markup in names and titles is text', async ({ page }) => {
    const markup = '<img src=x onerror="document.title=1"><script>document.title=2</script>';
    const text = changed((game) => {
      game.title = markup;
      for (const node of game.nodes) node.name = markup;
    });
    await openFiles(page, fileOf(`${markup.replaceAll('/', '')}.json`, text));
    await expect(page).toHaveURL(/#game=/);
    await page.getByRole('button', { name: 'Games' }).click();
    await expect(page.getByRole('dialog').getByText(markup)).toBeVisible();
    await expect(page).not.toHaveTitle(/^[12]$/);
  });

  test('keys that could mislead programs are left away, and it is said so', async ({ page }) => {
    const text = JSON.stringify(SMALL).replace('{', '{"__proto__":{"polluted":true},');
    await openFiles(page, fileOf('proto.json', text));
    await expect(page.getByText('__proto__')).toBeVisible();
    expect(await page.evaluate(() => 'polluted' in {})).toBe(false);
  });
});

test.describe('opening', () => {
  test('a file that is here already opens that game; one that differs becomes a copy beside it', async ({
    page,
  }) => {
    await openFiles(page, SMALL_FILE);
    await expect(page).toHaveURL(/#game=/);
    const first = page.url();
    await openFiles(page, SMALL_FILE);
    await expect(page.getByText('“The tea tin” is already here, just as in the file.')).toBeVisible();
    expect(page.url()).toBe(first);

    await openFiles(
      page,
      fileOf(
        'other.json',
        changed((game) => game.nodes.pop()),
      ),
    );
    await expect(
      page.getByText('“The tea tin” was opened as a copy beside the one that was here.'),
    ).toBeVisible();
    expect(page.url()).not.toBe(first);
    await page.getByRole('button', { name: 'Games' }).click();
    await expect(page.getByRole('button', { name: 'Open The tea tin' })).toHaveCount(2);
  });

  test('of several files the good ones open and of the others it is said what is wrong', async ({ page }) => {
    await openFiles(
      page,
      fileOf('bad.json', '{'),
      SMALL_FILE,
      fileOf(
        'second.json',
        changed((game) => Object.assign(game, { id: 'another', title: 'The second' })),
      ),
    );
    const news = page.getByRole('region', { name: 'What happened to a game' });
    await expect(news).toContainText('“bad.json” was not opened.');
    await expect(news).toContainText('2 games were opened');
    await page.getByRole('button', { name: 'Games' }).click();
    await expect(page.getByRole('button', { name: 'Open The tea tin' })).toHaveAttribute(
      'aria-current',
      'true',
    );
    await expect(page.getByRole('button', { name: 'Open The second' })).toBeVisible();
  });

  test('a file can be let go anywhere on the page', async ({ page }) => {
    const held = await page.evaluateHandle((text) => {
      const data = new DataTransfer();
      data.items.add(new File([text], 'dropped.json'));
      return data;
    }, JSON.stringify(SMALL));
    await page.getByRole('main').dispatchEvent('dragover', { dataTransfer: held });
    await expect(page.getByText('Let go to open the file.')).toBeVisible();
    await page.getByRole('main').dispatchEvent('drop', { dataTransfer: held });
    await expect(page).toHaveURL(/#game=/);
    await expect(page.getByText('Let go to open the file.')).toBeHidden();
  });

  test('an example opens as a copy, and an untouched copy opens again', async ({ page }) => {
    const open = () => page.getByRole('button', { name: 'The pump in the greenhouse', exact: true }).click();
    await open();
    await expect(page).toHaveURL(/#game=/);
    const first = page.url();
    await page.getByRole('button', { name: 'Games' }).click();
    await page.getByRole('button', { name: 'New game' }).click();
    await expect(page).not.toHaveURL(/#game=/);
    await open();
    await expect(page).toHaveURL(first);
  });
});

test.describe('the list of games', () => {
  test('a game is duplicated, deleted, brought back, and opened after a reload', async ({ page }) => {
    await openFiles(page, SMALL_FILE);
    await expect(page).toHaveURL(/#game=/);
    const first = page.url();
    const games = page.getByRole('button', { name: 'Games' });
    await games.click();
    await page.getByRole('button', { name: 'Duplicate The tea tin' }).click();
    await expect(page.getByRole('button', { name: 'Open The tea tin (copy)' })).toBeVisible();
    await page.getByRole('button', { name: 'Delete The tea tin', exact: true }).click();
    await expect(page.getByText('It stays in Games for seven days.')).toBeVisible();
    await page.reload();
    await games.click();
    await page.getByRole('button', { name: 'Bring The tea tin back' }).click();
    await page.getByRole('button', { name: 'Open The tea tin', exact: true }).click();
    await expect(page).toHaveURL(first);
    await page.reload();
    await games.click();
    await expect(page.getByRole('button', { name: 'Open The tea tin', exact: true })).toHaveAttribute(
      'aria-current',
      'true',
    );
    // Opened anew without an address: the game last on the page, not the copy that was made later.
    await page.goto('about:blank');
    await page.goto('/');
    await expect(page).toHaveURL(first);
  });

  test('a damaged game is said to be so, leaves the others alone, and its text can be saved', async ({
    page,
  }) => {
    await openFiles(page, SMALL_FILE);
    await expect(page).toHaveURL(/#game=/);
    const damaged = page.url();
    await openFiles(
      page,
      fileOf(
        'second.json',
        changed((game) => Object.assign(game, { id: 'b', title: 'The second' })),
      ),
    );
    await expect(page).not.toHaveURL(damaged);
    const id = new URLSearchParams(new URL(damaged).hash.slice(1)).get('game');
    await page.evaluate(
      (key) =>
        new Promise<void>((resolve, reject) => {
          const opening = indexedDB.open('latchmap');
          opening.onerror = () => reject(opening.error);
          opening.onsuccess = () => {
            const change = opening.result.transaction('documents', 'readwrite');
            change.objectStore('documents').put('{"format":"latch', key ?? '');
            change.oncomplete = () => {
              opening.result.close();
              resolve();
            };
          };
        }),
      id,
    );
    await page.getByRole('button', { name: 'Games' }).click();
    await page.getByRole('button', { name: 'Open The tea tin' }).click();
    await expect(page.getByText('“The tea tin” cannot be read')).toBeVisible();
    const { name, text } = await downloaded(page, () =>
      page.getByRole('button', { name: 'Save what is there' }).click(),
    );
    expect([name, text]).toEqual(['The tea tin.latchmap.json', '{"format":"latch']);
    await page.getByRole('button', { name: 'Games' }).click();
    await expect(page.getByRole('button', { name: 'Open The second' })).toHaveAttribute(
      'aria-current',
      'true',
    );
  });
});
