/** The assignment problem as a linear programme, for HiGHS (Huangfu and Hall 2018). */
import type { Highs } from 'highs';
import type { Problem } from '../../src/kit/fit/supply.ts';

export function tableOf({ rows, columns, cost }: Problem): number[][] {
  return rows.map((_, row) => columns.map((__, column) => cost(row, column)));
}

export const sum = (table: readonly (readonly number[])[], cells: Iterable<readonly [number, number]>) =>
  [...cells].reduce((total, [row, column]) => total + (table[row]?.[column] ?? Number.NaN), 0);

/** The least sum of a cell in each row, no two in one column; a linear programme, whose corners are whole (Birkhoff 1946). Cells that are never taken are not in it. */
export function leastByHighs(highs: Highs, table: readonly (readonly number[])[], never: number): number {
  const cells = table.flatMap((row, i) =>
    row.flatMap((cost, j) => (cost >= never ? [] : [{ i, j, cost, name: `x_${i}_${j}` }])),
  );
  const total = (own: typeof cells) => own.map(({ name }) => name).join(' + ');
  const columns = [...new Set(cells.map(({ j }) => j))];
  const solution = highs.solve(
    [
      'Minimize',
      ` cost: ${cells.map(({ cost, name }) => `${cost} ${name}`).join(' + ')}`,
      'Subject To',
      ...table.map((_, i) => ` r${i}: ${total(cells.filter((cell) => cell.i === i))} = 1`),
      ...columns.map((j) => ` c${j}: ${total(cells.filter((cell) => cell.j === j))} <= 1`),
      'Bounds',
      ...cells.map(({ name }) => ` 0 <= ${name} <= 1`),
      'End',
    ].join('\n'),
  );
  // The library answers nonsense with another status and does not throw.
  if (solution.Status !== 'Optimal') throw new Error(`HiGHS ended with ${solution.Status}.`);
  const primalOf = (name: string) => {
    const column = solution.Columns[name];
    return column && 'Primal' in column ? column.Primal : 0;
  };
  const halves = cells.filter(({ name }) => Math.abs(primalOf(name) - Math.round(primalOf(name))) > 1e-6);
  const taken = cells.filter(({ name }) => primalOf(name) > 0.5);
  if (halves.length > 0 || taken.length !== table.length) throw new Error('HiGHS gave no assignment.');
  // Summed here, since the library rounds.
  return sum(
    table,
    taken.map(({ i, j }) => [i, j] as const),
  );
}
