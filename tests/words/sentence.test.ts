/** What a file says, as a sentence may carry it. */
import { expect, test } from 'vitest';
import { codeInWords, visible } from '../../src/words/sentence.ts';

test('a long code is cut in the middle, a usual one is not', () => {
  expect(codeInWords('FOX SUN BELL')).toBe('FOX SUN BELL');
  expect(codeInWords('U'.repeat(40))).toBe('U'.repeat(40));
  expect(codeInWords(`${'U'.repeat(2500)}${'D'.repeat(2500)}`)).toBe(`${'U'.repeat(12)} … ${'D'.repeat(6)}`);
  expect(codeInWords('🦊'.repeat(50))).toBe(`${'🦊'.repeat(12)} … ${'🦊'.repeat(6)}`);
});

test('what would move the cursor or turn the writing is seen', () => {
  expect(visible('a\u0000b\u0001c\u202Ed\u001B[2J')).toBe('a\uFFFDb\uFFFDc\uFFFDd\uFFFD[2J');
  expect(visible('Café, 日本, שלום 🦊')).toBe('Café, 日本, שלום 🦊');
});
