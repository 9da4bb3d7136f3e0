import { type FastenerType, USUAL_MINUTES } from './type.ts';

export const number: FastenerType = { type: 'number', opensWith: 'code', minutes: USUAL_MINUTES };
