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
    const names = namesOf(bars, lanes, WIDTH);
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
});

test('a name is nearer to its own bar than to any other in its lane', () => {
  const apart = (a: { left: number; right: number }, b: { left: number; right: number }) =>
    Math.max(b.left - a.right, a.left - b.right);
  for (let seed = 1; seed <= 60; seed++) {
    const bars = barsFor(seed, 1 + (seed % 12));
    const lanes = lanesOf(bars, LANES, WIDTH);
    namesOf(bars, lanes, WIDTH).forEach((name, i) => {
      const own = bars[i];
      if (!name || !own) return;
      const toOwn = apart(name, { left: Math.min(own.from, own.at), right: Math.max(own.to, own.at) });
      bars.forEach((bar, j) => {
        if (j === i || lanes[i] !== lanes[j]) return;
        expect(apart(name, { left: bar.from, right: bar.to })).toBeGreaterThan(toOwn);
      });
    });
  }
});

test('with a few boxes every bar has a lane for itself and says its name at its right end', () => {
  const bars = [60, 200, 330, 480].map((at) => ({ from: at - 40, to: at + 50, at, name: 70 }));
  const names = namesOf(bars, lanesOf(bars, LANES, WIDTH), WIDTH);
  expect(names.map((name, i) => (name?.left ?? 0) - (bars[i]?.to ?? 0))).toEqual([5, 5, 5, 5]);
});

test('where the chart ends a name stands left of its bar', () => {
  const bars = [{ from: 600, to: 690, at: 640, name: 70 }];
  expect(namesOf(bars, [0], WIDTH)).toEqual([{ left: 525, right: 595 }]);
});
