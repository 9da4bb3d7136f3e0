import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { quotes, swapped, without } from '../../../src/kit/adapt/quoting.ts';

const one = (from: string, to: string) => [{ from, to }];

describe('a name quoted in a text', () => {
  test('gives way in the case in which it stands there', () => {
    const swaps = one('Art trolley', 'Reading corner');
    expect(swapped('Look on the art trolley.', swaps)).toBe('Look on the reading corner.');
    expect(swapped('Art trolley B2', swaps)).toBe('Reading corner B2');
    expect(swapped('ART TROLLEY: locked', swaps)).toBe('READING CORNER: locked');
  });

  test('a new name with capitals of its own keeps them', () => {
    expect(swapped('behind the art trolley', one('Art trolley', "Miss Hall's desk"))).toBe(
      "behind the Miss Hall's desk",
    );
    expect(swapped('a red lamp', one('Red lamp', 'Red UV lamp'))).toBe('a Red UV lamp');
  });

  test('is found over the end of a line and with a hyphen, and not within a word', () => {
    const swaps = one('Window sill', 'Sink');
    expect(swapped('on the window\nsill', swaps)).toBe('on the sink');
    expect(swapped('on the window-sill', swaps)).toBe('on the sink');
    expect(swapped('window sills', swaps)).toBe('window sills');
    expect(swapped('the bow window sill', swaps)).toBe('the bow sink');
  });

  test('a single word in its common meaning stays, unless that is asked for', () => {
    const swaps = one('Shelf', 'Piano');
    expect(swapped('Shelf: a shelf holds 3 kg. SHELF', swaps)).toBe('Piano: a shelf holds 3 kg. PIANO');
    expect(swapped('a shelf', swaps, true)).toBe('a piano');
  });

  test('two names change places in one go', () => {
    const swaps = [...one('Book shelf', 'Window sill'), ...one('Window sill', 'Book shelf')];
    expect(swapped('From the book shelf to the window sill', swaps)).toBe(
      'From the window sill to the book shelf',
    );
  });

  test('the longer of two names is found first', () => {
    const swaps = [...one('Red box', 'Blue box'), ...one('Red box lock', 'Side lock')];
    expect(swapped('the red box lock of the red box', swaps)).toBe('the side lock of the blue box');
  });

  test('a name that stays is not taken apart', () => {
    const swaps = one('Sill', 'Globe');
    const stay = ['Sill cushion', 'Window Sill'];
    const text = 'Look in the Sill cushion, the Window Sill and the Sill';
    expect(swapped(text, swaps, false, stay)).toBe('Look in the Sill cushion, the Window Sill and the Globe');
    expect(swapped('On the Sill', swaps, false, ['Sill'])).toBe('On the Sill');
    expect(without('Sill cushion, Sill', ['Sill cushion'])).toBe('·, Sill');
  });

  test('signs in a name are signs and no pattern', () => {
    expect(swapped('look at Box (1.5)?', one('Box (1.5)', 'Box $&'))).toBe('look at Box $&?');
    expect(swapped('x', one('', 'y'))).toBe('x');
  });

  test('law: what does not quote a name stays as it is, and what does quotes the new one', () => {
    const words = fc.constantFrom('red', 'tin', 'shelf', 'oak', 'a', '.', 'x');
    const name = fc.array(fc.constantFrom('red', 'tin', 'shelf', 'oak', 'a'), { minLength: 2, maxLength: 3 });
    fc.assert(
      fc.property(name, fc.array(words, { maxLength: 20 }), (parts, others) => {
        const from = parts.join(' ');
        const written = others.join(' ');
        const after = swapped(written, one(from, 'New place'));
        if (quotes(written, from)) expect(quotes(after, 'new place')).toBe(true);
        else expect(after).toBe(written);
      }),
    );
  });
});
