/**
 * The scale of the time overlay: nine steps of one violet, from pale to dark, even in lightness.
 * OKLab (Ottosson, 'A perceptual color space for image processing', 2020): lightness falls in equal steps, the hue
 * stays, the chroma rises towards the middle and falls again so that every step lies within sRGB.
 */

import { isLonger } from '../../src/engine/compare.ts';

/** Pale to dark. */
export const SHADES: readonly string[] = [
  '#eeecf9',
  '#d7cff4',
  '#c1b3ed',
  '#ab98e4',
  '#957dd7',
  '#8163c7',
  '#6c4ab4',
  '#58329d',
  '#451885',
];

const INK = '#17262b';
const PAPER = '#fdfefd';

/** From this shade on, text is paper instead of ink. */
const DARK_FROM = 5;

function index(share: number): number {
  return Math.min(SHADES.length - 1, Math.max(0, Math.ceil(share * SHADES.length) - 1));
}

/** The colour for a share (0 to 1) of the largest value on the scale. */
export function shade(share: number): string {
  return SHADES[index(share)] ?? PAPER;
}

/** The colour of text on it. */
export function inkOn(share: number): string {
  return index(share) >= DARK_FROM ? PAPER : INK;
}

/** The right end of the scale, in minutes: the largest value, rounded up to a figure that reads well. */
export function scaleEnd(most: number): number {
  const steps = [1, 2, 3, 4, 5, 6, 8, 10, 12, 15, 20, 25, 30, 40, 50, 60];
  return steps.find((step) => !isLonger(most, step)) ?? Math.ceil(most / 30) * 30;
}
