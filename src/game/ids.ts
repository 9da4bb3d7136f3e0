/** Random ids for games, nodes and links. Short enough to read out, long enough never to be given twice. */

/** So many random bytes, each value alike. The page passes its cryptographic source, tests a seeded one. */
export type RandomBytes = (count: number) => Uint8Array;

/** 32 signs, so that five bits of a byte choose one; without 0, 1, l and o, which are taken for each other. */
const SIGNS = 'abcdefghijkmnpqrstuvwxyz23456789';

/** 50 bits: with a million ids the chance that two are the same is below one in two thousand. */
const LENGTH = 10;

export function newId(random: RandomBytes): string {
  return Array.from(random(LENGTH), (byte) => SIGNS.charAt(byte & 31)).join('');
}
