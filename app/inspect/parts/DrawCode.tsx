import type { NodeOf } from '../../../src/game/model.ts';
import { CODE } from '../../../src/words/form-code.ts';
import { useAssessment } from '../../store/assessment.ts';
import { useGame } from '../../store/game.ts';
import { drawnCode, pickAtRandom } from './draw.ts';

/** Draws a good code and sets the lock and its answers to it, as one undo; not there where texts would have to be written anew. */
export function DrawCode({ node }: { node: NodeOf<'fastener'> }) {
  const assessment = useAssessment();
  const first = drawnCode(assessment, node, () => 0);
  if (!first) return null;
  const draw = () => {
    const proposal = drawnCode(assessment, node, pickAtRandom);
    if (proposal) useGame.getState().apply(proposal.edits);
  };
  return (
    <button
      type="button"
      className="button form-add"
      title={first.code === 'newCode' && first.values.sources.length > 0 ? CODE.drawHint : undefined}
      onClick={draw}
    >
      {CODE.draw}
    </button>
  );
}
