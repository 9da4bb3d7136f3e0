import { type FastenerType, USUAL_MINUTES } from './type.ts';

export const word: FastenerType = { type: 'word', opensWith: 'code', minutes: USUAL_MINUTES };
