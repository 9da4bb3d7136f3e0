/** A typical lesson played through: the map at a minute is the engine's, by pointer and by key, on a large screen and on the smallest. */
import type { Page } from 'playwright/test';
import { compile } from '../src/engine/network.ts';
import { simulate } from '../src/engine/simulation/batch.ts';
import { clockOf } from '../src/engine/simulation/clock.ts';
import { momentOf } from '../src/engine/simulation/moment.ts';
import { statedRules } from '../src/engine/simulation/rules.ts';
import type { Game } from '../src/game/model.ts';
import { readGame } from '../src/game/read.ts';
import { momentText, waitsForName } from '../src/words/play.ts';
import { changed, example } from './files.ts';
import { expect, fileOf, openFiles, test } from './fixtures.ts';
import { verdict } from './hands.ts';

function full(): Game {
  const result = readGame(example('mineral-hall'), { newId: () => 'file' });
  if (!result.ok) throw new Error('the example cannot be read');
  return result.document.game;
}

function played(game: Game) {
  const clock = clockOf(game, compile(game));
  const simulated = simulate(clock, statedRules(clock));
  if (!simulated) throw new Error('the example cannot be won');
  return { game, clock, log: simulated.typical };
}

/** Worked out before there is a page: a worker that has to wait while the test itself computes is held to be lost. */
let lesson: ReturnType<typeof played>;
test.beforeAll(() => {
  lesson = played(full());
});
/** As the slider has it. */
const lessonEnd = () => Math.ceil(lesson.log.end * 10) / 10;

const range = (page: Page) => page.getByRole('slider', { name: 'Minute of the lesson' });
const minuteOn = async (page: Page) => Number(await range(page).inputValue());
const said = async (page: Page) => (await range(page).getAttribute('aria-valuetext')) ?? '';

/** Opens the full example and plays it through; done when the last figures are there. */
async function open(page: Page, end: number): Promise<void> {
  await page.getByRole('main').getByRole('button', { name: 'Every label is wrong' }).click();
  await expect(verdict(page)).toContainText('It can be won.');
  await page.getByRole('button', { name: 'Play it through' }).click();
  await expect(range(page)).toHaveAttribute('max', String(end));
}

/** With the mouse from the left end of the chart to a share of its width. */
async function dragChart(page: Page, share: number): Promise<void> {
  const box = await page.locator('.play-plot').boundingBox();
  if (!box) throw new Error('there is no chart');
  await page.mouse.move(box.x, box.y + 10);
  await page.mouse.down();
  await page.mouse.move(box.x + share * box.width, box.y + 14, { steps: 8 });
  await page.mouse.up();
}

/** The word on each thing of the map that carries one, by id; boxes alone where `kind` says so. */
function wordsOnMap(page: Page, kind = ''): Promise<[string, string][]> {
  return page.locator(`.react-flow__node${kind}`).evaluateAll((nodes) =>
    nodes.flatMap((node): [string, string][] => {
      const word = node.querySelector('.flow-tab')?.textContent;
      return word ? [[node.getAttribute('data-id') ?? '', word]] : [];
    }),
  );
}

for (const viewport of [
  { width: 1366, height: 768 },
  { width: 1024, height: 470 },
]) {
  test.describe(`at ${viewport.width} × ${viewport.height}`, () => {
    test.use({ viewport });

    test('dragged to a minute, the open boxes, and the words on all things, are those of the engine', async ({
      page,
    }) => {
      const { game, clock, log } = lesson;
      await open(page, lessonEnd());
      for (const share of [0.15, 0.35, 0.6, 0.8]) {
        await dragChart(page, share);
        // The map follows the slider a frame later.
        await expect(async () => {
          const minute = await minuteOn(page);
          expect(minute).toBeGreaterThan(1);
          const { states, queuesFor, busy, waiting } = momentOf(clock, log, minute);
          const stateOf = (id: string) => states[clock.network.index.get(id) ?? -1] ?? 'unseen';

          const boxes = await wordsOnMap(page, '-container');
          expect(boxes.length).toBeGreaterThan(3);
          const openOnMap = boxes.filter(([, word]) => word === 'open').map(([id]) => id);
          const openInEngine = boxes.map(([id]) => id).filter((id) => stateOf(id) === 'done');
          expect(openOnMap).toEqual(openInEngine);

          for (const [id, word] of await wordsOnMap(page)) {
            const kind = game.nodes.get(id)?.kind ?? 'clue';
            const at = clock.network.index.get(id) ?? -1;
            const thing = clock.network.ids[queuesFor[at] ?? -1];
            const waitsFor = thing === undefined ? '' : waitsForName(game, { node: id, thing });
            expect(word, id).toBe(momentText(kind, stateOf(id), log.pupils[at] ?? 0, waitsFor));
          }
          expect(busy + waiting).toBe(minute < log.end ? clock.lesson.team : 0);
          expect(await said(page)).toContain(`Minute ${minute}`);
        }).toPass({ timeout: 30_000 });
      }
    });

    test('the strip leaves room for the map', async ({ page }) => {
      await open(page, lessonEnd());
      const strip = await page
        .getByRole('region', { name: 'A typical lesson, minute by minute' })
        .boundingBox();
      const map = await page.getByRole('main').boundingBox();
      expect(strip?.height).toBeLessThanOrEqual(viewport.height < 500 ? 64 : 200);
      expect(map?.height).toBeGreaterThan(viewport.height / 2);
    });
  });
}

