/** The connection goes: what was fetched ahead goes on without it, what was not says so and can be asked for again. */
import type { Page } from 'playwright/test';
import { PARTS } from '../src/words/parts.ts';
import { expect, test } from './fixtures.ts';
import { bringIn, verdict } from './hands.ts';

const TITLE = 'Every label is wrong';

// Pages are laid out in full; this only ends what hangs.
test.describe.configure({ timeout: 120_000 });

const banner = (page: Page) => page.getByRole('banner');
const tidy = (page: Page) => page.getByRole('navigation').getByRole('button', { name: /^Tidy up/ });
const print = (page: Page) => banner(page).getByRole('button', { name: 'Print' });
const openExample = (page: Page) => page.getByRole('main').getByRole('button', { name: TITLE }).click();

const fetched = (page: Page): Promise<string[]> =>
  page.evaluate(() => performance.getEntriesByType('resource').map((entry) => entry.name));

/** The words for locks with letters, which are large. */
const hasWords = async (page: Page) =>
  (await fetched(page)).some((address) => address.includes('/unpacked-'));

/** All that is fetched ahead, to the faces, has arrived. */
async function fetchedAhead(page: Page): Promise<void> {
  const names = [
    'PrintPreview',
    'lay-out.worker',
    'tidy.worker',
    'latin-wght-italic',
    'mono-latin-ext',
    'latin-ext-wght-italic',
  ];
  await expect(async () => {
    const all = await fetched(page);
    for (const name of names) expect(all.some((address) => address.includes(name))).toBe(true);
  }).toPass({ timeout: 60_000 });
  // Nothing has come for a while, so nothing is under way.
  await expect(async () => {
    const before = (await fetched(page)).length;
    await page.waitForTimeout(3_000);
    expect(await fetched(page)).toHaveLength(before);
  }).toPass({ timeout: 30_000 });
}

/** As for those who save data, so that all is still to come. */
async function fetchNothingAhead(page: Page): Promise<void> {
  await page.addInitScript(() => {
    Object.defineProperty(navigator, 'connection', { value: { saveData: true } });
  });
}

async function savePicture(page: Page): Promise<string> {
  await banner(page).getByText('Share').click();
  const coming = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Map as SVG' }).click();
  return (await coming).suggestedFilename();
}

test('without a connection, what was fetched ahead prints, tidies and saves the map', async ({ page }) => {
  await fetchedAhead(page);
  expect(await hasWords(page)).toBe(false);
  await openExample(page);
  await expect.poll(() => hasWords(page), 'with a word lock on the map').toBe(true);
  await page.context().setOffline(true);

  await tidy(page).click();
  await expect(tidy(page)).toHaveText('Tidy up');

  expect(await savePicture(page)).toMatch(/ map\.svg$/);

  await print(page).click();
  const dialog = page.getByRole('dialog');
  await expect(dialog.getByRole('status')).toHaveText(/^\d+ pages?\.$/, { timeout: 90_000 });
  await dialog.getByLabel('Landscape', { exact: true }).click();
  await expect(dialog.getByRole('status')).toHaveText(/^\d+ pages?\.$/, { timeout: 90_000 });
  const faces = await page.evaluate(() =>
    Array.from(document.fonts)
      .filter(({ status }) => status === 'error')
      .map(({ family }) => family),
  );
  expect(faces).toEqual([]);
});

test('a part that cannot be had says so, takes nothing with it, and is there once it can be', async ({
  page,
  troubles,
}) => {
  await fetchNothingAhead(page);
  await page.goto('./');
  await openExample(page);
  const blocked = /(PrintPreview|tidy-up|map-file|KeyList|Inspector)-[^/]*\.(js|css)$/;
  await page.route(blocked, (route) => route.abort());
  const nodes = page.locator('.react-flow__node');
  await expect(nodes.first()).toBeVisible();
  const before = await nodes.count();

  for (const press of [print, tidy]) {
    await press(page).click();
    await expect(banner(page)).toContainText(PARTS.lost);
    await expect(page.getByRole('dialog')).toHaveCount(0);
    await expect(press(page)).toBeEnabled();
  }
  await banner(page).getByText('Share').click();
  const svg = page.getByRole('button', { name: 'Map as SVG' });
  await svg.click();
  await expect(page.locator('.share-menu')).toContainText(PARTS.lost);
  await expect(svg).toBeEnabled();
  await page.keyboard.press('Escape');

  await test.step('the map works on', async () => {
    await nodes.first().click({ position: { x: 24, y: 10 } });
    const panel = page.getByRole('complementary');
    await expect(panel).toContainText(PARTS.lost);
    await page.keyboard.press('Control+d');
    await expect(nodes).not.toHaveCount(before);
    await expect(banner(page)).not.toContainText(PARTS.lost);
    await page.keyboard.press('Control+z');
    await expect(nodes).toHaveCount(before);
  });

  await page.unroute(blocked);
  await test.step('and each is there at the next press', async () => {
    await nodes.first().click({ position: { x: 24, y: 10 } });
    await expect(page.getByRole('complementary').getByRole('textbox').first()).toBeVisible();
    await page.keyboard.press('Escape');
    expect(await savePicture(page)).toMatch(/ map\.svg$/);
    await print(page).click();
    await expect(page.getByRole('dialog').getByRole('status')).toHaveText(/^\d+ pages?\.$/, {
      timeout: 90_000,
    });
    // Its style sheet too, which Vite asks for only once.
    const display = await page.getByRole('dialog').evaluate((dialog) => getComputedStyle(dialog).display);
    expect(display).toBe('grid');
  });
  const refused = troubles.filter((trouble) => trouble.includes('net::ERR_FAILED'));
  expect(refused.length).toBeGreaterThan(3);
  troubles.splice(0, troubles.length, ...troubles.filter((trouble) => !refused.includes(trouble)));
});

test('without what works out the verdict, the head says so and the map is there; at the next try all is told', async ({
  page,
  troubles,
}) => {
  await fetchNothingAhead(page);
  const blocked = /judging-[^/]*\.js$/;
  await page.route(blocked, (route) => route.abort());
  await page.reload();
  const panel = page.getByRole('complementary');
  await expect(verdict(page)).toContainText(PARTS.lost);
  await bringIn(page, 'Place', { x: 300, y: 200 });
  await page.mouse.click(700, 600);
  await expect(panel).toContainText(PARTS.lost);

  await page.unroute(blocked);
  await verdict(page).getByRole('button', { name: PARTS.again }).click();
  await expect(verdict(page)).toContainText('Nothing to win yet.');
  await expect(panel).toContainText('Order of play');
  await expect(verdict(page)).not.toContainText(PARTS.lost);
  troubles.splice(0, troubles.length, ...troubles.filter((trouble) => !trouble.includes('net::ERR_FAILED')));
});
