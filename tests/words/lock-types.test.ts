/** What is said of each type of lock, and of codes that do not fit or cannot be read. */
import { describe, expect, test } from 'vitest';
import { FASTENER_TYPES, fastenerType } from '../../src/fasteners/index.ts';
import { ABILITIES } from '../../src/game/abilities.ts';
import { codeTroubleText, misfitsClause, shownText } from '../../src/words/lock-codes.ts';
import {
  codeShownText,
  lockSettingsTold,
  lockSettingText,
  usualOtherWay,
} from '../../src/words/lock-types.ts';
import { plain } from '../../src/words/sentence.ts';

describe.each(FASTENER_TYPES)('a $type', ({ type, asks, opensWith }) => {
  test('says how its code is shown and how it is set, and leaves it to the leaflet where there is one', () => {
    expect(codeShownText(type)).toMatch(/^[A-Z].*\.$/);
    expect(lockSettingText(type)).toMatch(/^[A-Z].*\.$/);
    expect(lockSettingText(type).includes('leaflet')).toBe(opensWith === 'code' && type !== 'typed');
  });

  test('has the usual other way for what it asks, and for nothing else', () => {
    for (const ability of ABILITIES) {
      expect(usualOtherWay(type, ability) !== undefined).toBe(asks.includes(ability));
    }
  });
});

test('nothing is said of a type that is not known', () => {
  expect(codeShownText('scent')).toBe('');
  expect(lockSettingText('scent')).toBe('');
  expect(usualOtherWay('scent', 'seeing')).toBeUndefined();
});

test('what is set alike is told once', () => {
  const told = lockSettingsTold(['number', 'word', 'dial']).map(plain);
  expect(told).toHaveLength(2);
  expect(told[0]).toMatch(/^Number lock and word lock: Open it/);
  expect(told[1]).toMatch(/^Dial lock: /);
});

describe('a code that cannot be read', () => {
  const text = (type: string, typed: string) => {
    const reading = fastenerType(type).read(typed);
    return reading.ok ? reading.code : codeTroubleText(reading.trouble);
  };

  test.each([
    ['number', '4O7', 'A number lock takes only digits: ‘O’ at position 2 is none. Is 0 meant?'],
    ['number', '47🦊', 'A number lock takes only digits: ‘🦊’ at position 3 is none.'],
    ['word', 'CO-2', 'A word lock takes only letters: ‘2’ at position 3 is none.'],
    [
      'direction',
      'up north',
      'The lock takes only up, down, left and right: ‘NORTH’ at position 2 is none of these.',
    ],
    ['dial', '-1 2 3', 'A dial takes only numbers, as in 32 14 25: ‘-1’ at position 1 is none.'],
    ['dial', '32 −14 25', 'A dial takes only numbers, as in 32 14 25: ‘−14’ at position 2 is none.'],
    ['dial', '32 - 14-25', '32 14 25'],
    ['dial', '32 fox 25', 'A dial takes only numbers, as in 32 14 25: ‘FOX’ at position 2 is none.'],
    [
      'dial',
      '321425',
      'Write the numbers of a dial apart, as in 32 14 25: ‘321425’ at position 1 is too long for one.',
    ],
  ])('%s %s', (type, typed, said) => {
    expect(text(type, typed)).toBe(said);
  });

  test('a dial that is turned another way is told so', () => {
    expect(text('dial', 'L32 R14 L25')).toContain('Write the numbers alone');
    expect(text('dial', 'R32 L14 R25')).toBe('32 14 25');
  });
});

describe('why a lock cannot show a code', () => {
  const clause = (type: string, code: string, hardware?: { wheels?: string[]; marks?: number }) => {
    const { symbols, misfits } = fastenerType(type);
    return misfitsClause(misfits(symbols(code), hardware), type);
  };

  test.each([
    ['word', 'CORE', { wheels: ['A-Z', 'A-Z', 'A-Z', 'ABDS'] }, 'wheel 4 has no E (it shows A, B, D and S)'],
    [
      'word',
      'CORES',
      { wheels: ['A-Z', 'A-Z', 'A-Z', 'A-Z'] },
      'the lock has 4 wheels, and the code has 5 letters',
    ],
    ['picture', 'FOX CUP', { wheels: ['FOX SUN', 'FOX SUN'] }, 'wheel 2 has no CUP (it shows FOX and SUN)'],
    ['number', '4A', undefined, 'a number lock usually shows 0 to 9, and position 2 is A'],
    ['dial', '1 2 45', { marks: 40 }, 'the dial goes from 0 to 39, and number 3 is 45'],
    ['dial', '99 9 99', { marks: 40 }, 'the dial goes from 0 to 39, and number 1 is 99 and number 3 is 99'],
    ['direction', 'UDX', undefined, 'move 3, X, is not up, down, left or right'],
  ] as const)('%s %s', (type, code, hardware, said) => {
    const known = hardware && ('wheels' in hardware ? { wheels: [...hardware.wheels] } : hardware);
    expect(clause(type, code, known)).toBe(said);
  });

  test('many reasons are counted', () => {
    expect(clause('number', 'ABCDE')).toMatch(/position 1 is A, .*position 2 is B and 3 more do not fit$/);
  });
});

test('what a wheel shows, runs together', () => {
  expect(shownText([...'0123456789'])).toBe('0 to 9');
  expect(shownText([...'ABCX'])).toBe('A to C and X');
  expect(shownText(['FOX', 'SUN', 'BELL'])).toBe('FOX, SUN and BELL');
  expect(shownText(Array.from({ length: 20 }, (_, i) => `P${i}`))).toMatch(/P11 and 8 more$/);
});
