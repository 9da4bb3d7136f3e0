/** What tidies, and what puts its question: neither is there before it is wanted. */
import { part } from '../../parts/part.ts';

export const TIDY_UP = part(() => import('./tidy-up.ts'));
export const ASK = part(() => import('./ask.ts'));
