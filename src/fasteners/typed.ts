import { type FastenerType, USUAL_MINUTES } from './type.ts';

export const typed = {
  type: 'typed',
  opensWith: 'code',
  directions: false,
  minutes: USUAL_MINUTES,
} as const satisfies FastenerType;
