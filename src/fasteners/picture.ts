import { type FastenerType, USUAL_MINUTES } from './type.ts';

export const picture: FastenerType = { type: 'picture', opensWith: 'code', minutes: USUAL_MINUTES };
