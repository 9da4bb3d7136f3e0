import { type FastenerType, USUAL_MINUTES } from './type.ts';

export const picture = {
  type: 'picture',
  opensWith: 'code',
  directions: false,
  minutes: USUAL_MINUTES,
} as const satisfies FastenerType;
