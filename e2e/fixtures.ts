/** A browser as a teacher has it, that fails the test on any error in the console, any break of the policy, any request elsewhere. */
import { readFile } from 'node:fs/promises';
import { type BrowserContext, test as base, type Download, expect, type Page } from 'playwright/test';
import { PAGE } from '../src/words/screen.ts';

function watch(context: BrowserContext, origin: string, troubles: string[]): void {
  context.on('console', (message) => {
    if (message.type() === 'error' || message.type() === 'warning')
      troubles.push(`console: ${message.text()}`);
  });
  context.on('weberror', (error) => troubles.push(`error: ${error.error().message}`));
  context.on('request', (request) => {
    const { protocol, origin: asked } = new URL(request.url());
    if (protocol !== 'data:' && protocol !== 'blob:' && asked !== origin) {
      troubles.push(`request to ${request.url()}`);
    }
  });
}

export const test = base.extend<{ troubles: string[] }>({
  /** What went wrong so far. A test that provokes an error takes it out again. */
  troubles: async ({ context, baseURL }, use) => {
    const troubles: string[] = [];
    await context.addInitScript(() => {
      document.addEventListener('securitypolicyviolation', ({ violatedDirective, blockedURI, sample }) => {
        reportError(new Error(`policy: ${violatedDirective} ${blockedURI} ${sample}`));
      });
    });
    watch(context, new URL(baseURL ?? '').origin, troubles);
    await use(troubles);
    expect(troubles).toEqual([]);
  },
  page: async ({ page, troubles: _troubles }, use) => {
    await page.goto('./');
    await judged(page);
    await use(page);
  },
});

/** The verdict is there: whatever was to be fetched for it has come, and keys mean something. */
export async function judged(page: Page): Promise<void> {
  const told = page.getByRole('region', { name: PAGE.verdict });
  await expect(told).toBeVisible();
  await expect(told).not.toContainText(PAGE.unknown);
}

export { expect };

/** The JSON of what a press made the page download, and the name it was given. */
export async function downloaded(
  page: Page,
  press: () => Promise<void>,
): Promise<{ name: string; text: string }> {
  const coming = page.waitForEvent('download');
  await press();
  const download: Download = await coming;
  return { name: download.suggestedFilename(), text: await readFile(await download.path(), 'utf8') };
}

export interface UploadedFile {
  readonly name: string;
  readonly mimeType: string;
  readonly buffer: Buffer;
}

export function fileOf(name: string, text: string): UploadedFile {
  return { name, mimeType: 'application/json', buffer: Buffer.from(text) };
}

/** Opens files through the list of games, as the browser's own window for choosing would. */
export async function openFiles(page: Page, ...files: (UploadedFile | string)[]): Promise<void> {
  await page.getByRole('button', { name: 'Games' }).click();
  const choosing = page.waitForEvent('filechooser');
  await page.getByRole('dialog').getByRole('button', { name: 'Open a file' }).click();
  const chooser = await choosing;
  const paths = files.filter((file) => typeof file === 'string');
  await chooser.setFiles(paths.length > 0 ? paths : files.filter((file) => typeof file !== 'string'));
}
