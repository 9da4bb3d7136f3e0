/** Bars and their names under the chart run into nothing. */
import { expect, test } from 'vitest';
import { type Bar, lanesOf, namesOf } from '../../../app/play/lanes.ts';
import { seededRandom } from '../../random-game.ts';

const WIDTH = 700;
const LANES = 3;

function barsFor(seed: number, count: number): Bar[] {
  const random = seededRandom(seed);
  return Array.from({ length: count }, () => {
    const at = random() * WIDTH;
    const from = Math.max(0, at - random() * 90);
    return { from, to: Math.min(WIDTH, at + random() * 90), at, name: 20 + random() * 100 };
  }).sort((a, b) => a.at - b.at);
}

const over = (a: { left: number; right: number }, b: { left: number; right: number }) =>
  a.left < b.right && b.left < a.right;

test('names meet neither each other nor another bar, and stay on the chart', () => {
  for (let seed = 1; seed <= 60; seed++) {
    const bars = barsFor(seed, 1 + (seed % 30));
    const lanes = lanesOf(bars, LANES, WIDTH);
    expect(Math.max(...lanes)).toBeLessThan(LANES);
    for (const now of [0, 200, 650]) {
      const names = namesOf(bars, lanes, WIDTH, now);
      names.forEach((name, i) => {
        if (!name) return;
        expect(name.left).toBeGreaterThanOrEqual(0);
        expect(name.right).toBeLessThanOrEqual(WIDTH + 14);
        bars.forEach((bar, j) => {
          if (lanes[i] !== lanes[j]) return;
          expect(over(name, { left: bar.from, right: bar.to })).toBe(false);
          const other = names[j];
          if (other && i !== j) expect(over(name, other)).toBe(false);
        });
      });
    }
  }
});

test('with a few boxes every bar has a lane for itself and says its name, wherever the minute is', () => {
  const bars = [60, 200, 330, 480].map((at) => ({ from: at - 40, to: at + 50, at, name: 70 }));
  const lanes = lanesOf(bars, LANES, WIDTH);
  const shown = (now: number) => namesOf(bars, lanes, WIDTH, now);
  expect(shown(0).every((name) => name !== undefined)).toBe(true);
  expect(shown(600)).toEqual(shown(0));
});

test('where not all names have room, the nearest to the minute have it', () => {
  const bars = [100, 300, 500].map((at) => ({ from: at - 10, to: at + 10, at, name: 150 }));
  const named = (now: number) =>
    namesOf(bars, [0, 0, 0], 520, now).flatMap((name, i) => (name ? [bars[i]?.at] : []));
  expect(named(0)).toEqual([100, 300]);
  expect(named(520)).toEqual([300, 500]);
});
