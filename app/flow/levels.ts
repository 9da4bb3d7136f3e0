/** How much is said at which size of the map: a name stays as large on the screen, what it cannot stand beside folds. */
import { create } from 'zustand';

export type Level = 'full' | 'names' | 'shapes';

/** Above this everything is said; where the names are short, down to the other. */
const FOLDED_BELOW = 0.6;
const FOLDED_BELOW_AT_LEAST = 0.5;
/** The smallest type that can be read, in pixels of the screen. */
const READABLE = 9;
/** A few long names are no reason to say none: this part of them may be smaller. */
const TOO_LONG = 0.1;
/** Below this only shapes and signs are left, and the name of what is under the pointer. */
const SHAPES_BELOW = 0.48;
/** A game that is opened is drawn at least this large. */
export const NAMES_READABLE = 0.5;
/** A name on the screen at any size from here up. */
const NAME_ON_SCREEN = 12.5;
const NAME = 13.5;

/**
 * Below this the words on things are too small to read; trays say what they hold in words instead.
 * @param sizes how large the words on each thing may be set, in pixels of the map
 */
export function foldedBelow(sizes: readonly number[]): number {
  const size = sizes.toSorted((a, b) => a - b)[Math.floor(sizes.length * TOO_LONG)];
  if (size === undefined) return FOLDED_BELOW;
  return Math.min(FOLDED_BELOW, Math.max(FOLDED_BELOW_AT_LEAST, READABLE / size));
}

/** @param folded what foldedBelow says */
export function levelAt(zoom: number, folded: number): Level {
  if (zoom < SHAPES_BELOW) return 'shapes';
  return zoom < folded ? 'names' : 'full';
}

/** Pixels on the map for a name that is to be 12.5 px on the screen. */
export function nameSize(zoom: number): number {
  return Math.max(NAME, NAME_ON_SCREEN / Math.max(zoom, SHAPES_BELOW));
}

const SIGN_ON_SCREEN = 12;
/** No larger than what it stands in. */
const LARGEST_SIGN = 44;

/** Pixels on the map for a sign that stands in the place of words. */
export function signSize(zoom: number): number {
  return Math.min(LARGEST_SIGN, SIGN_ON_SCREEN / zoom);
}

/** The level at which the map is drawn now. */
export const useLevel = create<{ readonly level: Level }>()(() => ({ level: 'full' }));
