import { describe, expect, test } from 'vitest';
import { parseMinutes, typedMinutes } from '../../../app/inspect/minutes.ts';

describe('times as a teacher types them', () => {
  test.each([
    ['45 s', 0.75],
    ['45s', 0.75],
    ['90 seconds', 1.5],
    ['1.5', 1.5],
    ['1,5', 1.5],
    ['1:30', 1.5],
    ['0:20', 1 / 3],
    ['2 min', 2],
    ['2m', 2],
    ['1 min 30 s', 1.5],
    [' 12 ', 12],
    ['0', 0],
  ])('%s', (raw, minutes) => {
    expect(parseMinutes(raw)).toBeCloseTo(minutes, 12);
  });

  test.each(['', 'soon', '-1', '1:75', '1:5', '1:', '1.2.3', '5 h', 'Infinity', '1e3', 'NaN'])(
    'not a time: "%s"',
    (raw) => {
      expect(parseMinutes(raw)).toBeUndefined();
    },
  );

  test.each([
    [0, '0 min'],
    [0.3, '18 s'],
    [0.75, '45 s'],
    [1, '1 min'],
    [1.5, '1:30'],
    [10, '10 min'],
    [61.05, '61:03'],
    [0.123, '0.123'],
  ])('%d minutes stand in a field as %s', (minutes, text) => {
    expect(typedMinutes(minutes)).toBe(text);
  });

  test('what stands in a field is read back as the same time', () => {
    for (let seconds = 0; seconds <= 7200; seconds += 7) {
      expect(parseMinutes(typedMinutes(seconds / 60))).toBeCloseTo(seconds / 60, 9);
    }
  });
});
