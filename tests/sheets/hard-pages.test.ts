/** Games that nobody would draw by hand give readable pages all the same, and in the end. */

import { expect, test } from 'vitest';
import type { Orientation } from '../../src/sheets/paper.ts';
import { OPTIONS } from './page-checks/hand-made.ts';
import { HARD_GAMES } from './page-checks/hard-games.ts';
import { checkGame, faultLines } from './page-checks/print.ts';

test.each(HARD_GAMES.map(([what, gameOf], i) => ({ what, gameOf, orientation: orientationOf(i) })))(
  '$what, $orientation',
  ({ gameOf, orientation }) => {
    const { faults, pages } = checkGame(gameOf(), { ...OPTIONS, orientation, sheets: ['map', 'contents'] });
    expect(faultLines(faults)).toEqual([]);
    expect(pages).toBeGreaterThan(0);
  },
);

/** Turn about: each takes its time. */
function orientationOf(index: number): Orientation {
  return index % 2 === 0 ? 'landscape' : 'portrait';
}
