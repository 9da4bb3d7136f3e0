/** What a hand does on the map: dragging things in, putting them into each other, drawing arrows. */
import { expect, type Locator, type Page } from 'playwright/test';

export type Thing = 'Place' | 'Box' | 'Lock' | 'Key' | 'Clue' | 'Tool' | 'Puzzle' | 'Prize';

export interface Spot {
  readonly x: number;
  readonly y: number;
}

const NODES = '.react-flow__node';

/** The node of this id on the map. Found by its id, because names change and new things share theirs. */
export const thing = (page: Page, id: string): Locator => page.locator(`${NODES}[data-id="${id}"]`);

export const verdict = (page: Page): Locator => page.getByRole('region', { name: 'Can it be won?' });

async function boxOf(locator: Locator) {
  const box = await locator.boundingBox();
  if (!box) throw new Error(`${locator} is not to be seen`);
  return box;
}

/** The middle of a thing; of a tray, a spot beside its name, where its own body is. */
export async function grip(locator: Locator): Promise<Spot> {
  const { x, y, width, height } = await boxOf(locator);
  return height > 60 ? { x: x + width / 2, y: y + 16 } : { x: x + width / 2, y: y + height / 2 };
}

/** Below all that lies in a tray, so that what is let go there comes last. */
export async function bottomOf(locator: Locator): Promise<Spot> {
  const { x, y, width, height } = await boxOf(locator);
  return { x: x + width / 2, y: y + height - 8 };
}

async function drag(page: Page, from: Spot, to: Spot): Promise<void> {
  await page.mouse.move(from.x, from.y);
  await page.mouse.down();
  await page.mouse.move(to.x, to.y, { steps: 10 });
  await page.mouse.up();
}

const idsOf = (page: Page): Promise<string[]> =>
  page.locator(NODES).evaluateAll((nodes) => nodes.map((node) => node.getAttribute('data-id') ?? ''));

/** Drags a new thing in from the edge and gives its id. */
export async function bringIn(page: Page, kind: Thing, to: Spot | Locator): Promise<string> {
  const before = await idsOf(page);
  const source = page.getByRole('navigation').getByRole('button', { name: kind, exact: true });
  await drag(page, await grip(source), 'x' in to ? to : await bottomOf(to));
  await expect(page.locator(NODES)).toHaveCount(before.length + 1);
  const fresh = (await idsOf(page)).find((id) => !before.includes(id));
  if (fresh === undefined) throw new Error(`no new ${kind}`);
  return fresh;
}

/** Drags a thing to a spot on the mat, or into a tray. */
export async function dragTo(page: Page, id: string, to: Spot | Locator): Promise<void> {
  await drag(page, await grip(thing(page, id)), 'x' in to ? to : await bottomOf(to));
}

/** Draws an arrow from the dot beside a thing to what it is needed for. */
export async function link(page: Page, from: string, to: string): Promise<void> {
  const start = await grip(thing(page, from));
  await page.mouse.click(start.x, start.y);
  const dot = page.locator('.flow-dot');
  await expect(dot).toHaveCount(1);
  await drag(page, await grip(dot), await grip(thing(page, to)));
}

/** The map at full size, where every thing says its name. */
export async function fullSize(page: Page): Promise<void> {
  const percent = page.getByRole('toolbar', { name: 'Size of the map' }).getByRole('button', { name: / %$/ });
  await percent.click();
  await expect(percent).toHaveText('100 %');
}

/** Goes to a thing as the Tab key does, which brings it into view. */
export async function goTo(page: Page, id: string): Promise<Locator> {
  const node = thing(page, id);
  /** A key was the last thing pressed: so the browser shows where the focus is, and the map follows it. */
  await page.keyboard.press('Shift');
  await node.focus();
  await expect(node).toBeInViewport({ ratio: 0.9 });
  return node;
}
