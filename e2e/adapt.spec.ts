/** A colleague's game against my own kit and room: gone down the list, it is mine; the original stays. */
import type { Locator, Page } from 'playwright/test';
import { COLLEAGUES_GAME, MY_CUPBOARD } from './colleague.ts';
import { downloaded, expect, fileOf, openFiles, test } from './fixtures.ts';
import { verdict } from './hands.ts';

const kit = (page: Page): Locator => page.getByRole('dialog', { name: 'My kit' });
const adapting = (page: Page): Locator => page.getByRole('dialog', { name: /^Adapt “/ });
const progress = (page: Page): Locator => adapting(page).getByRole('status');
/** The line that says so. */
const line = (page: Page, words: string | RegExp): Locator =>
  adapting(page).getByRole('listitem').filter({ hasText: words }).first();

async function bringKit(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'My kit' }).click();
  await kit(page).getByRole('button', { name: 'Files' }).click();
  const choosing = page.waitForEvent('filechooser');
  await kit(page).getByRole('button', { name: 'Open a file' }).click();
  await (await choosing).setFiles(fileOf('mine.json', JSON.stringify(MY_CUPBOARD)));
  await kit(page).getByRole('tab', { name: 'My room' }).click();
  await expect(kit(page).getByLabel('Name of place 1')).toHaveValue('Book shelf');
  await kit(page).getByRole('button', { name: 'Close', exact: true }).click();
}

/** The open game as its file has it, by the name of each thing. */
async function saved(page: Page): Promise<{ file: typeof COLLEAGUES_GAME; byId: Map<string, unknown> }> {
  await page.getByRole('button', { name: 'Games' }).click();
  const { text } = await downloaded(page, () =>
    page.getByRole('dialog').getByRole('button', { name: 'Save to a file' }).click(),
  );
  const file: typeof COLLEAGUES_GAME = JSON.parse(text);
  return { file, byId: new Map(file.nodes.map((node) => [node.id, node])) };
}

