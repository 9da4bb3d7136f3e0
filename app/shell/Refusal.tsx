/** Why the last change was not made; gone with the next one that is. */
import { editRefusalSentence } from '../../src/words/refusals.ts';
import { PAGE } from '../../src/words/screen.ts';
import type { Sentence } from '../../src/words/sentence.ts';
import { useGame } from '../store/game.ts';
import { SentenceText } from './SentenceText.tsx';
import { Sign } from './signs.tsx';

/** Empty when nothing was refused. */
export function useRefusalWords(): Sentence {
  const refusal = useGame((state) => state.refusal);
  const game = useGame((state) => state.game);
  return refusal ? editRefusalSentence(game, refusal) : [];
}

export function Refusal() {
  const words = useRefusalWords();
  return (
    <div className="head-refusal" role="alert">
      {words.length > 0 && (
        <>
          <p>
            <SentenceText sentence={words} />
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
