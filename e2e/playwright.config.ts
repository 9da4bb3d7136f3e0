import { defineConfig } from 'playwright/test';
import { CHROMIUM_ARGUMENTS } from './chromium.ts';

const port = process.env['LATCHMAP_PORT'] ?? '4751';
const executablePath = process.env['LATCHMAP_CHROMIUM'] ?? '/usr/bin/chromium';
const address = `http://localhost:${port}/`;

export default defineConfig({
  testDir: '.',
  testMatch: '**/*.spec.ts',
  outputDir: '../test-results/browser',
  reporter: [['list'], ['json', { outputFile: '../test-results/browser.json' }]],
  fullyParallel: true,
  workers: 2,
  retries: 0,
  forbidOnly: true,
  // Both only end what hangs: a busy machine with two cores is no failure.
  timeout: 180_000,
  expect: { timeout: 30_000 },
  use: {
    baseURL: address,
    viewport: { width: 1366, height: 768 },
    locale: 'en-GB',
    timezoneId: 'Europe/London',
    reducedMotion: 'reduce',
    screenshot: 'only-on-failure',
    launchOptions: { executablePath, args: CHROMIUM_ARGUMENTS },
  },
  webServer: {
    command: `node node_modules/vite/bin/vite.js preview --strictPort --port ${port}`,
    cwd: '..',
    url: address,
    reuseExistingServer: false,
    gracefulShutdown: { signal: 'SIGTERM', timeout: 5_000 },
  },
});
