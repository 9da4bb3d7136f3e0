import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { IN_COLOUR, IN_GREY } from '../../src/sheets/colour.ts';
import type { Ink } from '../../src/sheets/drawing.ts';

const TOKENS = readFileSync(new URL('../../app/shell/tokens.css', import.meta.url), 'utf8');

function token(name: string): string | undefined {
  return new RegExp(`--${name}: (#[0-9a-f]{6});`).exec(TOKENS)?.[1];
}

const ON_SCREEN: readonly (readonly [Ink, string])[] = [
  ['ink', 'ink'],
  ['second', 'ink-2'],
  ['hair', 'ink-3'],
  ['metal', 'metal'],
  ['metalSoft', 'metal-soft'],
  ['shade', 'rail'],
  ['deepShade', 'mat'],
  ['stop', 'stop'],
  ['stopSoft', 'stop-soft'],
];

/** Relative luminance of a colour: WCAG 2.2, definition in its glossary. */
function luminance(hex: string): number {
  const [red = 0, green = 0, blue = 0] = [1, 3, 5].map((start) => {
    const value = Number.parseInt(hex.slice(start, start + 2), 16) / 255;
    return value <= 0.04045 ? value / 12.92 : ((value + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
}

const contrast = (one: string, other: string) => {
  const [dark = 0, light = 0] = [luminance(one), luminance(other)].sort((a, b) => a - b);
  return (light + 0.05) / (dark + 0.05);
};

describe('inks', () => {
  it.each(ON_SCREEN)('%s is the same on paper as on the screen', (ink, name) => {
    expect(IN_COLOUR[ink]).toBe(token(name));
  });

  it('are all compared, but for the paper', () => {
    expect(new Set([...ON_SCREEN.map(([ink]) => ink), 'paper'])).toEqual(new Set(Object.keys(IN_COLOUR)));
  });

  it('are as light in grey as in colour, and truly grey', () => {
    for (const [ink] of ON_SCREEN) {
      const grey = IN_GREY[ink];
      expect(grey).toMatch(/^#(..)\1\1$/);
      expect(contrast(grey, IN_COLOUR[ink]), ink).toBeLessThan(1.02);
    }
  });

  it('of text can be read on all that it may stand on (WCAG 2.2, 1.4.3)', () => {
    for (const colours of [IN_COLOUR, IN_GREY]) {
      for (const ground of ['paper', 'shade', 'deepShade', 'metalSoft', 'stopSoft'] as const) {
        expect(contrast(colours.ink, colours[ground])).toBeGreaterThan(4.5);
        expect(contrast(colours.second, colours[ground])).toBeGreaterThan(4.5);
      }
      expect(contrast(colours.stop, colours.stopSoft)).toBeGreaterThan(4.5);
    }
  });
});
