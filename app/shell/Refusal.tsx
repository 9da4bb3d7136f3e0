/** Why the last change was not made; gone with the next one that is. */

import { editRefusalSentence } from '../../src/words/refusals.ts';
import { PAGE } from '../../src/words/screen.ts';
import { useGame } from '../store/game.ts';
import { SentenceText } from './SentenceText.tsx';
import { Sign } from './signs.tsx';

export function Refusal() {
  const refusal = useGame((state) => state.refusal);
  const game = useGame((state) => state.game);
  return (
    <div className="head-refusal" role="alert">
      {refusal && (
        <>
          <p>
            <SentenceText sentence={editRefusalSentence(game, refusal)} />
          </p>
          <button
            type="button"
            className="head-refusal-close"
            aria-label={PAGE.dismiss}
            onClick={() => useGame.getState().dismissRefusal()}
          >
            <Sign name="cross" />
          </button>
        </>
      )}
    </div>
  );
}
