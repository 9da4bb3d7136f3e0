import type { FastenerType } from './type.ts';

/** A shackle that opens after a sequence of moves up, down, left and right. A slip starts the sequence again, so it takes longer than wheels. */
export const direction: FastenerType = {
  type: 'direction',
  opensWith: 'code',
  minutes: { low: 0.5, likely: 1.5, high: 4 },
};
