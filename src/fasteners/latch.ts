import { type FastenerType, USUAL_MINUTES } from './type.ts';

export const latch: FastenerType = { type: 'latch', opensWith: 'nothing', minutes: USUAL_MINUTES };
