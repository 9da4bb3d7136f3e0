import { describe, expect, test } from 'vitest';
import { dependence } from '../../../src/kit/adapt/readings.ts';

describe('an answer that is read off the words of a text', () => {
  test.each([
    ['Search in low kitchen. Open now.', 'Search in high kitchen. Open now.', 'SILK', 'initials'],
    ['Sand is grey\nAsh too\nLow shelf\nTin', 'Sand is grey\nAsh too\nHigh shelf\nTin', 'SALT', 'lineStarts'],
    ['the oak shelf is old', 'the red shelf is old', '352', undefined],
    ['the chest is old', 'the tin is old', '352', 'letterCounts'],
    ['The globe hides it', 'The piano hides it', 'GLOBE', 'stated'],
  ] as const)('%s → %s (%s): %s', (before, after, answer, way) => {
    const expected = way === undefined ? undefined : { sure: true, way, answer };
    expect(dependence(before, after, [answer], [])).toEqual(expected);
  });

  test('a text that speaks of letters may depend on them', () => {
    const task = 'Count the letters of each place.';
    expect(dependence('sill, shelf', 'sink, shelf', ['99'], [task])).toEqual({ sure: false });
    expect(dependence('sill, shelf', 'sill, shelf', ['99'], [task])).toBeUndefined();
  });

  test('a text that nothing is worked out from depends on nothing', () => {
    expect(dependence('Count the shelf', 'Count the sink', [], ['Count the shelf'])).toBeUndefined();
  });

  test('an answer of two symbols is not searched for', () => {
    expect(dependence('All oak', 'An elm', ['AO'], [])).toBeUndefined();
  });
});
