/**
 * Philox4x32-10 against the known answers that its authors publish with it: file kat_vectors of Random123 (Salmon, Moraes, Dror and
 * Shaw 2011, Parallel Random Numbers: As Easy as 1, 2, 3), lines 'philox4x32 10'. Hexadecimal: counter, key, result.
 */
import { expect, it } from 'vitest';
import { philox } from '../../src/engine/simulation/philox.ts';

it.each([
  ['00000000 00000000 00000000 00000000', '00000000 00000000', '6627e8d5 e169c58d bc57ac4c 9b00dbd8'],
  ['ffffffff ffffffff ffffffff ffffffff', 'ffffffff ffffffff', '408f276d 41c83b0e a20bc7c6 6d5451fd'],
  ['243f6a88 85a308d3 13198a2e 03707344', 'a4093822 299f31d0', 'd16cfe09 94fdcceb 5001e420 24126ea1'],
])('of counter %s and key %s', (counter, key, answer) => {
  const [a = 0, b = 0, c = 0, d = 0, k = 0, l = 0] = `${counter} ${key}`
    .split(' ')
    .map((word) => Number.parseInt(word, 16));
  const words = new Uint32Array(4);
  philox(a, b, c, d, k, l, words);
  expect([...words].map((word) => word.toString(16).padStart(8, '0')).join(' ')).toBe(answer);
});
