import { expect, test } from 'vitest';
import { parseCount, parsePlaces } from '../../../app/inspect/numbers.ts';

test('whole numbers from the least one', () => {
  expect(parseCount('3', 1)).toBe(3);
  expect(parseCount(' 0 ', 0)).toBe(0);
  for (const raw of ['0', '-1', '1.5', 'two', '', '1e2', '9999999'])
    expect(parseCount(raw, 1)).toBeUndefined();
});

test('places of a code, in the order typed', () => {
  expect(parsePlaces('1, 3')).toEqual([1, 3]);
  expect(parsePlaces('3 1')).toEqual([3, 1]);
  expect(parsePlaces('2;4')).toEqual([2, 4]);
  for (const raw of ['', '0', '1, x', '1-3', ' , ']) expect(parsePlaces(raw)).toBeUndefined();
});
