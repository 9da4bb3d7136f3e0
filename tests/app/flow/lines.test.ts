/** Arrows while they are drawn by hand, and which one the pointer means. */
import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { elbow } from '../../../app/flow/links/elbow.ts';
import { distanceTo, linkNear } from '../../../app/flow/links/near.ts';
import { longestMiddle } from '../../../app/flow/links/paint.ts';
import type { Rect } from '../../../src/map/layout.ts';

const rect = fc.record({
  x: fc.integer({ min: -2000, max: 2000 }),
  y: fc.integer({ min: -2000, max: 2000 }),
  width: fc.integer({ min: 0, max: 300 }),
  height: fc.integer({ min: 0, max: 300 }),
});

const onSide = ({ x, y, width, height }: Rect, spot: { x: number; y: number }) =>
  (spot.x === x || spot.x === x + width) && spot.y === y + height / 2;

test('a line runs at right angles, from a side of the one to a side of the other', () => {
  fc.assert(
    fc.property(rect, rect, (from, to) => {
      const route = elbow(from, to);
      const [first, last] = [route[0], route.at(-1)];
      expect(first && onSide(from, first)).toBe(true);
      expect(last && onSide(to, last)).toBe(true);
      for (let i = 1; i < route.length; i++) {
        expect(route[i]?.x === route[i - 1]?.x || route[i]?.y === route[i - 1]?.y).toBe(true);
      }
    }),
    { seed: 8 },
  );
});

test('the sides face each other where there is room between', () => {
  const from = { x: 0, y: 0, width: 100, height: 40 };
  expect(elbow(from, { x: 300, y: 200, width: 100, height: 40 }).map(({ x }) => x)).toEqual([
    100, 200, 200, 300,
  ]);
  expect(elbow(from, { x: -300, y: 200, width: 100, height: 40 }).map(({ x }) => x)).toEqual([
    0, -100, -100, -200,
  ]);
});

test('the nearest arrow within reach is meant', () => {
  const level = [
    { x: 0, y: 0 },
    { x: 100, y: 0 },
  ];
  const upright = [
    { x: 50, y: -50 },
    { x: 50, y: 50 },
  ];
  expect(distanceTo(level, { x: 30, y: 4 })).toBe(4);
  expect(distanceTo(level, { x: 103, y: 4 })).toBe(5);
  const routes = new Map([
    ['level', level],
    ['upright', upright],
  ]);
  expect(linkNear(routes, { x: 20, y: 3 }, 6)).toBe('level');
  expect(linkNear(routes, { x: 52, y: 30 }, 6)).toBe('upright');
  expect(linkNear(routes, { x: 20, y: 30 }, 6)).toBeUndefined();
});

test('the cross stands in the middle of the longest stretch', () => {
  const route = [
    { x: 0, y: 0 },
    { x: 10, y: 0 },
    { x: 10, y: 100 },
    { x: 30, y: 100 },
  ];
  expect(longestMiddle(route)).toEqual({ x: 10, y: 50 });
});
