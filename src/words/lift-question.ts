/** What lifting a thing asks. Apart from the answer, which is loaded when it is asked for. */
import type { Kind } from '../game/model.ts';

/** "What if nobody finds this?", with the verb that fits: a puzzle is solved, a lock is opened. */
export function liftQuestion(kind: Kind): string {
  switch (kind) {
    case 'puzzle':
      return 'What if nobody solves this?';
    case 'container':
    case 'fastener':
      return 'What if nobody opens this?';
    default:
      return 'What if nobody finds this?';
  }
}
