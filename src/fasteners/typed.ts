import { type FastenerType, USUAL_MINUTES } from './type.ts';

export const typed: FastenerType = { type: 'typed', opensWith: 'code', minutes: USUAL_MINUTES };
