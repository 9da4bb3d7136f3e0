import { expect, test } from 'vitest';
import { axisOf } from '../../../app/play/axis.ts';

test('reaches to the bell, with figures that have room', () => {
  expect(axisOf(33, 40, 700)).toEqual({
    span: 40,
    ticks: [0, 5, 10, 15, 20, 25, 30, 35, 40],
    bellBeyond: false,
  });
  expect(axisOf(21, 40, 300).ticks).toEqual([0, 10, 20, 30, 40]);
});

test('reaches as far as the game where that is longer than the lesson', () => {
  expect(axisOf(52, 40, 700).span).toBe(52);
  expect(axisOf(3, 0, 700)).toMatchObject({ span: 3, bellBeyond: false });
});

test('does not press a short game into a corner of a long lesson', () => {
  expect(axisOf(2, 40, 700)).toMatchObject({ span: 2, bellBeyond: true });
});

test('has few figures at any length', () => {
  for (const minutes of [0, 0.05, 0.4, 1, 7, 90, 999, 12_345, 1_000_000]) {
    for (const width of [1, 200, 700, 1500]) {
      const { span, ticks } = axisOf(minutes, minutes, width);
      expect(span).toBeGreaterThan(0);
      expect(ticks.length).toBeGreaterThan(0);
      expect(ticks.length).toBeLessThanOrEqual(width / 56 + 2);
      expect(new Set(ticks).size).toBe(ticks.length);
      expect(ticks.every((tick) => Number.isFinite(tick) && tick <= span + 1e-6)).toBe(true);
    }
  }
});
