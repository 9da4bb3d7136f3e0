import { type FastenerType, USUAL_MINUTES } from './type.ts';

export const dial: FastenerType = { type: 'dial', opensWith: 'code', minutes: USUAL_MINUTES };
