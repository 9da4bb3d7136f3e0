import { type FastenerType, USUAL_MINUTES } from './type.ts';

export const key: FastenerType = { type: 'key', opensWith: 'key', minutes: USUAL_MINUTES };
