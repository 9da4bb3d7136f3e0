import { beforeEach, expect, test } from 'vitest';
import { addressedGame, lastShown, setAddress } from '../../../app/keep/address.ts';

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

test('what was last on the page is known without an address', () => {
  setAddress('k3mn7p');
  setAddress('b2');
  setAddress(undefined);
  expect(lastShown()).toBe('b2');
});
