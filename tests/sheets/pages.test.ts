/** Printed pages hold what they promise: of the example games on each paper, and of random games. `npm run pages` asks it of a thousand. */
import { describe, expect, test } from 'vitest';
import { gameOf as exampleOf, SLUGS } from '../games/example.ts';
import { pageGame } from '../random-page-game.ts';
import { OPTIONS } from './page-checks/hand-made.ts';
import { checkGame, faultLines, optionsOf } from './page-checks/print.ts';

const ORIENTATIONS = ['portrait', 'landscape'] as const;
const PAPERS = ['A4', 'Letter'] as const;

describe.each(SLUGS)('%s', (slug) => {
  test.each(PAPERS.flatMap((paper) => ORIENTATIONS.map((orientation) => ({ paper, orientation }))))(
    'on one page of $paper, $orientation',
    (chosen) => {
      const { faults, pages, names } = checkGame(exampleOf(slug), { ...OPTIONS, ...chosen });
      expect(faultLines(faults)).toEqual([]);
      expect(pages).toBe(1);
      expect(names).toBeGreaterThanOrEqual(7.5);
    },
  );
});

/** Forty games: most are small, which take little time to print. */
const SMALL = 52;
const LARGE = 110;

function seeds(count: number, fits: (nodes: number) => boolean): number[] {
  const found: number[] = [];
  for (let seed = 1; found.length < count; seed++) if (fits(pageGame(seed).nodes.size)) found.push(seed);
  return found;
}

test.each([
  ...seeds(34, (nodes) => nodes <= SMALL),
  ...seeds(4, (nodes) => nodes > SMALL && nodes < LARGE),
  ...seeds(2, (nodes) => nodes >= LARGE),
])('random game %i', (seed) => {
  const { faults, drawn, told } = checkGame(pageGame(seed), optionsOf(seed));
  expect(faultLines(faults)).toEqual([]);
  expect(drawn + told).toBeGreaterThan(0);
});
