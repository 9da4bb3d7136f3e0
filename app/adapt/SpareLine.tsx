/** Something that can be left out, and what the game loses with it. */
import type { Game } from '../../src/game/model.ts';
import type { SpareLine as Spare } from '../../src/kit/adapt/plan.ts';
import { ADAPT, spareDone, spareName, spareSentence } from '../../src/words/adapt.ts';
import { SentenceText } from '../shell/SentenceText.tsx';
import { act, useBusy } from './adapting.ts';
import { LineFrame } from './LineFrame.tsx';

export function SpareLine({ line, game }: { line: Spare; game: Game }) {
  const busy = useBusy();
  return (
    <LineFrame
      line={line}
      done={spareDone(game, line)}
      otherwise={[{ type: 'leaveOut', ids: line.nodes, leftOut: false }]}
    >
      <div className="adapt-done">
        <p>
          <SentenceText sentence={spareSentence(game, line)} />
        </p>
        <button
          type="button"
          className="button"
          aria-label={ADAPT.leaveOutNamed(spareName(game, line))}
          disabled={busy}
          onClick={() => void act(line.key, [{ type: 'leaveOut', ids: line.nodes, leftOut: true }])}
        >
          {ADAPT.leaveOut}
        </button>
      </div>
    </LineFrame>
  );
}
