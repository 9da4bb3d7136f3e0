/** Tidying a map that has been scrambled, as a teacher would. */
import type { Page } from 'playwright/test';
import { canvasGame } from '../tests/bench/canvas-game.ts';
import { example } from './files.ts';
import { downloaded, expect, fileOf, openFiles, test } from './fixtures.ts';
import { dragTo, type Spot, thing } from './hands.ts';

interface Box extends Spot {
  readonly width: number;
  readonly height: number;
}

interface FileNode {
  readonly id: string;
  readonly in?: string;
  readonly on?: string;
  readonly at?: unknown;
}

const nodesOf = (text: string): FileNode[] => JSON.parse(text).nodes;

/** What stands on the mat itself. */
const ROOTS = nodesOf(example('mineral-hall'))
  .filter((node) => node.in === undefined && node.on === undefined)
  .map(({ id }) => id);

async function boxes(page: Page): Promise<Map<string, Box>> {
  const all = new Map<string, Box>();
  for (const id of ROOTS) {
    const box = await thing(page, id).boundingBox();
    if (box) all.set(id, box);
  }
  return all;
}

/** So many frames are drawn, however long the machine takes for them. */
const frames = (page: Page, count: number) =>
  page.evaluate(async (left) => {
    for (let i = 0; i < left; i++) await new Promise((drawn) => requestAnimationFrame(drawn));
  }, count);

/** The boxes once nothing moves any more. */
async function atRest(page: Page): Promise<Map<string, Box>> {
  let last = await boxes(page);
  await expect(async () => {
    const before = last;
    await frames(page, 10);
    last = await boxes(page);
    expect(last).toEqual(before);
  }).toPass({ intervals: [100], timeout: 30_000 });
  return last;
}

function overlapping(all: Map<string, Box>): string[] {
  const list = [...all];
  return list.flatMap(([id, a], i) =>
    list
      .slice(i + 1)
      .filter(([, b]) => a.x < b.x + b.width && b.x < a.x + a.width)
      .filter(([, b]) => a.y < b.y + b.height && b.y < a.y + a.height)
      .map(([other]) => `${id} and ${other}`),
  );
}

const tidyButton = (page: Page) => page.getByRole('navigation').getByRole('button', { name: /^Tidy up/ });

/** Tidied when nothing stands over anything any more. */
async function tidy(page: Page): Promise<Map<string, Box>> {
  await tidyButton(page).click();
  await expect.poll(async () => overlapping(await boxes(page)), { timeout: 30_000 }).toEqual([]);
  await expect(tidyButton(page)).toHaveText('Tidy up');
  return atRest(page);
}

async function middleOf(page: Page): Promise<Spot> {
  const box = await page.getByRole('main').boundingBox();
  if (!box) throw new Error('there is no map');
  return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
}

/** Several trays and puzzles dragged where they stand in each other's way; one puzzle into the middle of the view. */
async function scramble(page: Page): Promise<Map<string, Box>> {
  await page.getByRole('main').getByRole('button', { name: 'Every label is wrong' }).click();
  await expect(thing(page, 'trolley')).toBeVisible();
  await atRest(page);
  await dragTo(page, 'trolley', { x: 880, y: 600 });
  await dragTo(page, 'weigh', { x: 300, y: 200 });
  await dragTo(page, 'globe', { x: 250, y: 420 });
  await dragTo(page, 'nameit', { x: 880, y: 200 });
  await dragTo(page, 'formed', await middleOf(page));
  await page.keyboard.press('Escape');
  const all = await atRest(page);
  expect(overlapping(all)).not.toEqual([]);
  return all;
}

/** Within a pixel of the screen. */
const near = (a: Box | undefined, b: Box | undefined) =>
  a !== undefined && b !== undefined && Math.abs(a.x - b.x) <= 1 && Math.abs(a.y - b.y) <= 1;

test.use({ viewport: { width: 1366, height: 768 } });

