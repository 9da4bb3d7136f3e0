import { describe, expect, test } from 'vitest';
import { direction, namesDirections } from '../../src/fasteners/direction.ts';

describe('directions as a teacher types them', () => {
  test.each([
    ['up left up down', 'ULUD'],
    ['UPLEFTUPDOWN', 'ULUD'],
    ['Up, down, right', 'UDR'],
    ['u d l r', 'UDLR'],
    ['↑ ⬅️ ↓→', 'ULDR'],
    ['up-left-d', 'ULD'],
    ['up > left > up', 'ULU'],
    ['ＵＤ', 'UD'],
    ['dn lt rt up', 'DLRU'],
    ['▲ ▼ ◀ ▶', 'UDLR'],
    ['👆👈', 'UL'],
    ['up lef', 'UL'],
    ['  ', ''],
  ])('%s', (typed, code) => {
    expect(direction.read(typed)).toEqual({ ok: true, code });
  });

  test.each([
    ['472', 1, '472'],
    ['upp', 2, 'P'],
    ['up north', 2, 'NORTH'],
    ['U1', 2, '1'],
    ['left, forward', 2, 'FORWARD'],
    ['lefright', 2, 'E'],
    ['↑ ↗', 2, '↗'],
  ])('not directions: %s', (typed, position, symbol) => {
    expect(direction.read(typed)).toEqual({
      ok: false,
      trouble: { trouble: 'moveWanted', position, symbol },
    });
  });

  test('as many as there are', () => {
    const code = 'URDL'.repeat(75);
    expect(direction.read([...code].join(' → ').replaceAll('→', ','))).toEqual({ ok: true, code });
    expect(direction.symbols(code)).toHaveLength(300);
    expect(direction.misfits(direction.symbols(code))).toEqual([]);
    expect(direction.codes(300)).toBe(4 ** 300);
  });

  test('words in a file are moves, and what is no move is left as it stands', () => {
    expect(direction.symbols('up left')).toEqual(['U', 'L']);
    expect(direction.symbols('u7')).toEqual(['U', '7']);
  });
});

test('two words or more that name directions are moves, anything else is not', () => {
  for (const raw of ['up left', ' Up, down; LEFT right ']) expect(namesDirections(raw)).toBe(true);
  for (const raw of ['up', 'ULDR', 'left overs', 'up the hill', '']) expect(namesDirections(raw)).toBe(false);
});
