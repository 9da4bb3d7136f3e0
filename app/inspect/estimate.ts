/** Three boxes of an estimate as a teacher fills them: what was typed, and what follows for the boxes that were not. */
import type { Estimate, GameNode } from '../../src/game/model.ts';
import { MAX_MINUTES } from '../../src/game/schema.ts';
import { aroundLikely } from '../../src/game/spread.ts';
import { FORM, WRONG } from '../../src/words/screen-form.ts';
import { parseMinutes, typedMinutes } from './minutes.ts';

export type Column = 'low' | 'likely' | 'high';
export type Typed = Readonly<Record<Column, string>>;

export const COLUMNS: readonly (readonly [Column, string])[] = [
  ['low', FORM.atBest],
  ['likely', FORM.asARule],
  ['high', FORM.atWorst],
];

export type EstimateReading =
  | { readonly value: Estimate | undefined }
  /** `columns`: where to say it. */
  | { readonly wrong: string; readonly columns: readonly Column[] };

/** Where the boxes start from: the estimates that held when the first of them was typed in, and the usual ones. */
export interface EstimateBasis {
  readonly held: Estimate;
  /** Of which the usual ratios are taken; its likely time is above 0. */
  readonly usual: Estimate;
}

/**
 * @param typed all three boxes as they stand
 * @param touched those that were typed in; the others follow: the likely time takes them along in the ratios that held, and an
 *   emptied one goes back to the usual ratio
 */
export function readEstimate(
  typed: Typed,
  touched: ReadonlySet<Column>,
  { held, usual }: EstimateBasis,
): EstimateReading {
  const columns = COLUMNS.map(([column]) => column);
  const isEmpty = (column: Column) => typed[column].trim() === '';
  if (columns.every(isEmpty)) return { value: undefined };
  const times = new Map(columns.map((column) => [column, parseMinutes(typed[column])]));
  const bad = columns.filter((each) => touched.has(each) && !isEmpty(each) && times.get(each) === undefined);
  if (bad.length > 0) return { wrong: WRONG.minutes, columns: bad };
  if (touched.has('likely') && isEmpty('likely')) return { wrong: WRONG.asARule, columns: ['likely'] };

  const likely = (touched.has('likely') ? times.get('likely') : undefined) ?? held.likely;
  const follows = touched.has('likely') ? aroundLikely(likely, held, usual) : held;
  const emptied = aroundLikely(likely, usual, usual);
  const outer = (column: 'low' | 'high') =>
    touched.has(column) ? (times.get(column) ?? emptied[column]) : follows[column];
  const value: Estimate = { low: outer('low'), likely, high: outer('high') };
  const long = columns.filter((column) => value[column] > MAX_MINUTES);
  if (long.length > 0) return { wrong: WRONG.tooLong, columns: long };
  if (value.low > likely) return { wrong: WRONG.order, columns: ['low', 'likely'] };
  if (likely > value.high) return { wrong: WRONG.order, columns: ['likely', 'high'] };
  return { value };
}

/** Empty where the node says nothing. */
export function shownEstimate({ minutes }: GameNode): Typed {
  return {
    low: minutes ? typedMinutes(minutes.low) : '',
    likely: minutes ? typedMinutes(minutes.likely) : '',
    high: minutes ? typedMinutes(minutes.high) : '',
  };
}
