/**
 * The beta-PERT distribution (λ = 4) of a step's three estimates, as a table of quantiles: one table for each shape, kept.
 * Method: the regularised incomplete beta function by its continued fraction (Abramowitz and Stegun 26.5.8, evaluated as by Thompson and Barnett
 * 1986), inverted by Halley's method inside a bracket, with bisection where a step would leave it. Quantiles are good to 1e-11 before rounding.
 * Powers and logarithms may differ in the last digit between browsers: entries are rounded to 2^-26, so that this shows nowhere.
 */

/** Equal cells of probability; the first and the last are divided once more, since quantiles are steepest there. */
const CELL_BITS = 11;
const EDGE_BITS = 8;
const CELLS = 1 << CELL_BITS;
const EDGES = 1 << EDGE_BITS;
const FIRST_EDGE = CELLS + 1;
const LAST_EDGE = FIRST_EDGE + EDGES + 1;
const CELL_SHIFT = 32 - CELL_BITS;
const EDGE_SHIFT = CELL_SHIFT - EDGE_BITS;
const CELL_MASK = (1 << CELL_SHIFT) - 1;
const EDGE_MASK = (1 << EDGE_SHIFT) - 1;
const CELL_WIDTH = 2 ** -CELL_SHIFT;
const EDGE_WIDTH = 2 ** -EDGE_SHIFT;

const GRID = 2 ** 26;
/** Shapes nearer than this share a table. */
const SHAPES = 1e6;
const KEPT = 2_000;

const kept = new Map<number, Float64Array>();

/** The first parameter of the shape; the second is 6 less it. Estimates with low below high. */
export function pertAlpha(low: number, likely: number, high: number): number {
  return 1 + (4 * (likely - low)) / (high - low);
}

/** The table for `alpha` from 1 to 5, for `quantileAt`. */
export function pertTable(alpha: number): Float64Array {
  const shape = Math.round(alpha * SHAPES);
  const known = kept.get(shape);
  if (known !== undefined) return known;
  const table = makeTable(shape / SHAPES, 6 - shape / SHAPES);
  if (kept.size >= KEPT) kept.clear();
  kept.set(shape, table);
  return table;
}

/** The quantile from 0 to 1 for a random word, between the entries of a table in a straight line. */
export function quantileAt(table: Float64Array, word: number): number {
  const cell = word >>> CELL_SHIFT;
  if (cell > 0 && cell < CELLS - 1) {
    const left = table[cell] ?? 0;
    return left + ((table[cell + 1] ?? 0) - left) * ((word & CELL_MASK) + 0.5) * CELL_WIDTH;
  }
  const at = (cell === 0 ? FIRST_EDGE : LAST_EDGE) + ((word & CELL_MASK) >>> EDGE_SHIFT);
  const left = table[at] ?? 0;
  return left + ((table[at + 1] ?? 0) - left) * ((word & EDGE_MASK) + 0.5) * EDGE_WIDTH;
}

function makeTable(a: number, b: number): Float64Array {
  const table = new Float64Array(LAST_EDGE + EDGES + 1);
  const logBeta = logGamma(a) + logGamma(b) - logGamma(a + b);
  let before = 0;
  let last = 0;
  const next = (probability: number): number => {
    const guess = last > 0 ? Math.min(2 * last - before, (1 + last) / 2) : a / (a + b) / 8;
    before = last;
    last = quantile(probability, a, b, logBeta, last, guess);
    return Math.round(last * GRID) / GRID;
  };
  for (let i = 1; i < EDGES; i++) table[FIRST_EDGE + i] = next(i / (EDGES * CELLS));
  for (let i = 1; i < CELLS; i++) table[i] = next(i / CELLS);
  for (let i = 1; i < EDGES; i++) table[LAST_EDGE + i] = next((CELLS - 1 + i / EDGES) / CELLS);
  table[CELLS] = 1;
  table[FIRST_EDGE + EDGES] = table[1] ?? 0;
  table[LAST_EDGE] = table[CELLS - 1] ?? 0;
  table[LAST_EDGE + EDGES] = 1;
  return table;
}