test('a colleague’s game is gone down line by line, and is mine; the original stays', async ({ page }) => {
  await bringKit(page);
  await openFiles(page, fileOf('stamp.json', JSON.stringify(COLLEAGUES_GAME)));
  await expect(page.getByText('“The lost stamp” came from a file.')).toBeVisible();
  const original = page.url();
  await page.getByRole('button', { name: 'Adapt to my kit and room' }).click();
  await expect(progress(page)).toContainText(
    'Left: 1 shortage and 2 names. With everything there it can be won.',
  );
  await expect(adapting(page).getByText('1 of 2 hiding places by name: Book shelf.')).toBeVisible();

  await test.step('what is short: another lock of mine carries it', async () => {
    const short = line(page, 'The word lock on Green tin: 4 needed, none free');
    await short.getByRole('button', { name: /^Use a number lock/ }).click();
    await expect(line(page, 'has what it needs')).toBeVisible();
    await expect(page).not.toHaveURL(original);
    await expect(adapting(page).getByText('“The lost stamp” is in Games as it came.')).toBeVisible();
  });

  await test.step('the place is called as in my room, and so are the texts that quote it', async () => {
    const name = adapting(page).getByRole('combobox', { name: 'Its name here: Window sill' });
    await expect(name).toHaveValue('Reading bench');
    await adapting(page).getByLabel('Where exactly (for the teacher)').fill('Behind the cushion.');
    await name.press('Enter');
    await expect(line(page, 'Window sill is called Reading bench now.')).toBeVisible();
  });

  await test.step('the tin has the colour of mine', async () => {
    await expect(adapting(page).getByRole('textbox', { name: 'Its name here: Green tin' })).toHaveValue(
      'Blue tin',
    );
    await adapting(page).getByRole('button', { name: 'Rename Green tin' }).click();
    await expect(line(page, 'Green tin is called Blue tin now.')).toBeVisible();
  });

  await test.step('a line is taken back alone, and done again under a name of my own', async () => {
    await adapting(page).getByRole('button', { name: 'Undo: Window sill is called' }).click();
    const name = adapting(page).getByRole('combobox', { name: 'Its name here: Window sill' });
    await expect(adapting(page).getByLabel('Where exactly (for the teacher)')).toHaveValue(
      'Under the blue cushion.',
    );
    await name.fill('Corner bench');
    await adapting(page).getByRole('button', { name: 'Rename Window sill' }).click();
    await expect(line(page, 'Window sill is called Corner bench now.')).toBeVisible();
  });

  await expect(progress(page)).toContainText(/^All \d+ lines done\. It can be won\.$/);
  await adapting(page).getByRole('button', { name: 'Close' }).click();
  await expect(verdict(page)).toContainText('It can be won.');

  const mine = await saved(page);
  expect(mine.file.title).toBe('The lost stamp (adapted)');
  expect(mine.byId.get('sill')).toMatchObject({ name: 'Corner bench' });
  expect(mine.byId.get('letter')).toMatchObject({
    text: 'The list lies on the corner bench. What you find there opens the blue tin.',
  });
  expect(mine.byId.get('tag')).toMatchObject({
    note: 'Hang it up in the blue tin, and do not forget it on the corner bench.',
  });
  expect(mine.byId.get('list')).toMatchObject({ text: 'Wren\nIbis\nNuthatch' });
  expect(mine.byId.get('birds')).toMatchObject({ answer: 'WIN' });
  await page.getByRole('button', { name: 'My kit' }).click();
  await kit(page).getByRole('tab', { name: 'For this game' }).click();
  await expect(kit(page).getByText('Nothing is short for 4 teams.')).toBeVisible();
  await kit(page).getByRole('button', { name: 'Close', exact: true }).click();

  await page.getByRole('button', { name: 'Games' }).click();
  await page.getByRole('button', { name: 'Open The lost stamp', exact: true }).click();
  await expect(page).toHaveURL(original);
  const came = await saved(page);
  for (const node of COLLEAGUES_GAME.nodes) expect(came.byId.get(node.id)).toEqual(node);
});

test('what is kept and what is left out is remembered, and a game of one’s own can be adapted too', async ({
  page,
}) => {
  await bringKit(page);
  await page.getByRole('main').getByRole('button', { name: 'Every label is wrong', exact: true }).click();
  await expect(verdict(page)).toContainText('It can be won.');
  await page.keyboard.press('Alt+a');
  await adapting(page).getByRole('button', { name: 'Keep the name Behind the globe' }).click();
  await expect(line(page, 'Behind the globe keeps its name.')).toBeVisible();

  await test.step('the wheel scrolls to the end of the list and no further', async () => {
    await expect(adapting(page).getByText(/^Working out/)).toHaveCount(0);
    await adapting(page).getByRole('heading', { name: 'What is short' }).hover();
    const last = adapting(page).getByRole('button').last();
    await page.mouse.wheel(0, 20_000);
    await expect(last).toBeInViewport({ ratio: 1 });
    await page.mouse.wheel(0, 20_000);
    await expect(adapting(page).getByRole('button', { name: 'Close' })).toBeInViewport({ ratio: 1 });
    await expect(last).toBeInViewport({ ratio: 1 });
  });

  const herring = line(page, 'Tea voucher is a red herring');
  await herring.getByRole('button', { name: 'Leave it out' }).click();
  await expect(line(page, 'Tea voucher is left out.')).toBeVisible();

  await page.reload();
  await expect(verdict(page)).toContainText('It can be won.');
  await page.keyboard.press('Alt+a');
  await expect(line(page, 'Behind the globe keeps its name.')).toBeVisible();
  await adapting(page).getByRole('button', { name: 'Undo: Tea voucher is left out.' }).click();
  await expect(line(page, 'Tea voucher is a red herring')).toBeVisible();
});