test('nothing overlaps then, the middle stays under the eye, and one undo takes all back', async ({
  page,
}) => {
  const before = await scramble(page);
  const { text: saved } = await downloaded(page, () => page.keyboard.press('Control+s'));
  const after = await tidy(page);
  expect(after.get('trolley')).not.toEqual(before.get('trolley'));
  expect(near(after.get('formed'), before.get('formed'))).toBe(true);

  await page.keyboard.press('Control+z');
  await expect(async () => {
    expect(near((await boxes(page)).get('trolley'), before.get('trolley'))).toBe(true);
  }).toPass({ timeout: 30_000 });
  const back = await atRest(page);
  for (const id of ROOTS) expect(near(back.get(id), before.get(id)), id).toBe(true);
  const { text } = await downloaded(page, () => page.keyboard.press('Control+s'));
  expect(nodesOf(text)).toEqual(nodesOf(saved));
});

test('where nothing is left to be tidied, it is said', async ({ page }) => {
  await scramble(page);
  await tidy(page);
  await tidyButton(page).click();
  await expect(page.getByText('Everything already stands where it would be put.')).toBeVisible();
});

test('what is pinned stays where it is', async ({ page }) => {
  const before = await scramble(page);
  await thing(page, 'formed').click();
  await page.getByRole('button', { name: 'Pin it here' }).click();
  await expect(page.getByText('It stays where it is when the map is tidied.')).toBeVisible();
  await page.keyboard.press('Escape');
  await thing(page, 'weigh').click();
  await page.keyboard.press('Alt+p');
  await expect(page.getByText('It stays where it is when the map is tidied.')).toBeVisible();
  await page.keyboard.press('Escape');
  const after = await tidy(page);
  const moved = (id: string) => ({
    x: (after.get(id)?.x ?? 0) - (before.get(id)?.x ?? 0),
    y: (after.get(id)?.y ?? 0) - (before.get(id)?.y ?? 0),
  });
  for (const id of ['formed', 'weigh']) {
    expect(Math.abs(moved(id).x), id).toBeLessThanOrEqual(1);
    expect(Math.abs(moved(id).y), id).toBeLessThanOrEqual(1);
  }
  const { text } = await downloaded(page, () => page.keyboard.press('Control+s'));
  const pinned = nodesOf(text).filter(({ at }) => JSON.stringify(at)?.includes('"pinned":true'));
  expect(pinned.map(({ id }) => id).sort()).toEqual(['formed', 'weigh']);
});

test('of a selection, only what is selected moves', async ({ page }) => {
  const before = await scramble(page);
  await thing(page, 'nameit').click();
  await thing(page, 'weigh').click({ modifiers: ['Shift'] });
  await expect(tidyButton(page)).toHaveText('Tidy up the selection');
  await tidyButton(page).click();
  await expect
    .poll(async () => overlapping(await boxes(page)).filter((pair) => /nameit|weigh/.test(pair)))
    .toEqual([]);
  const after = await atRest(page);
  const selected = new Set(['nameit', 'weigh']);
  const still = ROOTS.filter((id) => !selected.has(id));
  const [first = ''] = still;
  // The view may follow the selection: what stands still does so to each other.
  const offset = (all: Map<string, Box>, id: string) => ({
    x: Math.round((all.get(id)?.x ?? 0) - (all.get(first)?.x ?? 0)),
    y: Math.round((all.get(id)?.y ?? 0) - (all.get(first)?.y ?? 0)),
  });
  for (const id of still) expect(offset(after, id), id).toEqual(offset(before, id));
  expect(offset(after, 'nameit')).not.toEqual(offset(before, 'nameit'));
});

test('a large game without positions is tidied once it is open, and that is no change', async ({ page }) => {
  const file = JSON.parse(canvasGame());
  for (const node of file.nodes) delete node.at;
  await openFiles(page, fileOf('large.latchmap.json', JSON.stringify(file)));
  await expect(thing(page, 'tray-0')).toBeVisible({ timeout: 30_000 });
  const roots: string[] = nodesOf(JSON.stringify(file))
    .filter((node) => node.in === undefined && node.on === undefined)
    .map(({ id }) => id);
  const placed = async () => {
    const { text } = await downloaded(page, () => page.keyboard.press('Control+s'));
    return nodesOf(text).filter(({ id, at }) => roots.includes(id) && at !== undefined).length;
  };
  await expect.poll(placed, { timeout: 30_000 }).toBe(roots.length);
  await expect(page.getByRole('button', { name: 'Undo' })).toBeDisabled();
});
