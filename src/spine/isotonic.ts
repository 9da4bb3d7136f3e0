/**
 * Least squares under an order: isotonic regression by pool adjacent violators (Ayer, Brunk, Ewing, Reid and Silverman 1955;
 * Barlow, Bartholomew, Bremner and Brunk 1972). Linear time, exact.
 */

/** Room for the pools of one run; kept between runs, a search allocates nothing. */
export interface Pools {
  readonly mean: Float64Array;
  readonly weight: Float64Array;
  readonly count: Int32Array;
}

export function poolsFor(size: number): Pools {
  return { mean: new Float64Array(size), weight: new Float64Array(size), count: new Int32Array(size) };
}

/** Turns the first `size` targets into the values nearest to them that do not decrease, in place. */
export function nearestInOrder(
  targets: Float64Array,
  weights: Float64Array,
  size: number,
  pools: Pools,
): void {
  const { mean, weight, count } = pools;
  let last = -1;
  for (let i = 0; i < size; i++) {
    last++;
    mean[last] = targets[i] ?? 0;
    weight[last] = weights[i] ?? 1;
    count[last] = 1;
    for (; last > 0 && (mean[last - 1] ?? 0) > (mean[last] ?? 0); last--) {
      const above = weight[last - 1] ?? 1;
      const below = weight[last] ?? 1;
      mean[last - 1] = ((mean[last - 1] ?? 0) * above + (mean[last] ?? 0) * below) / (above + below);
      weight[last - 1] = above + below;
      count[last - 1] = (count[last - 1] ?? 0) + (count[last] ?? 0);
    }
  }
  let i = 0;
  for (let pool = 0; pool <= last; pool++) {
    const end = i + (count[pool] ?? 0);
    targets.fill(mean[pool] ?? 0, i, end);
    i = end;
  }
}

/** The non-decreasing values with the least sum of weights[i]·(value − targets[i])². Weights are above 0. */
export function isotonic(targets: readonly number[], weights: readonly number[]): number[] {
  const values = Float64Array.from(targets);
  const given = Float64Array.from(targets, (_, i) => weights[i] ?? 1);
  nearestInOrder(values, given, values.length, poolsFor(values.length));
  return Array.from(values);
}

/** What all values of a run lie between; either end may be infinite. */
export interface Bounds {
  readonly low: number;
  readonly high: number;
}

/** `high` counts for less where the two contradict each other. */
export const clip = (value: number, { low, high }: Bounds): number => Math.max(low, Math.min(high, value));

/**
 * Positions along a line, in the order given and at least gaps[i] between the i-th and the next (measured from start to start),
 * with the least sum of weights[i]·(position − targets[i])². `within`: the first is at `low` or after it, the last at `high` or
 * before it; where the gaps leave no room for that, the first is at `low` and the others follow without space.
 *
 * In terms of v = position − sum of the gaps before it, the gaps say that v does not decrease, and the ends that
 * low ≤ v ≤ high − sum of all gaps. With bounds the solution is the one without them, x, clipped (Barlow, Bartholomew, Bremner
 * and Brunk 1972). Proof: call the clipped one u, the targets t. Pools are cut where x changes, so u is constant on each, and
 * a pool's mean is x with each of its beginnings weighing on average no less than x; hence sum w(t − x)z ≤ 0 over a pool for
 * every non-decreasing z, and = 0 for a constant. Take any z within the bounds and non-decreasing. On pools with
 * low ≤ x ≤ high, sum w(t − u)(z − u) = sum w(t − x)(z − x) ≤ 0. On pools with x < low, u = low and
 * sum w(t − u)(z − u) = sum w(t − x)(z − low) + sum w(x − low)(z − low); the first is ≤ 0 as before, and so is the second, for
 * x < low ≤ z. Above, likewise. So sum w(t − u)(z − u) ≤ 0 over all, which makes u the nearest point of a convex set.
 */
export function chain(
  targets: readonly number[],
  gaps: readonly number[],
  weights: readonly number[],
  within?: Bounds,
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
  const bounds = within && { low: within.low, high: within.high - (offsets.at(-1) ?? 0) };
  return values.map((value, i) => (bounds ? clip(value, bounds) : value) + (offsets[i] ?? 0));
}
