/** One table for all rows of the bench: a row is a question, a column a size of game, a cell the median of several runs. */
import type { Game } from '../../src/game/model.ts';
import { medianOf } from './time.ts';

export interface Row {
  readonly name: string;
  /** The row that answers the same question; the ratio to it is printed. */
  readonly beside?: string;
  /** Not asked of larger games. */
  readonly mostNodes?: number;
  /** Prepares what is not measured, and gives what is. */
  readonly task: (game: Game) => () => unknown;
}

/** Measures row by row, so that the ratios of one run are of one machine in one mood; gives lines of a Markdown table. */
export function tableOf(games: readonly Game[], rows: readonly Row[]): string[] {
  const medians = new Map<string, readonly (number | undefined)[]>();
  const lines = [
    `| median of several runs, ms | ${games.map(({ nodes }) => `${nodes.size} nodes`).join(' | ')} |`,
    `|---|${games.map(() => '---|').join('')}`,
  ];
  for (const row of rows) {
    const times = games.map((game) =>
      game.nodes.size > (row.mostNodes ?? Number.POSITIVE_INFINITY) ? undefined : medianOf(row.task(game)),
    );
    medians.set(row.name, times);
    const base = row.beside === undefined ? undefined : medians.get(row.beside);
    const cells = times.map((time, i) => cell(time, base?.[i]));
    lines.push(`| ${row.name} | ${cells.join(' | ')} |`);
  }
  return lines;
}

function cell(time: number | undefined, base: number | undefined): string {
  if (time === undefined) return '–';
  const text = time < 10 ? time.toFixed(3) : time.toFixed(0);
  return base === undefined ? text : `${text} (${Math.round(time / base)} times)`;
}
