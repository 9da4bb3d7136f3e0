/** What is kept, and by which window, whatever becomes of the page. */
import type { Page } from 'playwright/test';
import { SMALL } from './files.ts';
import { downloaded, expect, fileOf, openFiles, test } from './fixtures.ts';

const SMALL_FILE = fileOf('tea.latchmap.json', JSON.stringify(SMALL));
const ELSEWHERE = 'Another window has this game.';

const title = (page: Page, name: string) => page.getByRole('button', { name: `${name}: change the title` });

async function retitle(page: Page, from: string, to: string): Promise<void> {
  await title(page, from).click();
  await page.getByRole('textbox', { name: 'Title of the game' }).fill(to);
  await page.keyboard.press('Enter');
  await expect(title(page, to)).toBeVisible();
}

async function open(page: Page): Promise<void> {
  await openFiles(page, SMALL_FILE);
  await expect(title(page, 'The tea tin')).toBeVisible();
}

test('a change survives a reload that follows at once', async ({ page }) => {
  await open(page);
  for (const next of ['One', 'Two', 'Three', 'Four', 'Five', 'Six']) {
    const shown = page.getByRole('heading', { level: 1 }).getByRole('button');
    await shown.click();
    await page.getByRole('textbox', { name: 'Title of the game' }).fill(next);
    await page.evaluate(() => location.reload());
    await expect(title(page, next)).toBeVisible();
  }
});

