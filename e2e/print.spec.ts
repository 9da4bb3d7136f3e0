/** The pages of the full example, as they are shown, printed and saved. */
import { readFile } from 'node:fs/promises';
import type { Page } from 'playwright/test';
import { assess } from '../src/findings/assess.ts';
import { codeOf } from '../src/game/codes.ts';
import { readGame } from '../src/game/read.ts';
import type { Drawing, TextMark } from '../src/sheets/drawing.ts';
import { printRun } from '../src/sheets/index.ts';
import type { Orientation, PaperName } from '../src/sheets/paper.ts';
import { SHEET_NAMES, type Sheet, type SheetOptions } from '../src/sheets/sheet.ts';
import { example } from './files.ts';
import { expect, test } from './fixtures.ts';
import { type PdfPage, readPdf } from './pdf.ts';

// Pages are laid out twice, here and in the browser; this only ends what hangs.
test.describe.configure({ timeout: 180_000 });

const TITLE = 'Every label is wrong';
const NOW = new Date('2026-11-25T13:40:00Z');

const POINTS_PER_MILLIMETRE = 72 / 25.4;
/** What a printer's own rollers make of a page is more. */
const CLOSE = 0.3 * POINTS_PER_MILLIMETRE;

function full() {
  const result = readGame(example('mineral-hall'), { newId: () => 'file' });
  if (!result.ok) throw new Error('the example cannot be read');
  return assess(result.document.game);
}

/** The same pages without a browser. */
function laidOut(options: Partial<SheetOptions>): readonly Sheet[] {
  const all = { codes: true, times: true, rescue: true, ticks: true, colour: true, sheets: SHEET_NAMES };
  const run = printRun(
    full(),
    { paper: 'A4', orientation: 'portrait', ...all, ...options },
    { date: '25 November 2026, 13:40' },
  );
  for (;;) {
    const { value, done } = run.next();
    if (done) return value;
  }
}

const printButton = (page: Page) => page.getByRole('banner').getByRole('button', { name: 'Print' });

/** Keys mean nothing to a game that is not open yet: on a slow machine it takes a while from the click. */
async function openExample(page: Page): Promise<void> {
  await page.getByRole('main').getByRole('button', { name: TITLE }).click();
  await expect(printButton(page)).toBeEnabled();
}

async function openPreview(page: Page): Promise<void> {
  await page.clock.setFixedTime(NOW);
  await openExample(page);
  await printButton(page).click();
}

const pagesOf = (page: Page) => page.getByRole('dialog').getByRole('region', { name: 'Pages' });

async function finished(page: Page): Promise<void> {
  await expect(page.getByRole('dialog').getByRole('status')).toHaveText(/^\d+ pages?\.$/, {
    timeout: 90_000,
  });
}

async function choose(page: Page, ...labels: string[]): Promise<void> {
  const options = page.getByRole('form', { name: 'What is printed' });
  for (const label of labels) await options.getByLabel(label, { exact: true }).click();
  await finished(page);
}

const pdfOf = async (page: Page) =>
  readPdf(await page.pdf({ preferCSSPageSize: true, printBackground: true }));

const isText = (mark: Drawing['marks'][number]): mark is TextMark => mark.mark === 'text';
const squeezed = (text: string) => text.replace(/\s/gu, '');

/** ISO 216; ANSI/ASME Y14.1, size A. In millimetres. */
const PAPERS: readonly [PaperName, string, number, number][] = [
  ['A4', 'A4', 210, 297],
  ['Letter', 'US Letter', 8.5 * 25.4, 11 * 25.4],
];
const ORIENTATIONS: readonly [Orientation, string][] = [
  ['portrait', 'Portrait'],
  ['landscape', 'Landscape'],
];

/** Two lines of 100 mm on the first and the last pages of the preview, as part of their drawing. */
const LINE = '#ff00ff';
async function drawLines(page: Page): Promise<void> {
  await pagesOf(page).getByRole('figure').last().scrollIntoViewIfNeeded();
  await expect(pagesOf(page).getByRole('figure').last().locator('svg')).toBeVisible();
  await pagesOf(page)
    .locator('svg')
    .evaluateAll(
      (drawings, { colour, length }) => {
        for (const drawing of drawings) {
          for (const line of [`M50 200h${length}`, `M50 200v${length}`]) {
            const path = document.createElementNS('http://www.w3.org/2000/svg', 'path');
            path.setAttribute('d', line);
            path.setAttribute('stroke', colour);
            path.setAttribute('stroke-width', '0.01');
            drawing.append(path);
          }
        }
      },
      { colour: LINE, length: 100 * POINTS_PER_MILLIMETRE },
    );
}

