/** What is short, and what can be done about it: each a press, and one undo. */
import { useId } from 'react';
import type { Assessment } from '../../src/findings/assess.ts';
import type { Fitting } from '../../src/kit/fit/index.ts';
import { nearestLock } from '../../src/kit/fit/nearest.ts';
import type { Kit } from '../../src/kit/model.ts';
import { noted, type Remedy, type Shortage } from '../../src/kit/remedies/index.ts';
import { FOR_GAME } from '../../src/words/kit-for-game.ts';
import { nearestText, remedyLabel, remedySentence, shortageSentence } from '../../src/words/kit-remedies.ts';
import { plain } from '../../src/words/sentence.ts';
import { SentenceText } from '../shell/SentenceText.tsx';
import { useGame } from '../store/game.ts';
import { useKit } from './kit-state.ts';
import { useRemedies } from './remedies.ts';
import { changeKit } from './write.ts';

function take(remedy: Remedy): void {
  if (remedy.edits.length > 0) useKit.getState().changeGame(remedy.edits);
  else changeKit((kit) => noted(kit, remedy));
}

function isOnList(remedy: Remedy, kit: Kit): boolean {
  return remedy.code === 'buy' && noted(kit, remedy) === kit;
}

interface ShortagesProps {
  readonly assessment: Assessment;
  readonly fitting: Fitting;
  /** The button that was pressed goes with what was short. */
  readonly onTaken: () => void;
}

export function Shortages({ assessment, fitting, onTaken }: ShortagesProps) {
  const id = useId();
  const { shortages, remediesOf, failed } = useRemedies(assessment, fitting);
  return (
    <section className="kit-short" aria-labelledby={id}>
      <h3 id={id}>{FOR_GAME.short}</h3>
      <ul>
        {shortages.map((shortage, i) => (
          <Short
            key={`${shortage.part} ${shortage.node}`}
            assessment={assessment}
            shortage={shortage}
            remedies={remediesOf(shortage)}
            failed={failed}
            main={i === 0}
            onTaken={onTaken}
          />
        ))}
      </ul>
    </section>
  );
}

interface ShortProps {
  readonly assessment: Assessment;
  readonly shortage: Shortage;
  /** Undefined while they are being tried, or where that failed. */
  readonly remedies: readonly Remedy[] | undefined;
  readonly failed: boolean;
  /** Its first remedy is the main button. */
  readonly main: boolean;
  readonly onTaken: () => void;
}

function Short({ assessment: { game }, shortage, remedies, failed, main, onTaken }: ShortProps) {
  const kit = useKit(({ owned }) => owned.kit);
  const nearest = shortage.part === 'lock' ? nearestLock(game, kit, shortage.node) : undefined;
  const readOnly = useGame((state) => state.readOnly);
  const told = (remedies ?? []).map((remedy) => plain(remedySentence(game, remedy)));
  /** What the next button does as well is told beneath the last of them. */
  const isTold = (i: number) => told[i] !== told[i + 1];
  return (
    <li className="finding finding-look" aria-busy={remedies === undefined && !failed}>
      <p>
        <SentenceText sentence={shortageSentence(game, shortage)} />
      </p>
      {remedies === undefined && <p className="hint">{failed ? FOR_GAME.failed : FOR_GAME.working}</p>}
      {nearest && <p className="hint">{nearestText(nearest)}</p>}
      {remedies?.length === 0 && <p className="hint">{FOR_GAME.noRemedy}</p>}
      <ul className="kit-remedies">
        {remedies?.map((remedy, i) => {
          const label = remedyLabel(game, kit.items, remedy);
          if (isOnList(remedy, kit)) {
            return (
              <li key={remedy.code} className="hint">
                {FOR_GAME.onList}
              </li>
            );
          }
          return (
            <li key={`${remedy.code} ${label}`}>
              <button
                type="button"
                className={main && i === 0 ? 'button button-main' : 'button'}
                disabled={readOnly && remedy.edits.length > 0}
                onClick={() => {
                  take(remedy);
                  onTaken();
                }}
              >
                {label}
              </button>
              {isTold(i) && (
                <p className="hint">
                  <SentenceText sentence={remedySentence(game, remedy)} />
                </p>
              )}
            </li>
          );
        })}
      </ul>
    </li>
  );
}
