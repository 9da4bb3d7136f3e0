import { describe, expect, test } from 'vitest';
import { keptLine, moment, savedToFile, titleOf } from '../../../src/words/keep.ts';

/** In the machine's own time zone, as the page shows it. */
const at = (...parts: [number, number, number, number, number]) => new Date(...parts).getTime();
const NOW = at(2026, 2, 12, 15, 30);

describe('moments', () => {
  test('today by the clock, else by the day, and by the year when it is another', () => {
    expect(moment(at(2026, 2, 12, 9, 5), NOW)).toBe('at 09:05');
    expect(moment(at(2026, 2, 11, 23, 59), NOW)).toBe('on 11 March');
    expect(moment(at(2025, 2, 12, 15, 30), NOW)).toBe('on 12 March 2025');
  });
});

describe('saved to a file', () => {
  test('says never, when, and how much has changed since', () => {
    expect(savedToFile(undefined, 4, NOW)).toBe('Not yet saved to a file');
    expect(savedToFile(at(2026, 2, 12, 14, 5), 0, NOW)).toBe('Saved to a file at 14:05');
    expect(savedToFile(at(2026, 2, 12, 14, 5), 1, NOW)).toBe('Saved to a file at 14:05; 1 change since');
    expect(savedToFile(at(2026, 2, 12, 14, 5), 3, NOW)).toBe('Saved to a file at 14:05; 3 changes since');
    expect(keptLine(at(2026, 2, 12, 15, 0), undefined, 2, NOW)).toBe(
      'Changed at 15:00. Not yet saved to a file.',
    );
  });

  test('a moment yet to come is not named, but the clock of the page may be a minute behind', () => {
    expect(savedToFile(at(2027, 5, 1, 8, 0), 2, NOW)).toBe('Saved to a file; 2 changes since');
    expect(savedToFile(at(2026, 2, 12, 15, 31), 0, NOW)).toBe('Saved to a file at 15:31');
  });

  test('a game without a title, or with one of spaces, still has a name in the list', () => {
    expect(titleOf(undefined)).toBe(titleOf('  '));
    expect(titleOf(' The pump ')).toBe('The pump');
  });
});