function expectTrueToSize(printed: PdfPage | undefined): void {
  const [across, down] = printed?.paths.filter(({ colour }) => colour === LINE) ?? [];
  if (!across || !down) throw new Error('the lines are not on the page');
  expect(Math.abs((across.right - across.left) / POINTS_PER_MILLIMETRE - 100)).toBeLessThan(0.3);
  expect(Math.abs((down.bottom - down.top) / POINTS_PER_MILLIMETRE - 100)).toBeLessThan(0.3);
}

/** Every text of the drawing, in its place. */
function expectDrawn({ texts }: PdfPage, { marks }: Drawing): void {
  const wanted = marks.filter(isText).filter(({ text }) => squeezed(text) !== '');
  expect(texts.map(({ text }) => text).join('\n')).toBe(wanted.map(({ text }) => squeezed(text)).join('\n'));
  for (const [i, mark] of wanted.entries()) {
    const drawn = texts[i];
    const back = { start: 0, middle: mark.width / 2, end: mark.width }[mark.align];
    expect(Math.abs((drawn?.x ?? 0) - (mark.x - back)), mark.text).toBeLessThan(CLOSE);
    expect(Math.abs((drawn?.y ?? 0) - mark.y), mark.text).toBeLessThan(CLOSE);
  }
}

function expectFreeEdges({ width, height, texts, paths }: PdfPage): void {
  const margin = 10 * POINTS_PER_MILLIMETRE - CLOSE;
  const marks = paths.filter(({ colour }) => colour !== '#ffffff');
  expect(Math.min(...marks.map(({ left }) => left), ...texts.map(({ x }) => x))).toBeGreaterThan(margin);
  expect(Math.min(...marks.map(({ top }) => top))).toBeGreaterThan(margin);
  expect(Math.max(...marks.map(({ right }) => right))).toBeLessThan(width - margin);
  expect(Math.max(...marks.map(({ bottom }) => bottom), ...texts.map(({ y }) => y))).toBeLessThan(
    height - margin,
  );
}

for (const [paper, paperLabel, short, long] of PAPERS) {
  for (const [orientation, orientationLabel] of ORIENTATIONS) {
    test(`a PDF on ${paper}, ${orientation}, is the drawing, true to size`, async ({ page }) => {
      await openPreview(page);
      await choose(page, paperLabel, orientationLabel);
      const sheets = laidOut({ paper, orientation });
      const wanted = sheets.flatMap(({ name, pages }) => pages.map((drawing) => ({ name, drawing })));

      await drawLines(page);
      const pages = await pdfOf(page);
      expect(pages).toHaveLength(wanted.length);
      for (const [i, { name, drawing }] of wanted.entries()) {
        const printed = pages[i];
        if (!printed) continue;
        const lying = name === 'map' && orientation === 'landscape';
        expect(Math.abs(printed.width / POINTS_PER_MILLIMETRE - (lying ? long : short))).toBeLessThan(0.3);
        expect(Math.abs(printed.height / POINTS_PER_MILLIMETRE - (lying ? short : long))).toBeLessThan(0.3);
        expect(printed.missing, 'typefaces that are not embedded').toEqual([]);
        expectDrawn(printed, drawing);
        expectFreeEdges(printed);
      }
      for (const printed of [pages.at(0), pages.at(-1)]) expectTrueToSize(printed);
    });
  }
}

test('without minutes, rescue lines and boxes to tick, the PDF is the drawing without them', async ({
  page,
}) => {
  await openPreview(page);
  await finished(page);
  const chosen: Partial<SheetOptions>[] = [
    { times: false },
    { times: false, rescue: false },
    { times: false, rescue: false, ticks: false },
  ];
  for (const [i, label] of ['Minutes', 'If stuck', 'Ticks'].entries()) {
    await choose(page, label);
    const drawings = laidOut(chosen[i] ?? {}).flatMap(({ pages }) => pages);
    const pages = await pdfOf(page);
    expect(pages, label).toHaveLength(drawings.length);
    for (const [at, drawing] of drawings.entries()) {
      const printed = pages[at];
      if (printed) expectDrawn(printed, drawing);
    }
  }
});

