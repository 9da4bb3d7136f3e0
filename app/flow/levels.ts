/** How much is said at which size of the map: a name stays as large on the screen, what it cannot stand beside folds. */
import { create } from 'zustand';

export type Level = 'full' | 'names' | 'shapes';

/** Below this the words on things are too small to read; trays say what they hold in words instead. */
const NAMES_BELOW = 0.6;
/** Below this only shapes and signs are left, and the name of what is under the pointer. */
const SHAPES_BELOW = 0.48;
/** A game that is opened is drawn at least this large. */
export const NAMES_READABLE = 0.5;
/** A name on the screen at any size from here up. */
const NAME_ON_SCREEN = 12.5;
const NAME = 13.5;

export function levelAt(zoom: number): Level {
  if (zoom < SHAPES_BELOW) return 'shapes';
  return zoom < NAMES_BELOW ? 'names' : 'full';
}

/** Pixels on the map for a name that is to be 12.5 px on the screen. */
export function nameSize(zoom: number): number {
  return Math.max(NAME, NAME_ON_SCREEN / Math.max(zoom, SHAPES_BELOW));
}

/** The level at which the map is drawn now. */
export const useLevel = create<{ readonly level: Level }>()(() => ({ level: 'full' }));
