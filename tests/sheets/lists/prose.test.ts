/** Sentences in lines: nothing lost, nothing wider than its line, names and codes kept apart. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Mark } from '../../../src/sheets/drawing.ts';
import { type ProseStyle, prose } from '../../../src/sheets/prose.ts';
import { type Part, plain, type Sentence } from '../../../src/words/sentence.ts';

const STYLE: ProseStyle = { size: 10, leading: 13 };
const marksOf = (sentence: Sentence, width: number, style = STYLE): Mark[][] =>
  prose(sentence, 20, width, style).map(({ marks }) => [...marks]);

describe('prose', () => {
  it('sets names bold and codes in mono, each a mark of its own', () => {
    const [line] = marksOf(['from ', { node: 'tag', text: 'Red tag' }, ': ', { code: '417' }, '.'], 400);
    expect(line).toMatchObject([
      { text: 'from', weight: 'regular', family: 'words', role: 'plain', x: 20 },
      { text: 'Red tag', weight: 'strong', family: 'words', role: 'name', of: 'tag' },
      { text: ':', weight: 'regular' },
      { text: '417', weight: 'strong', family: 'codes', role: 'code' },
      { text: '.', weight: 'regular' },
    ]);
  });

  it('keeps what follows a name without a space beside it', () => {
    const [, name, comma] = marksOf(['in ', { node: 'tin', text: 'Tin' }, ', here'], 400)[0] ?? [];
    if (name?.mark !== 'text' || comma?.mark !== 'text') throw new Error('no texts');
    expect(comma.x).toBeCloseTo(name.x + name.width, 9);
  });

  it('draws directions as arrows with their letters, and only those', () => {
    const style = { ...STYLE, directions: new Set(['UDL']) };
    const [line] = marksOf([{ code: 'UDL' }, ' ', { code: 'LULL' }], 400, style);
    expect(
      line?.map((mark) => (mark.mark === 'sign' ? mark.sign : mark.mark === 'text' && mark.text)),
    ).toEqual(['up', 'U', 'down', 'D', 'left', 'L', 'LULL']);
  });

  it('is one empty line of nothing', () => {
    expect(marksOf([], 100)).toEqual([[]]);
  });

  it('loses no letter, and no line is wider than it may be', () => {
    const text = fc.oneof(
      fc.constantFrom('Red tin', 'a', ' ', ', ', '. So ', 'צבעים', '🔑🗝️', 'x'.repeat(90), '  two  spaces '),
      fc.string({ maxLength: 12 }),
    );
    const part: fc.Arbitrary<Part> = fc.oneof(
      text,
      text.map((strong) => ({ strong })),
      text.map((code) => ({ code })),
      text.map((name) => ({ node: 'n', text: name })),
    );
    const letters = (all: string) => all.replace(/\s/gu, '');
    fc.assert(
      fc.property(fc.array(part, { maxLength: 8 }), fc.integer({ min: 20, max: 300 }), (sentence, width) => {
        const lines = prose(sentence, 20, width, STYLE);
        const texts = lines.flatMap(({ marks }) =>
          marks.flatMap((mark) => (mark.mark === 'text' ? [mark] : [])),
        );
        expect(letters(texts.map((mark) => mark.text).join(''))).toBe(letters(plain(sentence)));
        for (const { marks } of lines) {
          let end = 20;
          for (const mark of marks) {
            if (mark.mark !== 'text') continue;
            expect(mark.x).toBeGreaterThanOrEqual(end - 1e-6);
            end = mark.x + mark.width;
          }
          expect(end).toBeLessThanOrEqual(20 + width + 1e-6);
        }
      }),
      { seed: 13, numRuns: 300 },
    );
  });
});
