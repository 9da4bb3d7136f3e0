/** The part itself: what is true of the game, and all of the first view that tells of it. */

export { verdictOf } from '../../src/words/verdict.ts';
export { startFewest } from '../engine/seek-fewest.ts';
export { fallenWith, looksAt, looksOf, stoppingLinks } from '../flow/looks.ts';
export { Overview } from '../panel/Overview.tsx';
export { assessmentOf } from '../store/assessment.ts';
