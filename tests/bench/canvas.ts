/**
 * Late frames while the hand moves, in a real Chromium on the built page: a map of 300 nodes, one thing dragged for two seconds,
 * a full box likewise, the view moved, all of it tidied; beside a bare canvas of the library at the same size, in the same run.
 * A frame is late when it comes more than 20 ms after the one before.
 */
import { mkdtempSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { type Browser, chromium, type Page } from 'playwright';
import { build, preview } from 'vite';
import { CHROMIUM_ARGUMENTS, findChromium, withoutChromium } from '../../e2e/chromium.ts';
import { canvasGame, FULL_BOX_NAME, ONE_THING_NAME } from './canvas-game.ts';

const RUNS = 5;
const SECONDS = 2;
const MOVE_EVERY = 8;
const LATE = 20;
/** How far the pointer wanders, in pixels. */
const WANDER = 120;
const SIZE = { width: 1366, height: 768 };

/** In the page: the moment of every frame from now on. */
const RECORD = `{
  const stamps = (window.stamps = []);
  const tick = (now) => {
    if (window.stamps !== stamps) return;
    stamps.push(now);
    requestAnimationFrame(tick);
  };
  requestAnimationFrame(tick);
}`;

interface Spot {
  readonly x: number;
  readonly y: number;
}

/** The share of late frames while the pointer, pressed at `from`, wanders about for two seconds and carries `moves` along. */
async function lateFrames(page: Page, moves: string, from: Spot): Promise<number> {
  const placeOf = () => page.locator(moves).first().getAttribute('style');
  const before = await placeOf();
  await page.mouse.move(from.x, from.y);
  await page.mouse.down();
  await page.mouse.move(from.x + 8, from.y + 8);
  await page.evaluate(RECORD);
  const end = performance.now() + SECONDS * 1000;
  for (let step = 0; performance.now() < end; step++) {
    const due = performance.now() + MOVE_EVERY;
    const angle = step / 18;
    await page.mouse.move(
      from.x + WANDER * Math.sin(angle),
      from.y + 0.5 * WANDER * Math.sin(2 * angle) + (step % 2),
    );
    const wait = due - performance.now();
    if (wait > 0) await new Promise((resolve) => setTimeout(resolve, wait));
  }
  if ((await placeOf()) === before) throw new Error(`The bench dragged, and ${moves} did not move.`);
  const share = await lateShare(page);
  await page.keyboard.press('Escape');
  await page.mouse.up();
  return share;
}

/** Of the frames since they were recorded. */
function lateShare(page: Page): Promise<number> {
  return page.evaluate((late) => {
    const stamps: readonly number[] = Reflect.get(window, 'stamps');
    const gaps = stamps.slice(1).map((stamp, i) => stamp - (stamps[i] ?? stamp));
    return gaps.filter((gap) => gap > late).length / gaps.length;
  }, LATE);
}

/** The share of late frames from the order to tidy until all stands and the arrows are back; then it is undone. */
async function lateWhileTidied(page: Page): Promise<number> {
  const undo = page.getByRole('button', { name: 'Undo' });
  await page.keyboard.press('Escape');
  await page.evaluate(RECORD);
  await page.keyboard.press('Alt+t');
  for (const label of ['Stop tidying', 'Tidy up']) {
    // A look for a role would go through all that is on the page, and hold up its frames.
    await page.waitForFunction(
      (wanted) =>
        [...document.querySelectorAll('nav button')].some(({ textContent }) => textContent === wanted),
      label,
    );
  }
  await page.waitForTimeout(400);
  const share = await lateShare(page);
  if (await undo.isDisabled()) throw new Error('The bench tidied, and nothing came of it.');
  await page.keyboard.press('Control+z');
  await page.waitForTimeout(400);
  return share;
}

/** The first spot of the window, in rows from the upper left, at which what the pointer would meet is, or lies in, `selector`. */
async function spotOn(page: Page, selector: string): Promise<Spot> {
  const found = await page.waitForFunction((wanted) => {
    const box = document.querySelector(wanted)?.getBoundingClientRect();
    if (!box) return undefined;
    for (let y = Math.max(box.top + 3, 80); y < Math.min(box.bottom, innerHeight - 70); y += 3) {
      for (let x = Math.max(box.left + 3, 100); x < Math.min(box.right, innerWidth - 330); x += 3) {
        const met = document.elementFromPoint(x, y)?.closest('.react-flow__node, .react-flow__pane');
        if (met?.matches(wanted)) return { x, y };
      }
    }
    return undefined;
  }, selector);
  const spot = await found.jsonValue();
  if (!spot) throw new Error(`The bench finds no ${selector} to take hold of.`);
  return spot;
}

const nodeNamed = (name: string) => `.react-flow__node[aria-label^="${name},"]`;

async function mapPage(browser: Browser, address: string): Promise<Page> {
  const page = await browser.newPage({ viewport: SIZE });
  await page.goto(address);
  await page.getByRole('button', { name: 'Games' }).click();
  const choosing = page.waitForEvent('filechooser');
  await page.getByRole('dialog').getByRole('button', { name: 'Open a file' }).click();
  const chooser = await choosing;
  await chooser.setFiles({
    name: 'canvas.latchmap.json',
    mimeType: 'application/json',
    buffer: Buffer.from(canvasGame()),
  });
  await page.locator(nodeNamed(FULL_BOX_NAME)).waitFor({ state: 'attached' });
  await page.getByRole('button', { name: 'Fit', exact: true }).click();
  await page.waitForTimeout(1000);
  return page;
}

/** At full size, with the full box in view. */
async function atFullSize(page: Page): Promise<void> {
  await page.getByTitle('Back to full size').click();
  await page.waitForTimeout(600);
  await page.locator(nodeNamed(FULL_BOX_NAME)).press('Enter');
  await page.waitForTimeout(600);
}

const VIEW = '.react-flow__viewport';

interface Case {
  readonly what: string;
  readonly measure: () => Promise<number>;
}

const median = (values: readonly number[]) =>
  values.toSorted((a, b) => a - b)[Math.floor(values.length / 2)] ?? 0;
const percent = (share: number) => `${(100 * share).toFixed(1)} %`;

async function main(): Promise<number> {
  const executablePath = await findChromium();
  if (executablePath === undefined) {
    console.error(withoutChromium());
    return 1;
  }
  const out = mkdtempSync(join(tmpdir(), 'latchmap-bench-'));
  await build({ logLevel: 'error', build: { outDir: join(out, 'page'), emptyOutDir: true } });
  await build({
    configFile: false,
    logLevel: 'error',
    base: './',
    root: 'tests/bench/canvas-empty',
    build: { outDir: join(out, 'empty'), emptyOutDir: true },
  });
  const server = await preview({ build: { outDir: out }, preview: { port: 0, host: '127.0.0.1' } });
  const address = server.resolvedUrls?.local[0] ?? server.resolvedUrls?.network[0] ?? '';
  const browser = await chromium.launch({ executablePath, args: CHROMIUM_ARGUMENTS });
  try {
    const empty = await browser.newPage({ viewport: SIZE });
    await empty.goto(`${address}empty/`);
    await empty.locator('.react-flow__node').waitFor();
    const page = await mapPage(browser, `${address}page/`);
    const drag = (on: Page, selector: string) => async () =>
      lateFrames(on, selector, await spotOn(on, selector));
    const whole: Case[] = [
      { what: 'bare canvas, its one node dragged', measure: drag(empty, '.react-flow__node') },
      { what: 'whole map in view, one thing dragged', measure: drag(page, nodeNamed(ONE_THING_NAME)) },
      { what: 'whole map in view, a full box dragged', measure: drag(page, nodeNamed(FULL_BOX_NAME)) },
      {
        what: 'whole map in view, view moved',
        measure: async () => lateFrames(page, VIEW, await spotOn(page, '.react-flow__pane')),
      },
      { what: 'whole map in view, all tidied', measure: () => lateWhileTidied(page) },
    ];
    const near: Case[] = [
      { what: 'at full size, a full box dragged', measure: drag(page, nodeNamed(FULL_BOX_NAME)) },
      {
        what: 'at full size, view moved',
        measure: async () => lateFrames(page, VIEW, await spotOn(page, '.react-flow__pane')),
      },
    ];
    console.log(
      `Late frames (over ${LATE} ms), median of ${RUNS} runs of ${SECONDS} s, all runs in brackets`,
    );
    await report(whole);
    await atFullSize(page);
    await report(near);
    return 0;
  } finally {
    await browser.close();
    await server.close();
  }
}

async function report(cases: readonly Case[]): Promise<void> {
  const results = cases.map(() => [] as number[]);
  for (let run = 0; run < RUNS; run++) {
    for (const [i, { measure }] of cases.entries()) results[i]?.push(await measure());
  }
  cases.forEach(({ what }, i) => {
    const shares = results[i] ?? [];
    console.log(
      `${what.padEnd(42)} ${percent(median(shares)).padStart(7)}  (${shares.map(percent).join(', ')})`,
    );
  });
}

process.exitCode = await main();
