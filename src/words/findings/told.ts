/** What a finding says: what is, then why it matters. */
import type { NodeId } from '../../game/model.ts';
import { capital, type Say, sentence } from '../say.ts';
import type { Sentence } from '../sentence.ts';

export interface Told {
  readonly is: Sentence;
  readonly so: Sentence;
}

/** "So X is never reached." Without a prize that hangs on it, that nothing is lost. */
export function soPrizes(say: Say, prizes: readonly NodeId[], before = 'So '): Sentence {
  if (prizes.length === 0) return ['No prize hangs on it.'];
  return sentence(
    before,
    say.names(prizes),
    prizes.length === 1 ? ' is never reached.' : ' are never reached.',
  );
}

/** "Red tag is not used today." */
export function notToday(say: Say, ids: readonly NodeId[]): Sentence {
  if (ids.length === 0) return [];
  return sentence(
    capital(say.names(ids)),
    ids.length === 1 ? ' is not used today. ' : ' are not used today. ',
  );
}
