import { expect, test } from 'vitest';
import { saidCode } from '../../src/game/codes.ts';
import { gameOf } from '../game-of.ts';

test.each([
  ['32 14 25', '32 14 25'],
  ['fox  sun bell', 'FOX SUN BELL'],
  ['4 7 2', '472'],
  ['← → ↑', 'LRU'],
  ['up', 'UP'],
])('the answer %s is said as %s', (answer, said) => {
  const game = gameOf([{ id: 'z', kind: 'puzzle', answer }]);
  expect(saidCode(game, 'z')).toBe(said);
});

test('what has no answer says none', () => {
  const game = gameOf([
    { id: 'z', kind: 'puzzle', answer: ' ' },
    { id: 'k', kind: 'key' },
  ]);
  expect(saidCode(game, 'z')).toBeUndefined();
  expect(saidCode(game, 'k')).toBeUndefined();
});
