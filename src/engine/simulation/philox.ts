/**
 * Philox4x32-10, a counter-based generator: four 32-bit words that depend on a counter of four words and a key of two, and on nothing else.
 * Source: Salmon, Moraes, Dror and Shaw, 'Parallel random numbers: as easy as 1, 2, 3' (2011). Whole numbers alone, so the same on every machine.
 */
const MULTIPLIER_0 = 0xd2511f53;
const MULTIPLIER_1 = 0xcd9e8d57;
const WEYL_0 = 0x9e3779b9;
const WEYL_1 = 0xbb67ae85;
const ROUNDS = 10;

/** Fills the first four entries of `words`, from `at` on. Arguments are taken modulo 2^32. */
export function philox(
  counter0: number,
  counter1: number,
  counter2: number,
  counter3: number,
  key0: number,
  key1: number,
  words: Uint32Array,
  at = 0,
) {
  let a = counter0 | 0;
  let b = counter1 | 0;
  let c = counter2 | 0;
  let d = counter3 | 0;
  let k = key0 | 0;
  let l = key1 | 0;
  for (let round = 0; round < ROUNDS; round++) {
    const highA = highWord(a, MULTIPLIER_0);
    const highC = highWord(c, MULTIPLIER_1);
    const lowA = Math.imul(a, MULTIPLIER_0);
    const lowC = Math.imul(c, MULTIPLIER_1);
    a = highC ^ b ^ k;
    b = lowC;
    c = highA ^ d ^ l;
    d = lowA;
    k = (k + WEYL_0) | 0;
    l = (l + WEYL_1) | 0;
  }
  words[at] = a;
  words[at + 1] = b;
  words[at + 2] = c;
  words[at + 3] = d;
}

/** The upper half of the 64-bit product of two words, from products of halves. */
function highWord(x: number, y: number): number {
  const lowX = x & 0xffff;
  const highX = x >>> 16;
  const lowY = y & 0xffff;
  const highY = y >>> 16;
  const middle = (Math.imul(highX, lowY) + (Math.imul(lowX, lowY) >>> 16)) | 0;
  const other = (Math.imul(lowX, highY) + (middle & 0xffff)) | 0;
  return (Math.imul(highX, highY) + (middle >>> 16) + (other >>> 16)) | 0;
}
