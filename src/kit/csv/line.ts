/** One line of a table, read cell by cell; what is wrong in it is gathered. */
import type { ItemColumn, PlaceColumn } from '../../words/kit-table.ts';
import type { CellFault, KitProblem } from '../problem.ts';
import { MAX_COUNT, MAX_MM } from '../schema.ts';
import { type Cell, numberIn, textIn, yesIn } from './cells.ts';

export type Column = ItemColumn | PlaceColumn;

export class Line {
  readonly #cells: ReadonlyMap<Column, string>;
  readonly #line: number;
  readonly #names: Readonly<Record<string, string>>;
  readonly #problems: KitProblem[];

  constructor(
    cells: ReadonlyMap<Column, string>,
    line: number,
    names: Readonly<Record<string, string>>,
    problems: KitProblem[],
  ) {
    this.#cells = cells;
    this.#line = line;
    this.#names = names;
    this.#problems = problems;
  }

  text(column: Column): string | undefined {
    return textIn(this.#cells.get(column) ?? '');
  }

  wrong(column: Column, wrong: CellFault) {
    const value = this.#cells.get(column) ?? '';
    const name = this.#names[column] ?? column;
    this.#problems.push({ code: 'cell', line: this.#line, column: name, value, wrong });
  }

  #take<T>(column: Column, cell: Cell<T>): T | undefined {
    if (cell.ok) return cell.value;
    this.wrong(column, cell.wrong);
    return undefined;
  }

  whole(column: Column, least: number): number | undefined {
    const cell = this.#cells.get(column) ?? '';
    return this.#take(column, numberIn(cell, { whole: true, least, most: MAX_COUNT }));
  }

  number(column: Column, least: number, most: number): number | undefined {
    return this.#take(column, numberIn(this.#cells.get(column) ?? '', { whole: false, least, most }));
  }

  millimetres(column: Column): number | undefined {
    const cell = this.#cells.get(column) ?? '';
    return this.#take(column, numberIn(cell, { whole: false, least: 0, isAbove: true, most: MAX_MM }));
  }

  yes(column: Column): boolean | undefined {
    return this.#take(column, yesIn(this.#cells.get(column) ?? ''));
  }
}

/** Fields that are there. */
export function given<T extends object>(fields: T): Partial<{ [K in keyof T]: Exclude<T[K], undefined> }> {
  const entries = Object.entries(fields).filter(([, value]) => value !== undefined);
  return Object.fromEntries(entries) as Partial<{ [K in keyof T]: Exclude<T[K], undefined> }>;
}
