/** What stands on the page itself: its parts, buttons and captions. */
import type { Kind } from '../game/model.ts';

export const PRODUCT = 'Latchmap';

/** The plain word for each kind. */
export const KIND_NAMES: Readonly<Record<Kind, string>> = {
  place: 'Place',
  container: 'Box',
  fastener: 'Lock',
  key: 'Key',
  clue: 'Clue',
  tool: 'Tool',
  puzzle: 'Puzzle',
  prize: 'Prize',
};

export const PALETTE = {
  label: 'Things to drag onto the map',
  add: (name: string) => `Add: ${name}. Drag it onto the map, or press to add it.`,
};

export const PAGE = {
  map: 'Map of the game',
  panel: 'What is true of the game',
  share: 'Share',
};
