/** What can be done with all that is selected; stays in sight below a long form. */
import { useMemo } from 'react';
import { lossBy } from '../../../src/findings/loss.ts';
import type { Game, NodeId } from '../../../src/game/model.ts';
import { wouldLose } from '../../../src/words/left-out.ts';
import { CommandButton } from '../../commands/CommandButton.tsx';
import { useAssessment } from '../../store/assessment.ts';
import { useView } from '../../store/view.ts';

export function Actions() {
  return (
    <section className="form-actions form-foot">
      <CommandButton name="duplicate" />
      <CommandButton name="leaveOut" />
      <CommandButton name="delete" />
      <WhenLeftOut />
    </section>
  );
}

/** In a larger game it would hold up typing. */
const MOST_NODES = 600;

function isUsed(game: Game, ids: ReadonlySet<NodeId>): boolean {
  return [...ids].some((id) => game.nodes.has(id) && game.nodes.get(id)?.leftOut !== true);
}

/** What the game would lose by what is selected. */
function WhenLeftOut() {
  const assessment = useAssessment();
  const ids = useView((view) => view.nodes);
  const loss = useMemo(() => {
    const { game } = assessment;
    return game.nodes.size <= MOST_NODES && isUsed(game, ids) ? lossBy(assessment, [...ids]) : undefined;
  }, [assessment, ids]);
  return loss && <p className="hint form-when-left-out">{wouldLose(loss)}</p>;
}
