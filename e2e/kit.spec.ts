/** My kit and my room: filled by taps and from files, kept, and held against a game. */
import type { Locator, Page } from 'playwright/test';
import { SMALL } from './files.ts';
import { downloaded, expect, fileOf, openFiles, test } from './fixtures.ts';
import { verdict } from './hands.ts';
import { NO_THINGS, POOR_CUPBOARD } from './kits.ts';

const kit = (page: Page): Locator => page.getByRole('dialog', { name: 'My kit' });

async function openKit(page: Page, tab: 'For this game' | 'What I have' | 'My room'): Promise<Locator> {
  await page.getByRole('button', { name: 'My kit' }).click();
  await kit(page).getByRole('tab', { name: tab }).click();
  return kit(page);
}

async function takeFile(page: Page, name: string, text: string): Promise<void> {
  await kit(page).getByRole('button', { name: 'Files' }).click();
  const choosing = page.waitForEvent('filechooser');
  await kit(page).getByRole('button', { name: 'Open a file' }).click();
  await (await choosing).setFiles(fileOf(name, text));
}

const counted = (page: Page, title: string): Locator =>
  kit(page).getByLabel(`How many: ${title}`, { exact: true });

test('a kit is tapped in, kept, shown by every window, and taken back', async ({ page, context }) => {
  await openKit(page, 'What I have');
  for (const plate of ['number lock, 3 wheels', 'number lock, 3 wheels', 'key lock', 'UV lamp']) {
    await kit(page).getByRole('button', { name: plate }).first().click();
  }
  await expect(counted(page, 'number lock, 3 wheels')).toHaveValue('2');
  await kit(page).getByRole('button', { name: 'Details: key lock' }).click();
  await kit(page).getByLabel('Label to find it by').fill('little brass one');
  await counted(page, 'little brass one').fill('12');
  await expect(kit(page).getByText('14 locks and 1 lamp or tool')).toBeVisible();

  await kit(page).getByRole('tab', { name: 'My room' }).click();
  for (const place of ['Bookshelf', 'Globe']) {
    await kit(page).getByLabel('Add a hiding place').fill(place);
    await page.keyboard.press('Enter');
  }
  await kit(page).getByRole('button', { name: 'Earlier on the walk: Globe' }).click();
  await expect(kit(page).getByLabel('Name of place 1')).toHaveValue('Globe');
  await expect(kit(page).getByText('Kept in this browser')).toBeVisible();

  await page.reload();
  await openKit(page, 'My room');
  await expect(kit(page).getByLabel('Name of place 1')).toHaveValue('Globe');
  await kit(page).getByRole('tab', { name: 'What I have' }).click();
  await expect(counted(page, 'little brass one')).toHaveValue('12');

  const other = await context.newPage();
  await other.goto('./');
  await openKit(other, 'What I have');
  await kit(other).getByRole('button', { name: 'One more: UV lamp' }).click();
  await expect(counted(page, 'UV lamp')).toHaveValue('2');
  await page.keyboard.press('Control+z');
  await expect(counted(page, 'UV lamp')).toHaveValue('1');
  await expect(counted(other, 'UV lamp')).toHaveValue('1');
});

