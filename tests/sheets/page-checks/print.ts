/** A game printed and measured. */
import { assess } from '../../../src/findings/assess.ts';
import type { Game } from '../../../src/game/model.ts';
import { printRun } from '../../../src/sheets/index.ts';
import { SHEET_NAMES, type Sheet, type SheetOptions } from '../../../src/sheets/sheet.ts';
import { seededRandom } from '../../random-game.ts';
import { checkRun, type MapReport } from './check.ts';
import type { Fault } from './fault.ts';

export function optionsOf(seed: number): SheetOptions {
  const random = seededRandom(seed * 31 + 5);
  const mostly = () => random() < 0.8;
  return {
    paper: random() < 0.5 ? 'A4' : 'Letter',
    orientation: random() < 0.5 ? 'portrait' : 'landscape',
    codes: mostly(),
    times: mostly(),
    rescue: mostly(),
    ticks: mostly(),
    colour: mostly(),
    sheets: random() < 0.3 ? SHEET_NAMES : ['map'],
  };
}

/** The last of the runs that get better and better. */
export function printed(game: Game, options: SheetOptions): readonly Sheet[] {
  const run = printRun(assess(game), options, { date: '1 May, 9:15' });
  for (;;) {
    const next = run.next();
    if (next.done) return next.value;
  }
}

export function checkGame(game: Game, options: SheetOptions): MapReport {
  return checkRun(printed(game, options), assess(game), options);
}

/** One line for each kind of fault, with how often and the first of them. */
export function faultLines(faults: readonly Fault[]): string[] {
  const kinds = new Map<string, Fault[]>();
  for (const fault of faults) kinds.set(fault.kind, [...(kinds.get(fault.kind) ?? []), fault]);
  return [...kinds].map(([kind, [first, ...more]]) => {
    const others = more.length === 0 ? '' : ` (and ${more.length} more)`;
    return `${kind}, page ${first?.page}: ${first?.what}${others}`;
  });
}
