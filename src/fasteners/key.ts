import { type FastenerType, USUAL_MINUTES } from './type.ts';

export const key = {
  type: 'key',
  opensWith: 'key',
  directions: false,
  minutes: USUAL_MINUTES,
} as const satisfies FastenerType;