test('a kit comes from a table and goes into one; what is no kit says what is wrong', async ({ page }) => {
  await openKit(page, 'What I have');
  await takeFile(page, 'cupboard.csv', POOR_CUPBOARD);
  await expect(kit(page).getByText('Added from “cupboard.csv”: 9 things.')).toBeVisible();
  await expect(counted(page, 'black')).toHaveValue('4');
  await expect(kit(page).getByText('13 locks, 14 boxes and 1 hasp')).toBeVisible();

  await kit(page).getByRole('button', { name: 'Files' }).click();
  const { name, text } = await downloaded(page, () =>
    kit(page).getByRole('button', { name: 'Save what I have (CSV)' }).click(),
  );
  expect(name).toBe('my-kit.csv');
  await takeFile(page, name, text);
  await expect(kit(page).getByText('All that is in “my-kit.csv” was here already.')).toBeVisible();

  await takeFile(page, 'game.json', JSON.stringify(SMALL));
  await expect(kit(page).getByText('“game.json” was not taken.')).toBeVisible();
  await expect(kit(page).getByRole('status').getByText(/game/).nth(1)).toBeVisible();
  await takeFile(page, 'short.csv', NO_THINGS);
  await expect(kit(page).getByText('“short.csv” was not taken.')).toBeVisible();
  await expect(kit(page).getByText(/Thing/)).toBeVisible();
  await expect(kit(page).getByText('13 locks, 14 boxes and 1 hasp')).toBeVisible();

  const held = await page.evaluateHandle((text) => {
    const data = new DataTransfer();
    data.items.add(new File([text], 'room.csv'));
    return data;
  }, 'Place,Zone\r\nBookshelf,Reading corner\r\n');
  await kit(page).getByRole('tabpanel').dispatchEvent('dragover', { dataTransfer: held });
  await expect(kit(page).getByText('Let go to add what is in the file.')).toBeVisible();
  await kit(page).getByRole('tabpanel').dispatchEvent('drop', { dataTransfer: held });
  await expect(kit(page).getByText('Added from “room.csv”: 1 hiding place.')).toBeVisible();
  await kit(page).getByRole('tab', { name: 'My room' }).click();
  await expect(kit(page).getByLabel('Zone of Bookshelf')).toHaveValue('Reading corner');
  await expect(page.getByText('was not opened')).toBeHidden();
});

/** So many presses take a teacher well under two minutes. */
const MOST_PRESSES = 20;

test('a poor cupboard and the full example: the remedies alone lead to a game that can be played', async ({
  page,
}) => {
  // Some ten remedies, each with a game that is worked out anew.
  test.slow();
  await page.getByRole('main').getByRole('button', { name: 'Every label is wrong' }).click();
  await expect(verdict(page)).toContainText('It can be won.');
  await openKit(page, 'What I have');
  await takeFile(page, 'cupboard.csv', POOR_CUPBOARD);
  await expect(kit(page).getByText('Added from “cupboard.csv”')).toBeVisible();
  await kit(page).getByRole('tab', { name: 'For this game' }).click();

  const standing = kit(page)
    .getByText(/ for 4 teams\.$/)
    .first();
  const remedies = kit(page).getByRole('region', { name: 'What is short' }).getByRole('button');
  const helpful = remedies.filter({ hasNotText: 'list to buy' }).first();
  await expect(standing).toHaveText(/locks.* short for 4 teams/);
  let said = (await standing.textContent()) ?? '';

  // One press, one undo; done again, it is as it was.
  await helpful.click();
  await expect(standing).not.toHaveText(said);
  const after = (await standing.textContent()) ?? '';
  await page.keyboard.press('Control+z');
  await expect(standing).toHaveText(said);
  await page.keyboard.press('Control+Shift+z');
  await expect(standing).toHaveText(after);

  said = after;
  let presses = 1;
  while (said !== 'Nothing is short for 4 teams.') {
    expect(presses, said).toBeLessThan(MOST_PRESSES);
    await helpful.click();
    await expect(standing).not.toHaveText(said);
    await expect(kit(page).getByText('It can be won.')).toBeVisible();
    said = (await standing.textContent()) ?? '';
    presses += 1;
  }
  await kit(page).getByRole('button', { name: 'Close' }).click();
  await expect(verdict(page)).toContainText('It can be won.');
});

test('what a game needs is taken over from it', async ({ page }) => {
  await openFiles(page, fileOf('tea.latchmap.json', JSON.stringify(SMALL)));
  await expect(verdict(page)).toContainText('It can be won.');
  await openKit(page, 'What I have');
  await kit(page).getByRole('button', { name: 'Take it from a game' }).click();
  await kit(page).getByRole('button', { name: 'The tea tin', exact: true }).click();
  await expect(kit(page).getByText('What “The tea tin” needs is in my kit now.')).toBeVisible();
  await expect(counted(page, 'number lock, 3 wheels')).toHaveValue('4');
  await kit(page).getByRole('tab', { name: 'For this game' }).click();
  await expect(kit(page).getByText('Nothing is short for 4 teams.')).toBeVisible();
  await kit(page).getByRole('button', { name: 'Choose for Number lock on Tea tin' }).click();
  await expect(kit(page).getByLabel('Team 4')).toBeVisible();
});
