/** How the engine compares minutes. */

/**
 * Two sums of minutes this near are equal. Sums of the same steps in another order differ by rounding alone, far less
 * than this; sums that a teacher means to differ do so by far more. Every question of larger, smaller or equal about
 * sums of minutes goes through the functions here, so that a tie is the same tie in every measure.
 */
const SAME_MINUTES = 1e-6;

/** The first is larger by more than rounding. False when both are infinite. */
export function isLonger(minutes: number, than: number): boolean {
  return minutes - than > SAME_MINUTES;
}

/**
 * For each value the rank of its class, from 0. Being within 1e-6 is not transitive, so a class is the closure: sorted,
 * each value within 1e-6 of the one before it is in the same class. Values that are equal by the rule always share one.
 */
export function classesOf(values: Float64Array): Int32Array {
  const sorted = values.slice().sort();
  const ranks = new Int32Array(values.length);
  const rankOf = new Map<number, number>();
  let rank = -1;
  let before = Number.NEGATIVE_INFINITY;
  for (const value of sorted) {
    if (rank < 0 || isLonger(value, before)) rank++;
    rankOf.set(value, rank);
    before = value;
  }
  for (let i = 0; i < values.length; i++) ranks[i] = rankOf.get(values[i] ?? 0) ?? 0;
  return ranks;
}
