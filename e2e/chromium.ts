/**
 * Finds a Chromium that starts, or installs one. Order: LATCHMAP_CHROMIUM, names on the PATH, usual places, Playwright's own;
 * then Playwright's download, then, as root where there is apt-get, the system's package.
 */
import { execFileSync } from 'node:child_process';
import { accessSync, constants } from 'node:fs';
import { delimiter, join } from 'node:path';
import { chromium } from 'playwright';

const VARIABLE = 'LATCHMAP_CHROMIUM';

const NAMES = ['chromium', 'chromium-browser', 'google-chrome-stable', 'google-chrome', 'chrome', 'msedge'];

const PLACES = [
  '/Applications/Chromium.app/Contents/MacOS/Chromium',
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
  '/Applications/Microsoft Edge.app/Contents/MacOS/Microsoft Edge',
  'C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe',
  'C:\\Program Files (x86)\\Google\\Chrome\\Application\\chrome.exe',
  'C:\\Program Files (x86)\\Microsoft\\Edge\\Application\\msedge.exe',
  '/snap/bin/chromium',
];

/** No request may leave that the page did not make; and the sandbox does not start for root. */
export const CHROMIUM_ARGUMENTS = [
  '--disable-gpu',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
  '--no-first-run',
  ...(process.getuid?.() === 0 ? ['--no-sandbox'] : []),
];

function isExecutable(path: string): boolean {
  try {
    accessSync(path, constants.X_OK);
    return true;
  } catch {
    return false;
  }
}

function onPath(): string[] {
  const folders = (process.env['PATH'] ?? '').split(delimiter).filter((folder) => folder !== '');
  const endings = process.platform === 'win32' ? ['.exe'] : [''];
  return NAMES.flatMap((name) =>
    folders.flatMap((folder) => endings.map((ending) => join(folder, name + ending))),
  );
}

async function starts(path: string): Promise<boolean> {
  if (!isExecutable(path)) return false;
  try {
    const browser = await chromium.launch({
      executablePath: path,
      args: CHROMIUM_ARGUMENTS,
      timeout: 60_000,
    });
    const page = await browser.newPage();
    await page.close();
    await browser.close();
    return true;
  } catch {
    return false;
  }
}

async function firstThatStarts(paths: Iterable<string>): Promise<string | undefined> {
  for (const path of new Set(paths)) {
    if (await starts(path)) return path;
  }
  return undefined;
}

/** True when the command ran and ended well. What it says is not shown: another way may still work. */
function quietly(command: string, ...args: string[]): boolean {
  try {
    execFileSync(command, args, {
      stdio: 'ignore',
      timeout: 300_000,
      env: { ...process.env, DEBIAN_FRONTEND: 'noninteractive' },
    });
    return true;
  } catch {
    return false;
  }
}

function fromPlaywright(): boolean {
  return quietly(process.execPath, join('node_modules', 'playwright', 'cli.js'), 'install', 'chromium');
}

function fromDebian(): boolean {
  if (process.getuid?.() !== 0) return false;
  const install = () => quietly('apt-get', 'install', '-y', '--no-install-recommends', 'chromium');
  return install() || (quietly('apt-get', 'update') && install());
}

const installed = () => firstThatStarts([...onPath(), ...PLACES, chromium.executablePath()]);

/** The path of a Chromium that starts on this machine, or undefined when there is none and none can be installed. */
export async function findChromium(): Promise<string | undefined> {
  const named = process.env[VARIABLE];
  if (named) return firstThatStarts([named]);
  return (
    (await installed()) ??
    (fromPlaywright() ? await installed() : undefined) ??
    (fromDebian() ? await installed() : undefined)
  );
}

/** What is missing, in one sentence. */
export function withoutChromium(): string {
  const named = process.env[VARIABLE];
  return named
    ? `The browser tests need a Chromium, and the one that ${VARIABLE} names does not start: ${named}`
    : `The browser tests need a Chromium that starts; none was found and none could be installed: install one, or give its path in ${VARIABLE}.`;
}
