/** With nothing selected: what stops the game, what is worth a look, how long it takes, the order of play. */
import { PANEL } from '../../src/words/screen.ts';
import { useSimulation } from '../engine/simulation.ts';
import { PartView } from '../parts/PartView.tsx';
import { part } from '../parts/part.ts';
import { useAssessment } from '../store/assessment.ts';
import { Findings } from './Findings.tsx';
import { LeftOut } from './LeftOut.tsx';
import { OrderOfPlay } from './OrderOfPlay.tsx';

const LESSON_TIME = part(() => import('./LessonTime.tsx'));

export function Overview() {
  const { game, findings, measures } = useAssessment();
  const { findings: timed } = useSimulation();
  return (
    <div className="panel-overview">
      {game.nodes.size === 0 ? (
        <p className="quiet">{PANEL.empty}</p>
      ) : (
        <>
          <Findings level="stops" findings={findings} />
          <Findings level="look" findings={findings} timed={timed} />
          <LeftOut />
          {measures.solvable && (
            <div className="panel-section panel-time">
              <PartView of={LESSON_TIME}>{({ default: LessonTime }) => <LessonTime />}</PartView>
            </div>
          )}
          <OrderOfPlay />
        </>
      )}
    </div>
  );
}
