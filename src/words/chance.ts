/** The chance that a lesson ends in time, as a teacher would say it. */
import { OFTEN_ENOUGH } from '../findings/timed/too-long.ts';

/** Nearer than this to none or all no number is said; 'all' and 'no' only where it is so without exception. */
const HARDLY = 0.05;
const HALF_IN_TEN = 10 * OFTEN_ENOUGH;

type Extreme = 'all' | 'nearlyAll' | 'hardlyAny' | 'none';

function extreme(share: number): Extreme | undefined {
  if (share >= 1) return 'all';
  if (share <= 0) return 'none';
  if (share >= 1 - HARDLY) return 'nearlyAll';
  return share < HARDLY ? 'hardlyAny' : undefined;
}

/** "about 8"; fewer than half are not told as half: "just under 5". */
function about(share: number): string {
  const tenths = Math.min(9, Math.max(1, Math.round(share * 10)));
  return share < OFTEN_ENOUGH && tenths === HALF_IN_TEN ? `just under ${tenths}` : `about ${tenths}`;
}

const LESSONS: Readonly<Record<Extreme, string>> = {
  all: 'all lessons',
  nearlyAll: 'nearly all lessons',
  hardlyAny: 'hardly any lesson',
  none: 'no lesson',
};

/** "about 8 lessons in 10". @param share 0 to 1 */
export function lessonsInTen(share: number): string {
  const special = extreme(share);
  if (special) return LESSONS[special];
  const words = about(share);
  return words === 'about 1' ? 'about 1 lesson in 10' : `${words} lessons in 10`;
}

/** "finish" or "finishes", after as many lessons. */
export function finish(share: number): string {
  return lessonsInTen(share).includes('lessons') ? 'finish' : 'finishes';
}

/** "about 8 lessons in 10 finish". */
export function lessonsFinish(share: number): string {
  return `${lessonsInTen(share)} ${finish(share)}`;
}

const SHARES: Readonly<Record<Extreme, string>> = {
  all: 'all',
  nearlyAll: 'nearly all',
  hardlyAny: 'hardly any',
  none: 'none',
};

/** "about 8 in 10", as an entry of a list. */
export function shareInTen(share: number): string {
  const special = extreme(share);
  return special ? SHARES[special] : `${about(share)} in 10`;
}

/**
 * How far several estimates of one chance lie apart: "between 7 and 9 lessons in 10"; where they are told by one word,
 * that word.
 */
export function spreadInTen(shares: readonly number[]): string {
  const low = shareInTen(Math.min(...shares));
  const high = shareInTen(Math.max(...shares));
  if (low === high) return low;
  const from = high.endsWith(' in 10') ? low.replace(' in 10', '') : low;
  return `between ${from.replace('about ', '')} and ${high.replace('about ', '')}`;
}
