/**
 * Makes src/type/advances.ts: how far each sign of the bundled typefaces moves the pen, as Chromium measures it.
 * To be run when a typeface is updated: npx tsx app/command/widths.ts. e2e/text-widths.spec.ts holds the table to what is drawn.
 */
import { readFileSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { chromium } from 'playwright';
import { CHROMIUM_ARGUMENTS, findChromium, withoutChromium } from '../../e2e/chromium.ts';

const executablePath = await findChromium();
if (executablePath === undefined) throw new Error(withoutChromium());

const require = createRequire(import.meta.url);
const family = (name: string) => {
  const face = (subset: string, style: string, range: string) => {
    const file = require.resolve(
      `@fontsource-variable/atkinson-hyperlegible-${name}/files/atkinson-hyperlegible-${name}-${subset}-wght-${style}.woff2`,
    );
    const data = readFileSync(file).toString('base64');
    return `@font-face { font-family: ${name}; font-style: ${style}; font-weight: 200 800; unicode-range: ${range}; src: url(data:font/woff2;base64,${data}); }`;
  };
  return ['normal', 'italic']
    .map(
      (style) =>
        face('latin', style, 'U+0-FF, U+131, U+152-153, U+2000-206F, U+20AC, U+2122, U+2212') +
        face('latin-ext', style, 'U+100-130, U+132-151, U+154-17F'),
    )
    .join('');
};

const range = (first: number, last: number) =>
  Array.from({ length: last - first + 1 }, (_, i) => String.fromCodePoint(first + i)).join('');
/** ASCII, Latin-1, Latin Extended-A, and the punctuation and signs that people type. */
const wanted = `${range(0x20, 0x7e)}${range(0xa0, 0xac)}${range(0xae, 0x17f)}‐‑‒–—‘’‚“”„†•…‹›€™−`;

const browser = await chromium.launch({ executablePath, args: CHROMIUM_ARGUMENTS });
try {
  const page = await browser.newPage();
  await page.setContent(`<style>${family('next')}${family('mono')}</style>`);
  const measure = (name: string, weight: number | string, text: string, fallback = 'serif') =>
    page.evaluate(
      async ({ name, weight, text, fallback }) => {
        const font = `${weight} 1000px ${name}, ${fallback}`;
        await document.fonts.load(font, text);
        const pen = document.createElement('canvas').getContext('2d');
        if (!pen) throw new Error('This browser has no canvas to measure on.');
        pen.font = font;
        pen.fontKerning = 'none';
        return Array.from(text, (sign) => Math.ceil(pen.measureText(sign).width - 0.01));
      },
      { name, weight, text, fallback },
    );
  /** A sign that the typeface lacks is drawn in the fallback, and so changes its width with it. */
  const lacking = async (name: string) => {
    const serif = await measure(name, 400, wanted);
    const mono = await measure(name, 400, wanted, 'monospace');
    return new Set(Array.from(wanted).filter((_, i) => serif[i] !== mono[i]));
  };
  const lackingNext = await lacking('next');
  const lackingMono = await lacking('mono');
  const signs = Array.from(wanted)
    .filter((sign) => !lackingNext.has(sign))
    .join('');
  const monoSigns = Array.from(signs)
    .filter((sign) => !lackingMono.has(sign))
    .join('');
  const regular = await measure('next', 400, signs);
  const strong = await measure('next', 680, signs);
  const italic = await measure('next', 'italic 400', signs);
  const mono = new Set([
    ...(await measure('mono', 400, monoSigns)),
    ...(await measure('mono', 680, monoSigns)),
  ]);
  if (mono.size !== 1) throw new Error(`The mono face has advances ${[...mono].join(', ')}`);
  console.log('not in next:', [...lackingNext].join(' '), '\nnot in mono:', [...lackingMono].join(' '));
  writeFileSync(
    new URL('../../src/type/advances.ts', import.meta.url),
    `/** Made by app/command/widths.ts; not written by hand. Advances of the bundled typefaces in thousandths of the type size, without kerning. */

export const SIGNS = ${JSON.stringify(signs)};

/** Atkinson Hyperlegible Next at weight 400, one entry for each sign. */
export const REGULAR: readonly number[] = ${JSON.stringify(regular)};

/** The same at weight 680, the heaviest in use; lighter ones are narrower. */
export const STRONG: readonly number[] = ${JSON.stringify(strong)};

/** The italics at weight 400. */
export const ITALIC: readonly number[] = ${JSON.stringify(italic)};

/** Atkinson Hyperlegible Mono, each of its signs, at any weight. */
export const MONO = ${[...mono][0]};
`,
  );
} finally {
  await browser.close();
}
