/**
 * The words that locks with letters may have. No other part is as large, and few games need them, so that they are
 * fetched when a word lock is on the map, and not ahead. Until then, and where they cannot be had, word locks count every code of their wheels.
 */
import { useSyncExternalStore } from 'react';
import { hasWordLock, type WordList } from '../../src/fasteners/word-list/index.ts';
import { part } from '../parts/part.ts';
import { useGame } from '../store/game.ts';

const WORDS = part(() => import('./unpacked.ts'), { ahead: false });

/** Undefined until it is there. */
export function currentWordList(): WordList | undefined {
  return WORDS.now()?.WORD_LIST;
}

/** The same for what is drawn: drawn anew when it comes. */
export function useWordList(): WordList | undefined {
  return useSyncExternalStore(WORDS.whenThere, currentWordList);
}

/** Calls when it comes: what is true of the game is then worked out anew, though the game has not changed. */
export const whenWordsCome = WORDS.whenThere;

/** Fetches it as soon as the open game has a word lock; one that could not be had is asked for again after the next edit. Called once. */
export function startWordList(): void {
  const consider = () => {
    if (!WORDS.now() && hasWordLock(useGame.getState().game)) void WORDS.load();
  };
  useGame.subscribe(({ game }, before) => {
    if (game.nodes !== before.game.nodes) consider();
  });
  consider();
}
