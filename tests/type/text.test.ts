import fc from 'fast-check';
import { expect, test } from 'vitest';
import { type TextStyle, textWidth, tidySpaces, wrap } from '../../src/type/text.ts';

const style: TextStyle = { size: 13.5, weight: 'regular', family: 'words' };
const strong: TextStyle = { ...style, weight: 'strong' };
const code: TextStyle = { size: 14, weight: 'strong', family: 'codes', spacing: 2 };

const names = fc.oneof(
  fc.string({ unit: 'grapheme', maxLength: 220 }),
  fc.string({ unit: fc.constantFrom('a', 'W', ' ', '-', '鍵', '👩‍🔬', 'é', '\n'), maxLength: 220 }),
);

const withoutSpaces = (text: string) => text.replace(/[^\S\u00A0]+/gu, '');

test('wrapping loses nothing but the spaces that it breaks at', () => {
  fc.assert(
    fc.property(names, fc.integer({ min: 1, max: 300 }), (text, width) => {
      const lines = wrap(text, width, style);
      expect(lines.length).toBeGreaterThan(0);
      expect(withoutSpaces(lines.join(''))).toBe(withoutSpaces(text));
      for (const line of lines) expect(line).toBe(tidySpaces(line));
    }),
    { seed: 21 },
  );
});

test('no line is wider than asked, unless one character alone is', () => {
  fc.assert(
    fc.property(names, fc.integer({ min: 1, max: 300 }), (text, width) => {
      for (const line of wrap(text, width, strong)) {
        const characters = [...new Intl.Segmenter('en').segment(line)].length;
        expect(textWidth(line, strong) <= width + 1e-9 || characters === 1).toBe(true);
      }
    }),
    { seed: 22 },
  );
});

test('a line is broken no sooner than needed', () => {
  expect(wrap('Red tag', 1000, style)).toEqual(['Red tag']);
  const words = 'A chest with a very long name that stands by the window';
  const lines = wrap(words, 150, style);
  for (const [i, line] of lines.entries()) {
    const next = lines[i + 1]?.split(' ')[0];
    if (next !== undefined) expect(textWidth(`${line} ${next}`, style)).toBeGreaterThan(150);
  }
});

test('a name of nothing but spaces is one empty line', () => {
  expect(wrap('', 100, style)).toEqual(['']);
  expect(wrap(' \n ', 100, style)).toEqual(['']);
});

test('widths are those of the typefaces: proportional for words, all alike for codes, with spacing after each symbol', () => {
  expect(textWidth('i', style)).toBeLessThan(textWidth('m', style));
  expect(textWidth('Window', strong)).toBeGreaterThan(textWidth('Window', style));
  expect(textWidth('iiii', code)).toBeCloseTo(textWidth('WWWW', code), 9);
  expect(textWidth('4139', code) - textWidth('413', code)).toBeCloseTo(0.632 * 14 + 2, 9);
});

test('a character of several signs is one: it is never taken apart, and combining marks add nothing', () => {
  expect(textWidth('e\u0301', style)).toBeCloseTo(textWidth('e', style), 9);
  const scientist = '\u{1F469}\u200D\u{1F52C}';
  expect(textWidth(scientist, style)).toBeLessThan(2 * style.size);
  expect(wrap(scientist.repeat(4), 1, style)).toEqual([scientist, scientist, scientist, scientist]);
});

test('long text is taken apart into the same characters as in one piece', () => {
  const family = '\u{1F469}\u200D\u{1F469}\u200D\u{1F467}';
  const unit = fc.constantFrom(
    'a',
    'é',
    'e\u0301',
    '鍵',
    family,
    '\u{1F1E9}',
    '\u{1F3FD}',
    '\u0301',
    '\u{E0061}',
  );
  const whole = new Intl.Segmenter('en', { granularity: 'grapheme' });
  fc.assert(
    fc.property(fc.string({ unit, minLength: 100, maxLength: 600, size: 'max' }), (text) => {
      expect(wrap(text, 1, style)).toEqual(Array.from(whole.segment(text), (part) => part.segment));
    }),
    { seed: 23 },
  );
  const stacked = `a${'\u0301'.repeat(700)}`;
  expect(wrap(`é${stacked}b`, 1, style)).toEqual(['é', stacked, 'b']);
});