test('the order of play and the codes in a PDF are those of the engine', async ({ page }) => {
  const { game, network, measures } = full();
  const order = Array.from(measures.order, (node) => network.ids[node] ?? '');
  const LETTERS = new Map([
    ['←', 'L'],
    ['↑', 'U'],
    ['→', 'R'],
    ['↓', 'D'],
  ]);
  const lettered = (code: string) => Array.from(squeezed(code), (sign) => LETTERS.get(sign) ?? sign).join('');

  await openPreview(page);
  await finished(page);
  const pages = await pdfOf(page);
  const sheets = laidOut({});
  const textOf = (name: string) => {
    const from = sheets.flatMap((sheet) => sheet.pages.map(() => sheet.name));
    return pages.flatMap(({ texts }, i) => (from[i] === name ? texts.map(({ text }) => text) : []));
  };

  await test.step('the list of codes', () => {
    const text = textOf('codes').join('');
    let from = 0;
    for (const [place, id] of order.entries()) {
      if (game.nodes.get(id)?.kind !== 'fastener') continue;
      const number = text.indexOf(String(place + 1), from);
      expect(number, `step ${place + 1}`).toBeGreaterThanOrEqual(from);
      from = number;
      const code = lettered(codeOf(game, id) ?? '');
      const found = text.indexOf(code, from);
      expect(found, `code of step ${place + 1}`).toBeGreaterThanOrEqual(from);
      from = found + code.length;
    }
    expect(from).toBeGreaterThan(0);
  });

  await test.step('the list of the order of play', () => {
    const texts = textOf('order');
    let at = -1;
    for (const [place] of order.entries()) {
      at = texts.indexOf(String(place + 1), at + 1);
      expect(at, `step ${place + 1}`).toBeGreaterThanOrEqual(0);
    }
  });
});

