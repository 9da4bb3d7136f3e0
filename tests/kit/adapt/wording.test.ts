import { describe, expect, test } from 'vitest';
import { coloursIn, isSameColour } from '../../../src/kit/adapt/colours.ts';
import { headWords, likeness, normalisedName, tellingWords } from '../../../src/kit/adapt/wording.ts';

describe('names', () => {
  test('are the same however they are written', () => {
    expect(normalisedName('The  Window-sill ')).toBe(normalisedName('window sill'));
    expect(normalisedName('Café corner')).toBe(normalisedName('CAFE\u0301 CORNER'));
    expect(normalisedName('Shelf')).not.toBe(normalisedName('Shelf 2'));
    expect(normalisedName('—')).toBe('');
  });

  test('name a thing with the last word of each group', () => {
    expect([...headWords('Low book shelf')]).toEqual(['shelf']);
    expect([...headWords('Behind the globe')]).toEqual(['globe']);
    expect([...headWords('Shelf by the low window')]).toEqual(['shelf', 'window']);
    expect([...headWords('Drawers')]).toEqual(['drawer']);
  });

  test('are alike by the words they share', () => {
    const like = (one: string, other: string) => likeness(tellingWords(one), tellingWords(other));
    expect(like('Book shelf', 'The book shelf')).toBe(1);
    expect(like('Book shelf', 'Shelf')).toBeCloseTo(2 / 3, 12);
    expect(like('Book shelf', 'Sink')).toBe(0);
    expect(like('', '')).toBe(0);
    const sill = likeness(tellingWords('Window shelf'), tellingWords('Sill'), tellingWords('window side'));
    expect(sill).toBeCloseTo(1 / 3, 12);
  });
});

describe('colours', () => {
  test('are found as words', () => {
    expect(coloursIn('Green tin, reddish, RED tag, green')).toEqual(['green', 'red']);
    expect(coloursIn('Evergreen')).toEqual([]);
    expect(isSameColour('Grey', 'gray')).toBe(true);
    expect(isSameColour('red', 'green')).toBe(false);
  });
});