/** The quantile of a probability inside 0 and 1. */
export function betaQuantile(probability: number, a: number, b: number): number {
  return quantile(probability, a, b, logGamma(a) + logGamma(b) - logGamma(a + b), 0, a / (a + b));
}

const SETTLED = 1e-4;

/** The same, if it is not below `least`, from a first guess inside 0 and 1. */
function quantile(
  probability: number,
  a: number,
  b: number,
  logBeta: number,
  least: number,
  guess: number,
): number {
  let low = least;
  let high = 1;
  let x = guess;
  for (let turn = 0; turn < 100; turn++) {
    const front = Math.exp(a * Math.log(x) + b * Math.log1p(-x) - logBeta);
    const miss = lowerShare(x, a, b, front) - probability;
    if (miss > 0) high = x;
    else low = x;
    const newton = (miss * x * (1 - x)) / front;
    const step = newton / (1 - 0.5 * newton * ((a - 1) / x - (b - 1) / (1 - x)));
    const next = x - step;
    const inside = next > low && next < high;
    const moved = inside ? next : (low + high) / 2;
    // The error is cubed at each turn, as a share of the way to the nearer end.
    if (inside && Math.abs(moved - x) < SETTLED * Math.min(moved, 1 - moved)) return moved;
    x = moved;
  }
  return x;
}

/** The regularised incomplete beta function: the probability below `x`, inside 0 and 1. */
export function betaBelow(x: number, a: number, b: number): number {
  if (x <= 0) return 0;
  if (x >= 1) return 1;
  const logBeta = logGamma(a) + logGamma(b) - logGamma(a + b);
  return lowerShare(x, a, b, Math.exp(a * Math.log(x) + b * Math.log1p(-x) - logBeta));
}

/** The same, where x^a (1 - x)^b / B(a, b) is known. The continued fraction is short on the nearer side of the mean. */
function lowerShare(x: number, a: number, b: number, front: number): number {
  if (x < (a + 1) / (a + b + 2)) return (front * continuedFraction(x, a, b)) / a;
  return 1 - (front * continuedFraction(1 - x, b, a)) / b;
}

const TINY = 1e-300;

function continuedFraction(x: number, a: number, b: number): number {
  let c = 1;
  let d = 1 / nonZero(1 - ((a + b) * x) / (a + 1));
  let value = d;
  for (let m = 1; m <= 200; m++) {
    const even = (m * (b - m) * x) / ((a + 2 * m - 1) * (a + 2 * m));
    d = 1 / nonZero(1 + even * d);
    c = nonZero(1 + even / c);
    value *= d * c;
    const odd = (-(a + m) * (a + b + m) * x) / ((a + 2 * m) * (a + 2 * m + 1));
    d = 1 / nonZero(1 + odd * d);
    c = nonZero(1 + odd / c);
    const change = d * c;
    value *= change;
    if (Math.abs(change - 1) < 1e-15) break;
  }
  return value;
}

function nonZero(value: number): number {
  return Math.abs(value) < TINY ? TINY : value;
}

/** Coefficients of the asymptotic series in 1/x, 1/x^3, … (Abramowitz and Stegun 6.1.41). */
const STIRLING = [1 / 12, -1 / 360, 1 / 1260, -1 / 1680, 1 / 1188, -691 / 360360, 1 / 156] as const;

/** The logarithm of the gamma function above 0: Stirling's series where it has settled, shifted by the recurrence. */
function logGamma(value: number): number {
  let x = value;
  let product = 1;
  for (; x < 10; x++) product *= x;
  let series = 0;
  for (let i = STIRLING.length - 1; i >= 0; i--) series = series / (x * x) + (STIRLING[i] ?? 0);
  return (x - 0.5) * Math.log(x) - x + 0.5 * Math.log(2 * Math.PI) + series / x - Math.log(product);
}