test('the map is saved as one SVG that stands alone, and as a PNG at 200 dots an inch', async ({ page }) => {
  await openPreview(page);
  await choose(page, 'Landscape');
  const drawings = laidOut({ orientation: 'landscape', sheets: ['map'] }).flatMap(({ pages }) => pages);
  const [first] = drawings;
  if (!first || drawings.length > 1) throw new Error('the example is meant to have a map of one page');
  const save = async (name: string) => {
    const coming = page.waitForEvent('download');
    await page.getByRole('dialog').getByRole('button', { name }).click();
    const download = await coming;
    return { name: download.suggestedFilename(), content: await readFile(await download.path()) };
  };

  await test.step('SVG', async () => {
    const { name, content } = await save('Map as SVG');
    expect(name).toBe(`${TITLE} map.svg`);
    const svg = content.toString('utf8');
    expect(svg).toContain('width="297mm" height="210mm"');
    expect(svg).not.toMatch(/url\((?!data:)/);

    const alone = await page.context().newPage();
    await alone.setContent(svg);
    await alone.evaluate(() => document.fonts.ready);
    const widths = await alone
      .locator('text')
      .evaluateAll((texts) =>
        texts.map((text) => (text instanceof SVGTextElement ? text.getComputedTextLength() : Number.NaN)),
      );
    const wanted = first.marks.filter(isText);
    expect(widths).toHaveLength(wanted.length);
    for (const [i, { text, width }] of wanted.entries()) {
      expect(Math.abs((widths[i] ?? 0) - width), text).toBeLessThan(0.4);
    }
    await alone.close();
  });

  await test.step('PNG', async () => {
    const { name, content } = await save('Map as PNG');
    expect(name).toBe(`${TITLE} map.png`);
    // Width and height stand in the first chunk (PNG, third edition, 11.2.1).
    const size = [content.readUInt32BE(16), content.readUInt32BE(20)];
    expect(size).toEqual([Math.round((297 / 25.4) * 200), Math.round((210 / 25.4) * 200)]);
    const dark = await page.evaluate(async (base64) => {
      const bytes = Uint8Array.from(atob(base64), (sign) => sign.charCodeAt(0));
      const picture = await createImageBitmap(new Blob([bytes], { type: 'image/png' }));
      const pen = new OffscreenCanvas(picture.width, picture.height).getContext('2d');
      pen?.drawImage(picture, 0, 0);
      const data = pen?.getImageData(0, 0, picture.width, picture.height).data ?? [];
      let dots = 0;
      for (let i = 0; i < data.length; i += 4) if ((data[i] ?? 255) < 96) dots += 1;
      return dots / (data.length / 4);
    }, content.toString('base64'));
    expect(dark, 'share of dark dots').toBeGreaterThan(0.005);
    expect(dark).toBeLessThan(0.2);
  });
});

test('the Share menu saves the map without the preview', async ({ page }) => {
  await openExample(page);
  await page.getByRole('button', { name: 'Share' }).click();
  const coming = page.waitForEvent('download', { timeout: 90_000 });
  await page.getByRole('dialog', { name: 'Share' }).getByRole('button', { name: 'Map as SVG' }).click();
  expect((await coming).suggestedFilename()).toBe(`${TITLE} map.svg`);
  await expect(page.getByRole('dialog', { name: 'Share' })).toBeHidden();
});

test('keys open and close the preview, what was chosen is remembered, and the game itself is never printed', async ({
  page,
}) => {
  await openExample(page);
  await test.step('without the preview, the browser prints how it is done', async () => {
    const [sheet, ...more] = await pdfOf(page);
    expect(more).toEqual([]);
    expect(sheet?.texts.map(({ text }) => text).join('')).toContain('pressPrintatthetopofthepage');
  });

  await page.keyboard.press('Control+p');
  await finished(page);
  await expect(page.getByRole('dialog').getByRole('button', { name: 'Print' })).toBeFocused();
  await choose(
    page,
    'Facilitator map',
    'Cautions',
    'What lies in what',
    'What is hidden where',
    'Order of play',
  );
  await choose(page, 'In grey');
  const [codes, ...others] = await pdfOf(page);
  expect(others).toEqual([]);
  expect(codes?.texts.map(({ text }) => text)).toContain('Codesofalllocks');
  for (const { colour } of codes?.paths ?? []) expect(colour).toMatch(/^#(..)\1\1$/);

  await page.keyboard.press('Escape');
  await expect(page.getByRole('dialog')).toHaveCount(0);
  await page.reload();
  await expect(printButton(page)).toBeEnabled();
  await page.keyboard.press('Control+p');
  await finished(page);
  await expect(page.getByRole('dialog').getByRole('status')).toHaveText('1 page.');
  await expect(page.getByRole('dialog').getByLabel('In grey')).toBeChecked();
  await page.getByRole('dialog').getByLabel('Codes and answers').click();
  await expect(page.getByRole('dialog').getByRole('status')).toHaveText('No sheet is chosen.');
  await expect(page.getByRole('dialog').getByRole('button', { name: 'Print' })).toBeDisabled();
});

test('pressed before the pages are laid out, Print is kept until they are', async ({ page }) => {
  // Workers run but are asked nothing yet: one whose script is kept from it for long would be held to be lost.
  await page.evaluate(() => {
    const put = Worker.prototype.postMessage;
    const questions: (() => void)[] = [];
    Worker.prototype.postMessage = function (this: Worker, question: unknown) {
      questions.push(() => put.call(this, question));
    };
    Object.assign(window, {
      release() {
        Worker.prototype.postMessage = put;
        for (const ask of questions) ask();
      },
    });
  });
  await page.evaluate(() => {
    window.print = () => {
      const before = Number(document.body.dataset['printed'] ?? 0);
      document.body.dataset['printed'] = String(before + 1);
    };
  });
  await openPreview(page);
  const dialog = page.getByRole('dialog');
  const button = dialog.getByRole('button', { name: /^Print/ });
  await button.click();
  await expect(button).toHaveText('Prints when laid out');
  await expect(dialog.getByRole('status')).toHaveText(/^The pages are being laid out, then printed\./);
  await button.click();
  await expect(button).toHaveText('Print');
  await button.click();
  await expect(page.locator('body')).not.toHaveAttribute('data-printed');
  await page.evaluate('release()');
  await finished(page);
  await expect(page.locator('body')).toHaveAttribute('data-printed', '1');
  await expect(button).toHaveText('Print');
});

test('where workers are refused, the page lays the sheets out itself', async ({ page }) => {
  await page.addInitScript(() => Reflect.deleteProperty(window, 'Worker'));
  await page.reload();
  await openPreview(page);
  await finished(page);
  const wanted = laidOut({}).flatMap(({ pages }) => pages);
  await expect(pagesOf(page).getByRole('figure')).toHaveCount(wanted.length);
  const options = page.getByRole('form', { name: 'What is printed' });
  await options.getByLabel('Codes and answers').click();
  await expect(options).toContainText('The list of codes is left out.');
  await finished(page);
  await expect(pagesOf(page)).toContainText('Light to heavy');
  await expect(pagesOf(page)).not.toContainText('KD413');
});
