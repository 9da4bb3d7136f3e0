/** What reading a kit has to say, as codes and values. The sentences stand in src/words/kit-problems.ts. */
import type { Expected, Found } from '../game/problem.ts';
import type { Kit } from './model.ts';

/** Where in a JSON file. `number` counts items or places from 1; `label` is what a person knows it by. */
export type KitWhere =
  | { readonly part: 'file'; readonly field?: string }
  | {
      readonly part: 'item' | 'place';
      readonly number: number;
      readonly label?: string;
      /** Path within it, such as `wheels.0`. */
      readonly field?: string;
    };

/** Each refuses the file. */
export type KitProblem =
  /** Signs of text, counted as UTF-16 units. */
  | { readonly code: 'tooLarge'; readonly length: number; readonly limit: number }
  | { readonly code: 'notJson' }
  | { readonly code: 'empty' }
  | { readonly code: 'otherJson' }
  /** A game, which is opened elsewhere. */
  | { readonly code: 'game' }
  | { readonly code: 'newerVersion'; readonly version: number; readonly known: number }
  | { readonly code: 'tooDeep'; readonly limit: number }
  | {
      readonly code: 'tooMany';
      readonly part: 'item' | 'place';
      readonly count: number;
      readonly limit: number;
    }
  | { readonly code: 'notFinite'; readonly where: KitWhere }
  | { readonly code: 'shape'; readonly where: KitWhere; readonly expected: Expected; readonly found: Found }
  | { readonly code: 'idTwice'; readonly where: KitWhere; readonly id: string }
  /** Of a table. `columns`: what it should have had, `found`: its first line. */
  | { readonly code: 'columnMissing'; readonly columns: readonly string[]; readonly found: readonly string[] }
  | { readonly code: 'columnTwice'; readonly column: string }
  /** A quotation mark that is opened and never closed. */
  | { readonly code: 'lineTwice'; readonly line: number; readonly id: string }
  /** A line with more cells than there are columns: a separator within a text that is not in quotation marks. */
  | { readonly code: 'moreCells'; readonly line: number; readonly columns: number; readonly cells: number }
  | { readonly code: 'openQuote'; readonly line: number }
  | {
      readonly code: 'cell';
      readonly line: number;
      readonly column: string;
      readonly value: string;
      readonly wrong: CellFault;
    };

/** What is wrong with a cell of a table. */
export type CellFault =
  | { readonly fault: 'missing' | 'notWheels' }
  | { readonly fault: 'notANumber' | 'notWhole' }
  | { readonly fault: 'below' | 'notAbove' | 'above'; readonly limit: number }
  | { readonly fault: 'notAmong'; readonly options: readonly string[] };

/** Each comes with a kit that was read. */
export type KitNote =
  /** Keys named `__proto__`, which programs can be misled by, were left away. */
  | { readonly code: 'keysDropped'; readonly count: number }
  /** Locks of a type that this version does not know are kept. */
  | { readonly code: 'unknownType'; readonly type: string }
  /** Columns that mean nothing here. */
  | { readonly code: 'columnsIgnored'; readonly columns: readonly string[] }
  /** A table without a column for how many: each line counts as one. */
  | { readonly code: 'countAssumed' };

export type KitReading =
  | { readonly ok: true; readonly kit: Kit; readonly notes: readonly KitNote[] }
  /** `more`: how many further problems there are than those listed. */
  | { readonly ok: false; readonly problems: readonly KitProblem[]; readonly more: number };
