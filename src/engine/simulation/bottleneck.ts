/** Of the figures of steps the largest that counts: what is there for the joy of opening is no bottleneck. */
import type { Clock } from './clock.ts';

/** The first step with the largest of these figures, by node; undefined where none is as large as `least`. */
export function bottleneckOf(
  { forFun }: Pick<Clock, 'forFun'>,
  values: Float64Array,
  least: number,
): number | undefined {
  const largest = values.reduce((most, value, i) => (forFun[i] === 1 ? most : Math.max(most, value)), 0);
  if (largest < least || largest === 0) return undefined;
  return values.findIndex((value, i) => forFun[i] !== 1 && value === largest);
}
