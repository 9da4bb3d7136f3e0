/** Least squares under an order: isotonic regression by pool adjacent violators (Barlow, Bartholomew, Bremner and Brunk 1972). Linear time, exact. */

/** The non-decreasing values with the least sum of weights[i]·(value − targets[i])². Weights are above 0. */
export function isotonic(targets: readonly number[], weights: readonly number[]): number[] {
  const pools: { mean: number; weight: number; count: number }[] = [];
  for (const [i, target] of targets.entries()) {
    const pool = { mean: target, weight: weights[i] ?? 1, count: 1 };
    for (let last = pools.at(-1); last && last.mean > pool.mean; last = pools.at(-1)) {
      pools.pop();
      const weight = last.weight + pool.weight;
      pool.mean = (last.mean * last.weight + pool.mean * pool.weight) / weight;
      pool.weight = weight;
      pool.count += last.count;
    }
    pools.push(pool);
  }
  const values: number[] = [];
  for (const { mean, count } of pools) for (let i = 0; i < count; i++) values.push(mean);
  return values;
}

/**
 * Positions along a line, in the order given and at least gaps[i] between the i-th and the next (measured from start to start),
 * with the least sum of weights[i]·(position − targets[i])².
 */
export function chain(
  targets: readonly number[],
  gaps: readonly number[],
  weights: readonly number[],
): number[] {
  let sum = 0;
  const offsets = targets.map((_, i) => {
    const offset = sum;
    sum += gaps[i] ?? 0;
    return offset;
  });
  const values = isotonic(
    targets.map((target, i) => target - (offsets[i] ?? 0)),
    weights,
  );
  return values.map((value, i) => value + (offsets[i] ?? 0));
}
