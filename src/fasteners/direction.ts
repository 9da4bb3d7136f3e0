import type { FastenerType } from './type.ts';

/** A shackle that opens after a sequence of moves up, down, left and right. A slip starts the sequence again, so it takes longer than wheels. */
export const direction = {
  type: 'direction',
  opensWith: 'code',
  directions: true,
  minutes: { low: 0.5, likely: 1.5, high: 4 },
} as const satisfies FastenerType;
