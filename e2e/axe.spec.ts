/** The main screens against axe's rules for WCAG 2.2 A and AA. */
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { AxeResults } from 'axe-core';
import type { Page } from 'playwright/test';
import { expect, fileOf, openFiles, test } from './fixtures.ts';
import { fullSize, goTo, verdict } from './hands.ts';

const AXE = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
const RULES = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'];

/** Experimental, says axe: it takes a code that is spelt out for the ear, letter by letter, for another text. */
const SPELT = { 'label-content-name-mismatch': { enabled: false } };

async function violations(page: Page): Promise<string[]> {
  await page.evaluate(AXE);
  const results = await page.evaluate<AxeResults>(
    `axe.run(document, ${JSON.stringify({ runOnly: RULES, rules: SPELT, resultTypes: ['violations'] })})`,
  );
  return results.violations.flatMap(({ id, nodes }) =>
    nodes.map(({ html }) => `${id}: ${html.slice(0, 160)}`),
  );
}

test('every main screen keeps the rules', async ({ page }) => {
  const keeps = (screen: string) =>
    test.step(screen, async () => expect.soft(await violations(page), screen).toEqual([]));

  await expect(page.getByRole('region', { name: 'Ways to begin' })).toBeVisible();
  await keeps('the empty mat');

  await openFiles(
    page,
    fileOf('bad.json', '{"format":"latchmap","version":1,"nodes":[{"id":1}],"links":[{}]}'),
  );
  await expect(page.getByText('was not opened')).toBeVisible();
  await keeps('a file that was not opened');

  await page.getByRole('main').getByRole('button', { name: 'Two desks to the front page' }).click();
  await expect(verdict(page)).toContainText('It can be won.');
  await keeps('an example');

  await fullSize(page);
  await goTo(page, 'wordlock');
  await page.keyboard.press('Enter');
  await expect(page.getByRole('complementary').getByRole('textbox', { name: 'Name' })).toBeVisible();
  await keeps('the form of a lock');

  await page.keyboard.press('Alt+l');
  await expect(verdict(page)).toContainText('Without');
  await keeps('a lock lifted');
  await page.keyboard.press('Escape');

  await page.getByRole('button', { name: 'Show where the time goes' }).click();
  await expect(page.locator('.flow-tab').first()).toBeVisible();
  await keeps('where the time goes');

  await page.keyboard.press('Control+p');
  await expect(page.getByRole('figure').first()).toBeVisible();
  await keeps('the print preview');
  await page.keyboard.press('Escape');

  await page.getByRole('button', { name: 'My kit' }).click();
  const kit = page.getByRole('dialog', { name: 'My kit' });
  await kit.getByRole('button', { name: 'number lock, 4 wheels' }).click();
  await kit.getByRole('button', { name: 'Details: number lock, 4 wheels' }).click();
  await keeps('what I have');
  await kit.getByRole('tab', { name: 'My room' }).click();
  await kit.getByLabel('Add a hiding place').fill('Globe');
  await page.keyboard.press('Enter');
  await expect(kit.getByLabel('Name of place 1')).toBeVisible();
  await keeps('my room');
  await kit.getByRole('tab', { name: 'For this game' }).click();
  await kit
    .getByRole('button', { name: /^Choose for/ })
    .first()
    .click();
  await expect(kit.getByRole('button', { name: /list to buy/ }).first()).toBeVisible();
  await keeps('my kit against a game');
  await page.keyboard.press('Escape');

  await page.keyboard.press('Alt+a');
  const adapting = page.getByRole('dialog', { name: /^Adapt “/ });
  await expect(adapting.getByRole('button', { name: /^(Use|Let|Put)/ }).first()).toBeVisible();
  await keeps('a game to be adapted');
  await adapting
    .getByRole('button', { name: /^Keep the name/ })
    .first()
    .click();
  await expect(adapting.getByText('keeps its name.')).toBeVisible();
  await keeps('a line that is done');
  await page.keyboard.press('Escape');

  await page.getByRole('button', { name: 'Games' }).click();
  await expect(page.getByRole('dialog')).toBeVisible();
  await keeps('the list of games');
});
