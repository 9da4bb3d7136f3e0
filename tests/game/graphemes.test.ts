import { afterEach, expect, test, vi } from 'vitest';

afterEach(() => {
  vi.unstubAllGlobals();
  vi.resetModules();
});

/** The letters and marks of a text, as a browser with or without a segmenter takes them apart. */
async function taken(text: string, hasSegmenter: boolean): Promise<string[]> {
  vi.resetModules();
  if (!hasSegmenter) vi.stubGlobal('Intl', {});
  const { symbolsOf } = await import('../../src/game/codes.ts');
  return symbolsOf(text);
}

test.each([
  ['472', ['4', '7', '2']],
  ['ÄË', ['Ä', 'Ë']],
  ['Q̇M', ['Q̇', 'M']],
  ['\u0301A', ['\u0301', 'A']],
  ['🔑B', ['🔑', 'B']],
  ['❤️A', ['❤️', 'A']],
  ['', []],
])('the symbols of %j are the same without a segmenter', async (text, symbols) => {
  expect(await taken(text, true)).toEqual(symbols);
  expect(await taken(text, false)).toEqual(symbols);
});
