import { describe, expect, test } from 'vitest';
import { firstOptions, readOptions, writeOptions } from '../../../app/print/options.ts';
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
    expect(readOptions(writeOptions(chosen), 'en-GB')).toEqual(chosen);
  });

  test.each(['', 'null', '7', '[]', '{', '"map"', '{"paper":"A3","codes":"yes","off":"map","ticks":null}'])(
    'what cannot be understood is as at first: %s',
    (text) => {
      expect(readOptions(text, 'en-US')).toEqual(firstOptions('en-US'));
    },
  );

  test('a sheet that was not known when they were remembered is printed', () => {
    const older = JSON.parse(writeOptions({ ...firstOptions('en-GB'), sheets: ['map'] }));
    const { off } = older;
    expect(off).toEqual(['cautions', 'codes', 'contents', 'hidden', 'order']);
    const { sheets } = readOptions(JSON.stringify({ ...older, off: off.slice(0, -1) }), 'en-GB');
    expect(sheets).toEqual(['map', 'order']);
  });

  test('keeps sheets in their order and knows no others', () => {
    const { sheets } = readOptions('{"off":["hidden","poster","constructor","codes"]}', 'en-GB');
    expect(sheets).toEqual(['map', 'cautions', 'contents', 'order']);
    expect(readOptions(null, 'en-GB').sheets).toEqual(SHEET_NAMES);
  });
});
