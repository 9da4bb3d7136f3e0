/** A hook or catch that opens by hand. */
import { NO_CODE } from './as-written.ts';
import { type FastenerType, USUAL_MINUTES } from './type.ts';

export const latch = {
  type: 'latch',
  opensWith: 'nothing',
  directions: false,
  apart: false,
  hasWheels: false,
  usualLength: undefined,
  minutes: USUAL_MINUTES,
  trySeconds: 2,
  asks: ['fineHands'],
  ...NO_CODE,
} as const satisfies FastenerType;
