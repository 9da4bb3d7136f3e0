/** A print run as the worker and the page give it: a row of better and better answers. */
import { assess } from '../../src/findings/assess.ts';
import type { Game } from '../../src/game/model.ts';
import { printRun } from '../../src/sheets/index.ts';
import type { LayoutOptions, Printing, Sheet } from '../../src/sheets/sheet.ts';
import type { Failed } from '../parts/run.ts';

export interface PagesQuestion {
  readonly game: Game;
  readonly options: LayoutOptions;
  readonly printing: Printing;
}

export interface PagesRun {
  readonly sheets: readonly Sheet[];
  readonly final: boolean;
}

export type PagesAnswer = PagesRun | Failed;

/** The run's results one by one; the last is the final one. */
export function* answers({ game, options, printing }: PagesQuestion): Generator<PagesRun> {
  const run = printRun(assess(game), options, printing);
  for (;;) {
    const { value, done } = run.next();
    yield { sheets: value, final: done === true };
    if (done) return;
  }
}