test('keys go by half a minute and from event to event; played, it goes on to the end and stops', async ({
  page,
}) => {
  await open(page, lessonEnd());
  await range(page).focus();
  await page.keyboard.press('ArrowRight');
  await page.keyboard.press('ArrowRight');
  await page.keyboard.press('ArrowRight');
  await expect.poll(() => minuteOn(page)).toBe(1.5);
  const before = await wordsOnMap(page);
  await page.keyboard.press('Shift+ArrowRight');
  await expect.poll(() => minuteOn(page)).toBeGreaterThan(1.5);
  await expect.poll(() => wordsOnMap(page)).not.toEqual(before);
  const event = await minuteOn(page);
  await page.getByRole('button', { name: 'Event before' }).click();
  await expect.poll(() => minuteOn(page)).toBeLessThanOrEqual(1.5);
  await page.getByRole('button', { name: 'Next event' }).click();
  await expect.poll(() => minuteOn(page)).toBe(event);

  await range(page).focus();
  await page.keyboard.press('End');
  await expect.poll(() => said(page)).toMatch(/ reached$/);
  await page.keyboard.press('ArrowLeft');
  await page.getByRole('combobox', { name: 'Speed' }).selectOption('30');
  await page.getByRole('button', { name: 'Play', exact: true }).click();
  await expect.poll(() => said(page)).toMatch(/ reached$/);
  await expect(page.getByRole('button', { name: 'Play', exact: true })).toBeVisible();
});

test('it is open again after a visit, gives way to where the time goes, and comes with that closed', async ({
  page,
}) => {
  await open(page, lessonEnd());
  await dragChart(page, 0.5);
  await page.reload();
  await expect(range(page)).toHaveCount(1);
  await expect.poll(() => wordsOnMap(page)).not.toEqual([]);
  await page.getByRole('button', { name: 'Show where the time goes' }).click();
  await expect(range(page)).toHaveCount(0);
  await expect(page.locator('[class*="flow-at-"]')).toHaveCount(0);
  await page.getByRole('button', { name: 'Play it through' }).click();
  await expect(page.getByRole('button', { name: 'Hide where the time goes' })).toHaveCount(0);
  await page
    .getByRole('region', { name: /minute by minute/ })
    .getByRole('button', { name: 'Close' })
    .click();
  await expect(page.locator('[class*="flow-at-"]')).toHaveCount(0);
  await expect(page.getByRole('button', { name: 'Hide where the time goes' })).toHaveCount(1);
});

test('an edit is played at the same minute; what cannot be won has a sentence in its place', async ({
  page,
}) => {
  await openFiles(
    page,
    fileOf(
      'tea.latchmap.json',
      changed(() => undefined),
    ),
  );
  await expect(verdict(page)).toContainText('It can be won.');
  await page.getByRole('button', { name: 'Play it through' }).click();
  await expect(range(page)).toHaveCount(1);
  await range(page).focus();
  for (let i = 0; i < 6; i++) await page.keyboard.press('ArrowRight');
  await expect.poll(() => minuteOn(page)).toBe(3);

  const things = (await wordsOnMap(page)).length;
  await page.getByRole('navigation').getByRole('button', { name: 'Place', exact: true }).click();
  await expect.poll(async () => (await wordsOnMap(page)).length).toBe(things + 1);
  await expect.poll(() => said(page)).toContain('Minute 3: ');
  await page.keyboard.press('Control+z');
  await page.locator('.react-flow__node[data-id="prize"]').click();
  await page.keyboard.press('Delete');
  await expect(
    page.getByText('A lesson can be played through as soon as the game can be won.'),
  ).toBeVisible();
  await expect(page.locator('[class*="flow-at-"]')).toHaveCount(0);
  await page.keyboard.press('Control+z');
  await expect(range(page)).toHaveCount(1);
  await expect.poll(() => minuteOn(page)).toBe(3);
});
