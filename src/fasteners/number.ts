import { type FastenerType, USUAL_MINUTES } from './type.ts';

export const number = {
  type: 'number',
  opensWith: 'code',
  directions: false,
  minutes: USUAL_MINUTES,
} as const satisfies FastenerType;