test('the first change of an empty game is kept, and its window finds it again', async ({ page }) => {
  await retitle(page, 'Game without a title', 'From nothing');
  await page.reload();
  await expect(title(page, 'From nothing')).toBeVisible();
  await expect(page).toHaveURL(/#game=/);
});

test('the head says when the game was saved to a file, and what has changed since', async ({ page }) => {
  await open(page);
  await retitle(page, 'The tea tin', 'The coffee tin');
  const status = page.getByRole('banner').getByText(/^Saved to a file at/);
  await expect(status).toHaveText(/^Saved to a file .*; 1 change since$/);
  const { name, text } = await downloaded(page, () =>
    page.getByRole('banner').getByRole('button', { name: 'Save to a file' }).click(),
  );
  expect(name).toBe('The coffee tin.latchmap.json');
  expect(JSON.parse(text)).toMatchObject({ title: 'The coffee tin', revision: 1, basedOn: 'smallgame1' });
  await expect(status).toHaveText(/^Saved to a file at \d\d:\d\d$/);
  await page.reload();
  await expect(status).toHaveText(/^Saved to a file at \d\d:\d\d$/);
});

test.describe('a second window of the same game', () => {
  test('reads along, cannot edit, and takes over when the first closes', async ({ page, context }) => {
    await open(page);
    const second = await context.newPage();
    await second.goto(page.url());
    await expect(second.getByText(ELSEWHERE)).toBeVisible();
    await expect(title(second, 'The tea tin')).toBeDisabled();
    await second.getByRole('button', { name: 'Games' }).click();
    await second.getByRole('button', { name: 'Delete The tea tin', exact: true }).click();
    await expect(second.getByText('is being changed in another window, so it stays')).toBeVisible();
    await second.keyboard.press('Escape');
    await retitle(page, 'The tea tin', 'Seen from both');
    await expect(title(second, 'Seen from both')).toBeDisabled();

    await title(page, 'Seen from both').click();
    await page.getByRole('textbox', { name: 'Title of the game' }).fill('The last word');
    await page.close({ runBeforeUnload: true });
    await expect(title(second, 'The last word')).toBeEnabled();
    await expect(second.getByText(ELSEWHERE)).toBeHidden();
    await retitle(second, 'The last word', 'Mine now');
  });

  test('takes over when the first opens another game', async ({ page, context }) => {
    await open(page);
    const second = await context.newPage();
    await second.goto(page.url());
    await expect(second.getByText(ELSEWHERE)).toBeVisible();
    await page.getByRole('button', { name: 'Games' }).click();
    await page.getByRole('button', { name: 'New game' }).click();
    await expect(second.getByText(ELSEWHERE)).toBeHidden();
    await expect(title(second, 'The tea tin')).toBeEnabled();
  });

  test('is given the game when it asks for it, with all that was changed', async ({ page, context }) => {
    await open(page);
    const second = await context.newPage();
    await second.goto(page.url());
    await title(page, 'The tea tin').click();
    await page.getByRole('textbox', { name: 'Title of the game' }).fill('Handed over');
    await second.getByRole('button', { name: 'Take it over' }).click();
    await expect(title(second, 'Handed over')).toBeEnabled();
    await expect(page.getByText(ELSEWHERE)).toBeVisible();
    await second.close();
    await expect(title(page, 'Handed over')).toBeEnabled();
  });
});

test('a third window does not delete what another is changing', async ({ page, context }) => {
  await open(page);
  const third = await context.newPage();
  await third.goto('./');
  await third.getByRole('button', { name: 'Games' }).click();
  await third.getByRole('dialog').getByRole('button', { name: 'New game' }).click();
  await third.getByRole('button', { name: 'Games' }).click();
  const games = third.getByRole('dialog');
  await games.getByRole('button', { name: 'Delete The tea tin' }).click();
  await expect(
    third.getByText('“The tea tin” is being changed in another window, so it stays.'),
  ).toBeVisible();
  await expect(games.getByRole('button', { name: 'Open The tea tin' })).toBeVisible();
  await page.close();
  await games.getByRole('button', { name: 'Delete The tea tin' }).click();
  await expect(third.getByText('“The tea tin” was deleted.')).toBeVisible();
});

test.describe('a browser that stores nothing', () => {
  test('says so; the game goes on and can be saved to a file', async ({ page }) => {
    await page.addInitScript(() => {
      Object.defineProperty(window, 'indexedDB', {
        get() {
          throw new DOMException('The user denied permission to access the database.', 'SecurityError');
        },
      });
    });
    await page.reload();
    await open(page);
    await retitle(page, 'The tea tin', 'Nowhere kept');
    await expect(page.getByText('This browser keeps nothing after the page is closed')).toBeVisible();
    const { text } = await downloaded(page, () =>
      page.getByRole('banner').getByRole('button', { name: 'Save to a file' }).click(),
    );
    expect(JSON.parse(text)).toMatchObject({ title: 'Nowhere kept' });
  });

  test('or that has no room left says so, and stores again when it has', async ({ page }) => {
    await open(page);
    await page.evaluate(() => {
      const put = IDBObjectStore.prototype.put;
      Object.assign(window, { roomAgain: () => Object.assign(IDBObjectStore.prototype, { put }) });
      Object.assign(IDBObjectStore.prototype, {
        put() {
          throw new DOMException('', 'QuotaExceededError');
        },
      });
    });
    await retitle(page, 'The tea tin', 'No room');
    await expect(page.getByText('The browser has no room left')).toBeVisible();
    await page.evaluate('roomAgain()');
    await retitle(page, 'No room', 'Room again');
    await expect(page.getByText('The browser has no room left')).toBeHidden();
    await page.reload();
    await expect(title(page, 'Room again')).toBeVisible();
  });

  test('or whose store is full opens a file all the same', async ({ page, context, baseURL }) => {
    const { origin } = new URL(baseURL ?? '');
    const browser = await context.newCDPSession(page);
    await browser.send('Storage.overrideQuotaForOrigin', { origin, quotaSize: 1 });
    await open(page);
    await expect(page.getByText('the browser has no room left to keep it')).toBeVisible();
    await browser.send('Storage.overrideQuotaForOrigin', { origin });
    await retitle(page, 'The tea tin', 'Room again');
    await page.reload();
    await expect(title(page, 'Room again')).toBeVisible();
  });
});
