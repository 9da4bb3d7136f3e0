/**
 * The browser tests with all that they need: a Chromium, a fresh build, a free port. Further arguments go to Playwright.
 * `--chromium` only finds or installs the browser, so that a run without one fails at its beginning.
 */
import { spawnSync } from 'node:child_process';
import { createServer } from 'node:net';
import { join } from 'node:path';
import { findChromium, withoutChromium } from './chromium.ts';

function freePort(): Promise<number> {
  return new Promise((resolve, reject) => {
    const server = createServer();
    server.once('error', reject);
    server.listen(0, '127.0.0.1', () => {
      const address = server.address();
      server.close(() => resolve(typeof address === 'object' && address ? address.port : 0));
    });
  });
}

/** Runs a package's own script with this Node, without a shell between, and gives its exit code. */
function run(script: readonly string[], args: readonly string[], env: NodeJS.ProcessEnv): number {
  const ended = spawnSync(process.execPath, [join('node_modules', ...script), ...args], {
    stdio: 'inherit',
    env,
  });
  return ended.status ?? 1;
}

async function main(args: readonly string[]): Promise<number> {
  const path = await findChromium();
  if (path === undefined) {
    console.error(withoutChromium());
    return 1;
  }
  if (args.includes('--chromium')) {
    console.log(`Browser tests will use ${path}`);
    return 0;
  }
  const built = run(['vite', 'bin', 'vite.js'], ['build', '--logLevel', 'warn'], process.env);
  if (built !== 0) return built;
  const port = process.env['LATCHMAP_PORT'] ?? String(await freePort());
  const env = { ...process.env, LATCHMAP_CHROMIUM: path, LATCHMAP_PORT: port };
  return run(['playwright', 'cli.js'], ['test', '--config', 'e2e/playwright.config.ts', ...args], env);
}

process.exitCode = await main(process.argv.slice(2));
