import { describe, expect, test } from 'vitest';
import { namesDirections, readDirections } from '../../../app/inspect/directions.ts';

describe('directions as a teacher types them', () => {
  test.each([
    ['up left up down', 'ULUD'],
    ['UPLEFTUPDOWN', 'ULUD'],
    ['Up, down, right', 'UDR'],
    ['u d l r', 'UDLR'],
    ['↑ ⬅️ ↓→', 'ULDR'],
    ['up-left-d', 'ULD'],
    ['up lef', 'UL'],
  ])('%s', (raw, stored) => {
    expect(readDirections(raw)).toEqual({ value: stored });
  });

  test('nothing typed takes the code away', () => {
    expect(readDirections('  ')).toEqual({ value: undefined });
  });

  test.each(['472', 'upp', 'north', 'U1', 'forward', 'lefright'])('not directions: %s', (raw) => {
    expect(readDirections(raw)).toHaveProperty('wrong');
  });
});

test('two words or more that name directions are moves, anything else is not', () => {
  for (const raw of ['up left', ' Up, down; LEFT right ']) expect(namesDirections(raw)).toBe(true);
  for (const raw of ['up', 'ULDR', 'left overs', 'up the hill', '']) expect(namesDirections(raw)).toBe(false);
});
