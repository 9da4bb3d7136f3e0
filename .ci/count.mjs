/** Sums what vitest and Playwright report. A run that failed with no failed test (install, lint, types …) counts as one. */
import { readFileSync } from 'node:fs';

const code = Number(process.argv[2]);

function report(name) {
  try {
    return JSON.parse(readFileSync(`test-results/${name}.json`, 'utf8'));
  } catch (error) {
    if (error.code === 'ENOENT') return undefined;
    throw error;
  }
}

const unit = report('unit');
const browser = report('browser');

const passed = (unit?.numPassedTests ?? 0) + (browser ? browser.stats.expected + browser.stats.flaky : 0);
let failed = (unit?.numFailedTests ?? 0) + (browser?.stats.unexpected ?? 0);
if (failed === 0 && (code !== 0 || !unit || !browser)) failed = 1;

console.log(`${passed} passed, ${failed} failed`);
process.exitCode = failed > 0 ? code || 1 : 0;
