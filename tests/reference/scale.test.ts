/**
 * The colours of the time overlay against what is published: OKLab lightness (Björn Ottosson, 'A perceptual color space for image
 * processing', 2020), contrast (Web Content Accessibility Guidelines 2.2, success criteria 1.4.3 and 1.4.11, relative luminance
 * as defined there), and colour-vision deficiency (Machado, Oliveira and Fernandes, 'A Physiologically-based Model for Simulation
 * of Color Vision Deficiency', IEEE TVCG 15(6), 2009, matrices for severity 1.0).
 */
import { describe, expect, test } from 'vitest';
import { inkOn, SHADES, scaleEnd, shade } from '../../app/flow/scale.ts';

type Triple = readonly [number, number, number];
type Matrix = readonly [Triple, Triple, Triple];

function linear(hex: string): Triple {
  const channel = (at: number) => {
    const value = Number.parseInt(hex.slice(at, at + 2), 16) / 255;
    return value <= 0.04045 ? value / 12.92 : ((value + 0.055) / 1.055) ** 2.4;
  };
  return [channel(1), channel(3), channel(5)];
}

const times = (matrix: Matrix, [a, b, c]: Triple): Triple => {
  const row = ([x, y, z]: Triple) => x * a + y * b + z * c;
  return [row(matrix[0]), row(matrix[1]), row(matrix[2])];
};

/** Linear sRGB to the cone responses of OKLab, and their cube roots to L, a, b. */
const TO_CONES: Matrix = [
  [0.4122214708, 0.5363325363, 0.0514459929],
  [0.2119034982, 0.6806995451, 0.1073969566],
  [0.0883024619, 0.2817188376, 0.6299787005],
];
const TO_LAB: Matrix = [
  [0.2104542553, 0.793617785, -0.0040720468],
  [1.9779984951, -2.428592205, 0.4505937099],
  [0.0259040371, 0.7827717662, -0.808675766],
];

function oklab(rgb: Triple): Triple {
  const [l, m, s] = times(TO_CONES, rgb);
  return times(TO_LAB, [Math.cbrt(l), Math.cbrt(m), Math.cbrt(s)]);
}

const luminance = ([r, g, b]: Triple) => 0.2126 * r + 0.7152 * g + 0.0722 * b;

function contrast(one: string, other: string): number {
  const [a, b] = [luminance(linear(one)), luminance(linear(other))];
  return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
}

const DEFICIENCIES: Readonly<Record<string, Matrix>> = {
  protanomaly: [
    [0.152286, 1.052583, -0.204868],
    [0.114503, 0.786281, 0.099216],
    [-0.003882, -0.048116, 1.051998],
  ],
  deuteranomaly: [
    [0.367322, 0.860646, -0.227968],
    [0.280085, 0.672501, 0.047413],
    [-0.01182, 0.04294, 0.968881],
  ],
  tritanomaly: [
    [1.255528, -0.076749, -0.178779],
    [-0.078411, 0.930809, 0.147602],
    [0.004733, 0.691367, 0.3039],
  ],
};

const clipped = ([r, g, b]: Triple): Triple => {
  const clip = (value: number) => Math.min(1, Math.max(0, value));
  return [clip(r), clip(g), clip(b)];
};

const steps = <T>(values: readonly T[], between: (a: T, b: T) => number) =>
  values.slice(1).flatMap((value, i) => {
    const before = values[i];
    return before === undefined ? [] : [between(before, value)];
  });

const shares = SHADES.map((_, i) => (i + 0.5) / SHADES.length);

describe('the scale of the time overlay', () => {
  test('lightness falls by the same amount from each shade to the next', () => {
    const falls = steps(
      SHADES.map((hex) => oklab(linear(hex))[0]),
      (a, b) => a - b,
    );
    const mean = falls.reduce((sum, fall) => sum + fall, 0) / falls.length;
    expect(mean).toBeGreaterThan(0.06);
    for (const fall of falls) expect(Math.abs(fall - mean) / mean).toBeLessThan(0.05);
  });

  test('every shade has one hue', () => {
    for (const hex of SHADES) {
      const [, a, b] = oklab(linear(hex));
      const hue = (Math.atan2(b, a) * 180) / Math.PI + 360;
      expect(Math.abs(hue - 295)).toBeLessThan(4);
    }
  });

  test.each(shares)('text on the shade for %f has a contrast of 4.5 : 1 (WCAG 2.2, 1.4.3)', (share) => {
    expect(contrast(shade(share), inkOn(share))).toBeGreaterThanOrEqual(4.5);
  });

  test('the ends of the scale stand apart by 3 : 1 (WCAG 2.2, 1.4.11)', () => {
    expect(contrast(shade(0), shade(1))).toBeGreaterThanOrEqual(3);
  });

  test.each(Object.entries(DEFICIENCIES))('neighbours stay apart, and in order, with %s', (_, matrix) => {
    const seen = SHADES.map((hex) => oklab(clipped(times(matrix, linear(hex)))));
    const falls = steps(seen, (a, b) => a[0] - b[0]);
    for (const fall of falls) expect(fall).toBeGreaterThan(0.04);
  });

  test('shares take the shades in order, the whole scale through', () => {
    expect(shares.map(shade)).toEqual(SHADES);
    expect(shade(0)).toBe(SHADES[0]);
    expect(shade(1)).toBe(SHADES.at(-1));
  });

  test('the end of the scale is a round figure at or above the largest value', () => {
    for (const most of [0.2, 1, 5.5, 6.2, 17, 61, 200]) {
      expect(scaleEnd(most)).toBeGreaterThanOrEqual(most);
      expect(Number.isInteger(scaleEnd(most))).toBe(true);
    }
    expect(scaleEnd(6)).toBe(6);
  });
});
