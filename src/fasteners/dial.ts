import { type FastenerType, USUAL_MINUTES } from './type.ts';

export const dial = {
  type: 'dial',
  opensWith: 'code',
  directions: false,
  minutes: USUAL_MINUTES,
} as const satisfies FastenerType;
