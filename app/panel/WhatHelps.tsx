/** What helps most: the few single changes that raise the chance or cut the waiting most, each made at a press and undone as one. */
import { useEffect } from 'react';
import { nodesOf } from '../../src/helps/help.ts';
import type { WhatHelps as Found } from '../../src/helps/what-helps.ts';
import { HELPS, helpLabel, helpSentence, noneIsEnough, nothingHelps } from '../../src/words/helps.ts';
import { foldOut, isOfGame, lookAt, useHelps } from '../engine/helping.ts';
import { SentenceText } from '../shell/SentenceText.tsx';
import { useAssessment } from '../store/assessment.ts';
import { useGame } from '../store/game.ts';
import { useView } from '../store/view.ts';
import './what-helps.css';

export function WhatHelps() {
  const open = useHelps((state) => state.open.has('helps'));
  return (
    <details className="helps" open={open} onToggle={(event) => foldOut('helps', event.currentTarget.open)}>
      <summary>
        <h3>{HELPS.title}</h3>
      </summary>
      {open && <Inside />}
    </details>
  );
}

function Inside() {
  useEffect(() => lookAt('helps'), []);
  const { canBeWon } = useAssessment();
  const game = useGame((state) => state.game);
  const { helps, failed } = useHelps();
  if (!canBeWon) return <p className="quiet">{HELPS.blocked}</p>;
  const isOld = helps !== undefined && !isOfGame(helps, game);
  return (
    <>
      {failed && <p className="quiet">{HELPS.failed}</p>}
      {!failed && (isOld || !helps) && <Progress />}
      {helps?.value && <List all={helps.value} isOld={isOld} />}
    </>
  );
}

function Progress() {
  const done = useHelps((state) => state.done);
  return (
    <label className="helps-progress">
      {HELPS.progress}
      <progress value={done} max={1} />
    </label>
  );
}

function List({ all, isOld }: { all: Found; isOld: boolean }) {
  const game = useGame((state) => state.game);
  const readOnly = useGame((state) => state.readOnly);
  if (all.helpful.length === 0) return isOld ? null : <p>{nothingHelps(all)}</p>;
  const notEnough = noneIsEnough(all);
  return (
    <>
      {isOld && <p className="quiet">{HELPS.old}</p>}
      {notEnough !== undefined && <p>{notEnough}</p>}
      <ul className={isOld ? 'helps-old' : undefined}>
        {all.helpful.map((one) => {
          const nodes = nodesOf(one.help).filter((id) => game.nodes.has(id));
          return (
            <li key={JSON.stringify([one.help.code, one.help.values])} className="help">
              <p>
                <SentenceText sentence={helpSentence(game, all, one)} />
              </p>
              <div className="finding-acts">
                <button
                  type="button"
                  className="button"
                  disabled={readOnly || isOld}
                  onClick={() => useGame.getState().apply(one.help.edits)}
                >
                  {helpLabel(game, one.help)}
                </button>
                {nodes.length > 0 && (
                  <button type="button" className="button" onClick={() => useView.getState().show(nodes)}>
                    {HELPS.show}
                  </button>
                )}
              </div>
            </li>
          );
        })}
      </ul>
    </>
  );
}
