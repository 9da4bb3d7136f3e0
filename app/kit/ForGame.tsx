/** How the open game stands against my kit: what is short and what to do about it, and which real thing goes where. */
import { useRef } from 'react';
import { lessonOf } from '../../src/game/defaults.ts';
import { FOR_GAME, standing } from '../../src/words/kit-for-game.ts';
import { verdictOf } from '../../src/words/verdict.ts';
import { SentenceText } from '../shell/SentenceText.tsx';
import { useAssessment } from '../store/assessment.ts';
import { useGame } from '../store/game.ts';
import { Count } from './Count.tsx';
import { FittingTable } from './FittingTable.tsx';
import { useFitting } from './fitting.ts';
import { useKit } from './kit-state.ts';
import { Shortages } from './Shortages.tsx';
import './for-game.css';

const MOST_TEAMS = 30;

/** The lesson's own number of teams: the verdict goes by the same. */
function Teams() {
  const { game, readOnly } = useGame();
  const { teams } = lessonOf(game);
  return (
    <span className="kit-teams">
      {FOR_GAME.teams}
      <Count
        value={teams}
        least={1}
        most={Math.max(MOST_TEAMS, teams)}
        names={{ fewer: FOR_GAME.fewerTeams, more: FOR_GAME.moreTeams, count: FOR_GAME.teams }}
        disabled={readOnly}
        write={(next, tag) =>
          useKit
            .getState()
            .changeGame([{ type: 'setHead', fields: { lesson: { teams: next } } }], tag && 'lesson teams')
        }
      />
    </span>
  );
}

export function ForGame() {
  const game = useGame((state) => state.game);
  const assessment = useAssessment();
  const fitting = useFitting();
  const verdict = verdictOf(assessment, undefined);
  // What is short stands between the game and its prize, whatever the plan says.
  const isOnlyShort = fitting.missing > 0 && verdict.tone === 'ok';
  const standingLine = useRef<HTMLParagraphElement>(null);
  if (game.nodes.size === 0) return <p className="kit-nothing quiet">{FOR_GAME.noGame}</p>;
  return (
    <div className={fitting.missing > 0 ? 'kit-game' : 'kit-game kit-game-all'}>
      <div className="kit-standing">
        <p
          ref={standingLine}
          className={fitting.missing > 0 ? 'kit-standing-short' : 'kit-standing-all'}
          role="status"
          tabIndex={-1}
        >
          {standing(fitting)}
        </p>
        <p className="kit-verdict" role="status" data-verdict={isOnlyShort ? undefined : verdict.tone}>
          {isOnlyShort ? FOR_GAME.withEverything : <SentenceText sentence={verdict.first.slice(0, 1)} />}
        </p>
        <Teams />
      </div>
      {fitting.missing > 0 && (
        <Shortages assessment={assessment} fitting={fitting} onTaken={() => standingLine.current?.focus()} />
      )}
      <FittingTable assessment={assessment} fitting={fitting} />
    </div>
  );
}
