import { type FastenerType, USUAL_MINUTES } from './type.ts';

export const latch = {
  type: 'latch',
  opensWith: 'nothing',
  directions: false,
  minutes: USUAL_MINUTES,
} as const satisfies FastenerType;
