/** With nothing selected: what stops the game, what is worth a look, the order of play. */
import { PANEL } from '../../src/words/screen.ts';
import { useAssessment } from '../store/assessment.ts';
import { Findings } from './Findings.tsx';
import { OrderOfPlay } from './OrderOfPlay.tsx';

export function Overview() {
  const { game, findings } = useAssessment();
  return (
    <div className="panel-overview">
      {game.nodes.size === 0 ? (
        <p className="quiet">{PANEL.empty}</p>
      ) : (
        <>
          <Findings level="stops" findings={findings} />
          <Findings level="look" findings={findings} />
          <OrderOfPlay />
        </>
      )}
    </div>
  );
}
