import { beforeEach, expect, test } from 'vitest';
import { addressedGame, setAddress } from '../../../app/keep/address.ts';

beforeEach(() => setAddress(undefined));

test('the address names the open game, whatever its id is made of', () => {
  for (const id of ['k3mn7p', '__proto__', 'a&b=c#d', 'ö 1']) {
    setAddress(id);
    expect(addressedGame(location.hash)).toBe(id);
  }
});

test('no game, no address', () => {
  setAddress('k3mn7p');
  setAddress(undefined);
  expect(addressedGame(location.hash)).toBeUndefined();
  expect(addressedGame('#elsewhere')).toBeUndefined();
});
