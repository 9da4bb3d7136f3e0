/** Moves of a direction lock as a teacher types them: arrows, U D L R, or words, run together or apart. */
import { normaliseCode } from '../../src/game/codes.ts';
import { WRONG } from '../../src/words/screen-form.ts';
import type { Reading } from './draft.ts';

const BETWEEN = /[,;.:/>–-]/gu;
/** The last word may still be on its way. */
const MOVES = /^(?:UP|DOWN|LEFT|RIGHT|[UDLR])*(?:DOW?|LEF?|RIG?H?)?$/u;
const REST_OF_WORD = /(?<=U)P|(?<=D)OW?N?|(?<=L)EF?T?|(?<=R)IG?H?T?/gu;

/** As the document stores them: 'up, ←' as 'UL'. */
export function readDirections(raw: string): Reading<string | undefined> {
  const moves = normaliseCode(raw).replace(BETWEEN, '');
  if (!MOVES.test(moves)) return { wrong: WRONG.directions };
  return { value: moves === '' ? undefined : moves.replace(REST_OF_WORD, '') };
}

const WORDS = /^\s*(?:up|down|left|right)(?:[\s,;]+(?:up|down|left|right))+\s*$/iu;

/** Two words or more that all name directions: whoever writes 'up left down' means the moves, whatever lock they are for. */
export function namesDirections(raw: string): boolean {
  return WORDS.test(raw);
}
