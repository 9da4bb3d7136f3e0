import { describe, expect, test } from 'vitest';
import { firstOptions, readOptions } from '../../../app/print/options.ts';
import { SHEET_NAMES } from '../../../src/sheets/sheet.ts';

describe('what is chosen for printing', () => {
  test.each([
    ['en-US', 'Letter'],
    ['es-MX', 'Letter'],
    ['fr-CA', 'Letter'],
    ['en-GB', 'A4'],
    ['de', 'A4'],
    ['es', 'A4'],
    ['', 'A4'],
    ['not a language', 'A4'],
  ])('a reader of %s begins with %s', (language, paper) => {
    expect(firstOptions(language).paper).toBe(paper);
  });

  test('comes back as it was remembered', () => {
    const chosen = {
      ...firstOptions('en-GB'),
      paper: 'Letter',
      orientation: 'landscape',
      codes: false,
      colour: false,
      sheets: ['map', 'order'],
    } as const;
    expect(readOptions(JSON.stringify(chosen), 'en-GB')).toEqual(chosen);
  });

  test.each([
    '',
    'null',
    '7',
    '[]',
    '{',
    '"map"',
    '{"paper":"A3","codes":"yes","sheets":"map","ticks":null}',
  ])('what cannot be understood is as at first: %s', (text) => {
    expect(readOptions(text, 'en-US')).toEqual(firstOptions('en-US'));
  });

  test('keeps sheets in their order and knows no others', () => {
    const { sheets } = readOptions('{"sheets":["order","poster","constructor","map"]}', 'en-GB');
    expect(sheets).toEqual(['map', 'order']);
    expect(readOptions(null, 'en-GB').sheets).toEqual(SHEET_NAMES);
  });
});
