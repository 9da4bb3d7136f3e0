/** Order statistics: of values in no order, without sorting all of them (Hoare 1961, algorithm 65: FIND). */

/** The share of n values by nearest rank, as a position from 0 in their order; whole per cent, above 0. */
export function nearestRank(percent: number, count: number): number {
  return Math.max(0, Math.ceil((percent * count) / 100) - 1);
}

/** The middle of n values as a position from 0, the upper one where two are in the middle. */
export function upperMiddle(count: number): number {
  return count >> 1;
}

/** The value at a position of the order among the first `count`. Reorders them: smaller ones stand before it after that, larger ones behind. */
export function select(values: Float64Array, count: number, position: number): number {
  let left = 0;
  let right = count - 1;
  while (left < right) {
    const pivot = values[(left + right) >> 1] ?? 0;
    let i = left;
    let j = right;
    while (i <= j) {
      while ((values[i] ?? 0) < pivot) i++;
      while ((values[j] ?? 0) > pivot) j--;
      if (i > j) break;
      const swapped = values[i] ?? 0;
      values[i++] = values[j] ?? 0;
      values[j--] = swapped;
    }
    if (position <= j) right = j;
    else if (position >= i) left = i;
    else break;
  }
  return values[position] ?? 0;
}
