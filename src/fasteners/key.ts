/** A padlock that a key opens. A try is one padlock with one key. */
import { NO_CODE } from './as-written.ts';
import { type FastenerType, USUAL_MINUTES } from './type.ts';

export const key = {
  type: 'key',
  opensWith: 'key',
  directions: false,
  apart: false,
  hasWheels: false,
  usualLength: undefined,
  minutes: USUAL_MINUTES,
  trySeconds: 10,
  asks: ['fineHands'],
  ...NO_CODE,
} as const satisfies FastenerType;
