/** The pace: by when each lock is open where lessons end in time, and until when a step can be given away where they do not. */
import { useEffect } from 'react';
import { LEAST_LATE, plannedCuts } from '../../src/engine/simulation/pace.ts';
import { noCuts, noPace, PACE, paceMinute, paceName } from '../../src/words/pace.ts';
import { foldOut, isOfGame, lookAt, useHelps } from '../engine/helping.ts';
import type { PaceOfGame } from '../engine/helps-work.ts';
import { SentenceText } from '../shell/SentenceText.tsx';
import { useGame } from '../store/game.ts';
import './what-helps.css';

export function PaceCard() {
  const open = useHelps((state) => state.open.has('pace'));
  return (
    <details className="helps" open={open} onToggle={(event) => foldOut('pace', event.currentTarget.open)}>
      <summary>
        <h3>{PACE.title}</h3>
      </summary>
      {open && <Inside />}
    </details>
  );
}

function Inside() {
  useEffect(() => lookAt('pace'), []);
  const game = useGame((state) => state.game);
  const { pace, failed } = useHelps();
  if (!pace) return <p className="quiet">{failed ? PACE.failed : PACE.working}</p>;
  if (!pace.value) return <p className="quiet">{PACE.blocked}</p>;
  const isOld = !isOfGame(pace, game);
  return (
    <div className={isOld ? 'helps-old' : undefined}>
      {isOld && <p className="quiet">{PACE.old}</p>}
      <Locks of={pace.value} />
      <Cuts of={pace.value} />
    </div>
  );
}

function Locks({ of: { pace, ids } }: { of: PaceOfGame }) {
  const game = useGame((state) => state.game);
  const nothing = noPace(pace);
  if (nothing !== undefined) return <p>{nothing}</p>;
  return (
    <table className="pace">
      <caption>{PACE.locks}</caption>
      <thead>
        <tr>
          <th scope="col">{PACE.lock}</th>
          <th scope="col">{PACE.half}</th>
          <th scope="col">{PACE.fourFifths}</th>
        </tr>
      </thead>
      <tbody>
        {pace.locks.map(({ lock, half, fourFifths }) => (
          <tr key={lock}>
            <th scope="row">
              <SentenceText sentence={paceName(game, ids[lock] ?? '')} leads />
            </th>
            <td>{paceMinute(half)}</td>
            <td>{paceMinute(fourFifths)}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

function Cuts({ of: { pace, ids } }: { of: PaceOfGame }) {
  const game = useGame((state) => state.game);
  const cuts = plannedCuts(pace.cuts);
  const nothing = noCuts({ late: pace.late, cuts }, LEAST_LATE);
  if (nothing !== undefined) return <p>{nothing}</p>;
  return (
    <table className="pace">
      <caption>{PACE.cuts}</caption>
      <thead>
        <tr>
          <th scope="col">{PACE.step}</th>
          <th scope="col">{PACE.minute}</th>
        </tr>
      </thead>
      <tbody>
        {cuts.map(({ step, minute }) => (
          <tr key={step}>
            <th scope="row">
              <SentenceText sentence={paceName(game, ids[step] ?? '')} leads />
            </th>
            <td>{minute}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
