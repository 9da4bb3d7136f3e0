/** The core measures text without a browser: held here to what the browser draws in the bundled typefaces. */
import { type TextStyle, textWidth } from '../src/type/text.ts';
import { expect, test } from './fixtures.ts';

const range = (first: number, last: number) =>
  Array.from({ length: last - first + 1 }, (_, i) => String.fromCodePoint(first + i));
const SIGNS = [...range(0x21, 0x7e), ...range(0xa1, 0xac), ...range(0xae, 0xb4), ...range(0xb6, 0xff)];
const TEXTS = [
  ...SIGNS,
  SIGNS.join(''),
  'AVATAR To Wave fi fl ffi Ty',
  'Tide chart on the wall',
  'Schlüssel für die größte Truhe',
  '417 REEF 0O1lI',
];

interface Drawn {
  readonly style: TextStyle;
  readonly family: string;
  readonly css: number;
  readonly slant?: 'italic';
}

const WORDS = 'Atkinson Hyperlegible Next';
const CODES = 'Atkinson Hyperlegible Mono';
const STYLES: readonly Drawn[] = [
  { style: { size: 13.5, weight: 'regular', family: 'words' }, family: WORDS, css: 400 },
  { style: { size: 12.5, weight: 'regular', family: 'words' }, family: WORDS, css: 400 },
  {
    style: { size: 9, weight: 'regular', family: 'words', italic: true },
    family: WORDS,
    css: 400,
    slant: 'italic',
  },
  { style: { size: 13.5, weight: 'strong', family: 'words' }, family: WORDS, css: 680 },
  { style: { size: 14, weight: 'strong', family: 'codes', spacing: 2 }, family: CODES, css: 680 },
];

test('text on the map is drawn as wide as the core measures it', async ({ page }) => {
  // The preview brings the italics, which the map does not need.
  await page.getByRole('main').getByRole('button', { name: 'Every label is wrong' }).click();
  await page.getByRole('button', { name: 'Print', exact: true }).first().click();
  await expect(page.getByRole('dialog').locator('svg text').first()).toBeAttached();
  for (const { style, family, css, slant = 'normal' } of STYLES) {
    const widths = await page.evaluate(
      async ({ texts, size, spacing, family, css, slant }) => {
        const faces = await document.fonts.load(`${slant} ${css} ${size}px "${family}"`, texts.join(''));
        const map = document.querySelector('.flow');
        if (!map) throw new Error('There is no map on the page.');
        const span = document.createElement('span');
        // The rest (kerning, features of the typeface) is what the map has.
        span.style.cssText = `position: absolute; white-space: pre; letter-spacing: ${spacing}px`;
        span.style.fontFamily = `"${family}"`;
        span.style.fontSize = `${size}px`;
        span.style.fontStyle = slant;
        span.style.fontWeight = `${css}`;
        map.append(span);
        const widths = texts.map((text) => {
          span.textContent = text;
          return span.getBoundingClientRect().width;
        });
        span.remove();
        return { faces: faces.length, widths };
      },
      { texts: TEXTS, size: style.size, spacing: style.spacing ?? 0, family, css, slant },
    );
    expect(widths.faces, `${family} is loaded`).toBeGreaterThan(0);
    for (const [i, text] of TEXTS.entries()) {
      const measured = textWidth(text, style);
      const drawn = widths.widths[i] ?? Number.NaN;
      expect(drawn, `${text} at ${style.size} px, weight ${css}`).toBeLessThanOrEqual(measured + 1);
      expect(drawn, `${text} at ${style.size} px, weight ${css}`).toBeGreaterThanOrEqual(measured * 0.99 - 1);
    }
  }
});
