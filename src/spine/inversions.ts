/** Pairs of lines that cross, counted while sorting (merge sort): n log n. */

/** Room for one count, kept between counts. */
export interface Lines {
  /** How many there are. */
  count: number;
  /** Where each line has its one end, and its other. */
  readonly near: Float64Array;
  readonly far: Float64Array;
  readonly spareNear: Float64Array;
  readonly spareFar: Float64Array;
}

export function linesFor(size: number): Lines {
  const array = () => new Float64Array(size);
  return { count: 0, near: array(), far: array(), spareNear: array(), spareFar: array() };
}

/** Sorts by `a`, then `b`, which goes along. Gives the pairs that were in strictly wrong order of `a`. */
function sort(
  a: Float64Array,
  b: Float64Array,
  spareA: Float64Array,
  spareB: Float64Array,
  count: number,
): number {
  let [fromA, fromB, toA, toB] = [a, b, spareA, spareB];
  let inversions = 0;
  for (let width = 1; width < count; width *= 2) {
    for (let start = 0; start < count; start += 2 * width) {
      const middle = Math.min(count, start + width);
      const end = Math.min(count, start + 2 * width);
      let i = start;
      let j = middle;
      for (let k = start; k < end; k++) {
        const p = fromA[i] ?? 0;
        const q = fromA[j] ?? 0;
        const right = i >= middle || (j < end && (q < p || (q === p && (fromB[j] ?? 0) < (fromB[i] ?? 0))));
        if (right) {
          if (i < middle && q < p) inversions += middle - i;
          toA[k] = q;
          toB[k] = fromB[j++] ?? 0;
        } else {
          toA[k] = p;
          toB[k] = fromB[i++] ?? 0;
        }
      }
    }
    [fromA, fromB, toA, toB] = [toA, toB, fromA, fromB];
  }
  if (fromA !== a) {
    a.set(fromA.subarray(0, count));
    b.set(fromB.subarray(0, count));
  }
  return inversions;
}

/** Pairs of lines whose ends are in opposite order. The lines are sorted by it. */
export function crossings({ near, far, spareNear, spareFar, count }: Lines): number {
  sort(near, far, spareNear, spareFar, count);
  return sort(far, near, spareFar, spareNear, count);
}
