/**
 * The faces of the typefaces that pages are set in. The upright ones are those of the whole program (shell/base.css);
 * the italic, for what is told and not drawn, is loaded with the preview.
 */
import monoExt from '@fontsource-variable/atkinson-hyperlegible-mono/files/atkinson-hyperlegible-mono-latin-ext-wght-normal.woff2?url';
import mono from '@fontsource-variable/atkinson-hyperlegible-mono/files/atkinson-hyperlegible-mono-latin-wght-normal.woff2?url';
import nextExtItalic from '@fontsource-variable/atkinson-hyperlegible-next/files/atkinson-hyperlegible-next-latin-ext-wght-italic.woff2?url';
import nextExt from '@fontsource-variable/atkinson-hyperlegible-next/files/atkinson-hyperlegible-next-latin-ext-wght-normal.woff2?url';
import nextItalic from '@fontsource-variable/atkinson-hyperlegible-next/files/atkinson-hyperlegible-next-latin-wght-italic.woff2?url';
import next from '@fontsource-variable/atkinson-hyperlegible-next/files/atkinson-hyperlegible-next-latin-wght-normal.woff2?url';
import type { Drawing, TextMark } from '../../src/sheets/drawing.ts';
import { FAMILIES, WEIGHTS } from '../../src/sheets/svg.ts';
import { ahead } from '../parts/ahead.ts';

interface Face {
  readonly family: keyof typeof FAMILIES;
  readonly italic: boolean;
  readonly address: string;
  readonly range: string;
}

const LATIN =
  'U+0000-00FF, U+0131, U+0152-0153, U+02BB-02BC, U+02C6, U+02DA, U+02DC, U+2000-206F, U+20AC, U+2122';
const LATIN_EXT =
  'U+0100-02BA, U+02BD-02C5, U+02C7-02CC, U+02CE-02D7, U+02DD-02FF, U+1E00-1E9F, U+1EF2-1EFF, U+2020, U+20A0-20AB, U+20AD-20C0, U+2113';

export const FACES: readonly Face[] = [
  { family: 'words', italic: false, address: next, range: LATIN },
  { family: 'words', italic: false, address: nextExt, range: LATIN_EXT },
  { family: 'words', italic: true, address: nextItalic, range: LATIN },
  { family: 'words', italic: true, address: nextExtItalic, range: LATIN_EXT },
  { family: 'codes', italic: false, address: mono, range: LATIN },
  { family: 'codes', italic: false, address: monoExt, range: LATIN_EXT },
];

const ALL_WEIGHTS = '200 800';

const italics = new Set<FontFace>();

/** Makes the italic known to the page; it is fetched when a text asks for it. Faces that could not be fetched are made known anew. */
function addItalic(): void {
  if (italics.size > 0 && ![...italics].some(({ status }) => status === 'error')) return;
  for (const face of italics) document.fonts.delete(face);
  italics.clear();
  for (const { family, italic, address, range } of FACES) {
    if (!italic) continue;
    const source = `url("${new URL(address, document.baseURI).href}")`;
    const face = new FontFace(FAMILIES[family], source, {
      style: 'italic',
      weight: ALL_WEIGHTS,
      unicodeRange: range,
    });
    italics.add(face);
    document.fonts.add(face);
  }
}

/** As the shorthand of CSS has it. */
export function fontOf({
  family,
  italic,
  weight,
  size,
}: Pick<TextMark, 'family' | 'italic' | 'weight' | 'size'>): string {
  const fallback = family === 'codes' ? 'monospace' : 'sans-serif';
  return `${italic ? 'italic ' : ''}${WEIGHTS[weight]} ${size}px "${FAMILIES[family]}", ${fallback}`;
}

/** What only the extended faces have, as far as people type it. */
const EXTENDED = /[\u0100-\u02BA\u1E00-\u1EFF\u20A0-\u20AB\u20AD-\u20C0\u2113]/u;

/** The fonts of the pages, each with a sign of every face that it needs. */
function fontsOf(pages: readonly Drawing[]): ReadonlyMap<string, string> {
  const plain = new Map<string, TextMark>();
  const extended = new Set<string>();
  for (const { marks } of pages) {
    for (const mark of marks) {
      if (mark.mark !== 'text') continue;
      const key = `${mark.family} ${mark.weight} ${mark.italic ?? false}`;
      if (!plain.has(key)) plain.set(key, mark);
      if (!extended.has(key) && EXTENDED.test(mark.text)) extended.add(key);
    }
  }
  return new Map(Array.from(plain, ([key, mark]) => [fontOf(mark), extended.has(key) ? 'AŁ' : 'A']));
}

/** Fetches every face that the pages need, also of those that are not in view. A face that cannot be had is replaced by the browser. */
export async function loadFaces(pages: readonly Drawing[]): Promise<void> {
  addItalic();
  await Promise.allSettled(Array.from(fontsOf(pages), ([font, signs]) => document.fonts.load(font, signs)));
}

const inRange = (point: number, range: string) =>
  range.split(', ').some((part) => {
    const [first = '', last = first] = part.slice(2).split('-');
    return point >= Number.parseInt(first, 16) && point <= Number.parseInt(last, 16);
  });

function needed({ family, italic, range }: Face, pages: readonly Drawing[]): boolean {
  return pages.some(({ marks }) =>
    marks.some(
      (mark) =>
        mark.mark === 'text' &&
        mark.family === family &&
        (mark.italic ?? false) === italic &&
        Array.from(mark.text).some((sign) => inRange(sign.codePointAt(0) ?? 0, range)),
    ),
  );
}

/** Faces cannot be fetched: no picture can have them in it. */
export class FacesLost extends Error {}

const held = new Map<string, Promise<string>>();

async function fetched(address: string): Promise<string> {
  const response = await fetch(address);
  if (!response.ok) throw new Error(`${address}: ${response.status}`);
  const bytes = new Uint8Array(await response.arrayBuffer());
  return btoa(Array.from(bytes, (byte) => String.fromCharCode(byte)).join(''));
}

/** Each is fetched once; one that could not be is asked for again. */
async function asData(address: string): Promise<string> {
  const data = held.get(address) ?? fetched(address);
  held.set(address, data);
  try {
    return await data;
  } catch (error) {
    held.delete(address);
    throw new FacesLost(address, { cause: error });
  }
}

/** For the page and for the pictures, so that both are there when the connection is not. */
async function holdFaces(): Promise<boolean> {
  addItalic();
  const fonts = FACES.map(({ family, italic }) => fontOf({ family, italic, weight: 'regular', size: 16 }));
  const all = await Promise.allSettled([
    ...FACES.map(({ address }) => asData(address)),
    ...fonts.map((font) => document.fonts.load(font, 'AŁ')),
  ]);
  return all.every(({ status }) => status === 'fulfilled');
}

ahead(holdFaces);

/** Rules of a style sheet that hold the faces themselves, only those that the pages need. Fails with FacesLost when one cannot be fetched. */
export async function embeddedFaces(pages: readonly Drawing[]): Promise<string> {
  const rules = FACES.filter((face) => needed(face, pages)).map(
    async ({ family, italic, address, range }) =>
      `@font-face{font-family:"${FAMILIES[family]}";font-style:${italic ? 'italic' : 'normal'};` +
      `font-weight:${ALL_WEIGHTS};unicode-range:${range};` +
      `src:url(data:font/woff2;base64,${await asData(address)})}`,
  );
  return (await Promise.all(rules)).join('');
}
