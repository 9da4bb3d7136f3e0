/** The full example: what helps most; what if nobody finds this, and where the time goes, on a large screen and on the smallest. */
import type { Page } from 'playwright/test';
import { reportOf } from '../src/engine/report.ts';
import type { Game } from '../src/game/model.ts';
import { readGame } from '../src/game/read.ts';
import { type WhatHelps, whatHelps } from '../src/helps/what-helps.ts';
import { helpLabel, helpSentence } from '../src/words/helps.ts';
import { minutesInWords } from '../src/words/numbers.ts';
import { plain } from '../src/words/sentence.ts';
import { example } from './files.ts';
import { expect, test } from './fixtures.ts';
import { fullSize, goTo, grip, thing, verdict } from './hands.ts';

const TITLE = 'Every label is wrong';

function full(): Game {
  const result = readGame(example('mineral-hall'), { newId: () => 'file' });
  if (!result.ok) throw new Error('the example cannot be read');
  return result.document.game;
}

async function open(page: Page): Promise<void> {
  await page.getByRole('main').getByRole('button', { name: TITLE }).click();
  await expect(verdict(page)).toContainText('It can be won.');
}

/** As the tabs say it: seconds under a minute, then minutes to one decimal, whole from ten on. */
function told(minutes: number): string {
  if (minutes < 1) return `${Math.round(minutes * 60)} s`;
  return `${minutes < 10 ? Math.round(minutes * 10) / 10 : Math.round(minutes)} min`;
}

/**
 * Worked out before there is a page: a worker starts only when the test lets it, and one that is kept waiting while the test itself
 * computes is held to be lost.
 */
let report: ReturnType<typeof reportOf>;
let found: WhatHelps | undefined;
test.beforeAll(() => {
  report = reportOf(full());
  for (const answer of whatHelps(full())) if (answer && 'result' in answer) found = answer.result;
});

test('the first of what helps most is made at a press, does what it said, and is undone as one', async ({
  page,
}) => {
  const game = full();
  const [best] = found?.helpful ?? [];
  if (!found || !best) throw new Error('nothing helps');
  const says = (waiting: number) => `A pupil waits ${minutesInWords(waiting)} in all`;

  await open(page);
  const panel = page.getByRole('complementary');
  await expect(panel).toContainText(says(found.before.waiting), { timeout: 60_000 });
  await panel.getByText('What helps most').click();
  await expect(panel).toContainText(plain(helpSentence(game, found, best)), { timeout: 60_000 });
  await panel
    .getByRole('button', { name: helpLabel(game, best.help) })
    .first()
    .click();
  await expect(panel).toContainText(says(best.after.waiting), { timeout: 60_000 });
  await page.keyboard.press('Control+z');
  await expect(panel).toContainText(says(found.before.waiting), { timeout: 60_000 });
  await expect(panel).toContainText(plain(helpSentence(game, found, best)), { timeout: 60_000 });
});

for (const viewport of [
  { width: 1366, height: 768 },
  { width: 1024, height: 470 },
]) {
  test.describe(`at ${viewport.width} × ${viewport.height}`, () => {
    test.use({ viewport });

    test('a key and a clue are lifted, and the answers read', async ({ page }) => {
      await open(page);
      await fullSize(page);
      const says = (words: string) => expect(verdict(page)).toContainText(words);
      /** Not word for word what it was: figures may have come meanwhile. */
      const saysTheOldAgain = () => says('It can be won.');

      await (await goTo(page, 'redtag')).click();
      const key = await grip(thing(page, 'redtag'));
      await page.mouse.move(key.x, key.y);
      await page.mouse.down();
      await says('Without Red tag, Iron box stays shut. The game cannot be won then.');
      await page.mouse.up();
      await expect(thing(page, 'ironlock')).toContainText('stays shut');
      await expect(thing(page, 'tabletcode')).toContainText('stays shut');
      await expect(thing(page, 'slatelock')).not.toContainText('stays shut');
      await page.keyboard.press('Escape');
      await saysTheOldAgain();

      await goTo(page, 'ticket');
      await page.keyboard.press('Enter');
      await page.keyboard.press('Alt+l');
      await says('Without Tea voucher, nothing else is missed. The game can still be won.');
      await page.keyboard.press('Alt+l');

      await goTo(page, 'gauges');
      await page.keyboard.press('Enter');
      await page.keyboard.press('Alt+l');
      await says('Without Three gauges, Read the gauges cannot be solved. The game cannot be won then.');
      await page.keyboard.press('Escape');
      await saysTheOldAgain();
    });

    test('the overlay shows in two readings what the engine says, and the chain that decides the end', async ({
      page,
    }) => {
      const { cost = {}, waiting } = report;
      const shown = (minutes: Readonly<Record<string, number>>) =>
        Object.entries(minutes).filter(([, value]) => value >= 0.05);
      const legend = page.getByRole('region', { name: 'Where the time goes' });

      await open(page);
      await fullSize(page);
      await (await goTo(page, 'wadbox')).click();
      await expect(thing(page, 'wadlatch')).toBeVisible();
      await page.getByRole('button', { name: 'Show where the time goes' }).click();
      await expect(legend).toContainText('costs most: the game ends', { timeout: 60_000 });
      for (const [reading, minutes] of [
        ['Minutes it costs', cost],
        ['Pupils waiting', waiting?.byStep ?? {}],
      ] as const) {
        await legend.getByRole('radio', { name: reading }).check();
        const hot = shown(minutes);
        expect(hot.length).toBeGreaterThan(0);
        await expect(page.locator('.flow-tab')).toHaveCount(hot.length);
        for (const [id, value] of hot)
          await expect(thing(page, id).locator('.flow-tab')).toHaveText(told(value));
      }
      await expect(legend).toContainText(/Waiting is longest while .* of 6 pupils wait/);
      await legend.getByRole('checkbox', { name: 'What decides the end' }).check();
      await expect(thing(page, 'tabletcode')).toHaveAccessibleName(/decides the end/);

      await page.reload();
      await page.getByRole('button', { name: 'Hide where the time goes' }).click();
      await expect(page.locator('.flow-tab')).toHaveCount(0);
    });
  });
}
