/** Something that can be left out, and what the game loses with it. */
import type { Game } from '../../src/game/model.ts';
import type { SpareLine as Spare } from '../../src/kit/adapt/plan.ts';
import { adaptedUnremarked } from '../../src/kit/adapt/sound.ts';
import { ADAPT, spareDone, spareName, spareSentence } from '../../src/words/adapt.ts';
import { SentenceText } from '../shell/SentenceText.tsx';
import { currentAssessment } from '../store/assessment.ts';
import { act, useBusy } from './adapting.ts';
import { LineFrame } from './LineFrame.tsx';

/** Tried again: the list may not yet have seen the last change. */
function leaveOut({ key, nodes }: Spare): void {
  const edits = [{ type: 'leaveOut', ids: nodes, leftOut: true }] as const;
  if (adaptedUnremarked(currentAssessment(), edits)?.canBeWon) void act(key, edits);
}

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
          onClick={() => leaveOut(line)}
        >
          {ADAPT.leaveOut}
        </button>
      </div>
    </LineFrame>
  );
}
