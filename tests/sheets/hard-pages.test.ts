/** Games that nobody would draw by hand give readable pages all the same, and in the end. */

import { expect, test } from 'vitest';
import type { Orientation } from '../../src/sheets/paper.ts';
import type { SheetName, SheetOptions } from '../../src/sheets/sheet.ts';
import { OPTIONS } from './page-checks/hand-made.ts';
import { HARD_GAMES, manyInputs } from './page-checks/hard-games.ts';
import { checkGame, faultLines, printed } from './page-checks/print.ts';

test.each(HARD_GAMES.map(([what, gameOf], i) => ({ what, gameOf, orientation: orientationOf(i) })))(
  '$what, $orientation',
  ({ gameOf, orientation }) => {
    const { faults, pages } = checkGame(gameOf(), { ...OPTIONS, orientation, sheets: ['map', 'contents'] });
    expect(faultLines(faults)).toEqual([]);
    expect(pages).toBeGreaterThan(0);
  },
);

test.each(['portrait', 'landscape'] as const)(
  'more inputs than a page holds, %s: what is not told stands in the order of play',
  (orientation) => {
    const game = manyInputs(orientation === 'portrait' ? 96 : 64);
    const options: SheetOptions = { ...OPTIONS, orientation, sheets: ['map', 'order'] };
    const { faults } = checkGame(game, options);
    // Named on another sheet: looked for below.
    expect(faultLines(faults.filter(({ kind }) => kind !== 'link told wrong'))).toEqual([]);
    const sheets = printed(game, options);
    const saidOn = (name: SheetName) =>
      sheets
        .filter((sheet) => sheet.name === name)
        .flatMap(({ pages }) => pages.flatMap(({ marks }) => marks))
        .flatMap((mark) => (mark.mark === 'text' ? [mark] : []));
    for (const of of ['sum', 'wheels']) {
      const told = saidOn('map').filter((mark) => mark.of === of && mark.role === 'reference');
      const said = told.map(({ text }) => text).join(' ');
      const [, more] = said.match(/and (\d+) more: see the order of play$/) ?? [];
      const rest = told.find(({ text }) => text.startsWith(`and ${more} more`));
      expect(rest?.links).toHaveLength(Number(more));
      expect(said.match(/Letter \d/g)?.length).toBeGreaterThan(8);
    }
    const order = saidOn('order')
      .map(({ text }) => text)
      .join(' ');
    for (const { name } of game.nodes.values()) if (/^Letter/.test(name)) expect(order).toContain(name);
  },
);

/** Turn about: each takes its time. */
function orientationOf(index: number): Orientation {
  return index % 2 === 0 ? 'landscape' : 'portrait';
}
