/** What of my kit is short, and what can be done about it: the most sensible ways first, each tried on the game. */
import type { Assessment } from '../../src/findings/assess.ts';
import type { Game } from '../../src/game/model.ts';
import type { LineKey, Plan, ShortLine } from '../../src/kit/adapt/plan.ts';
import { noted, type Remedy } from '../../src/kit/remedies/index.ts';
import { ADAPT, shortDone } from '../../src/words/adapt.ts';
import { FOR_GAME } from '../../src/words/kit-for-game.ts';
import { remedyLabel, remedySentence, shortageSentence } from '../../src/words/kit-remedies.ts';
import { useFitting } from '../kit/fitting.ts';
import { useKit } from '../kit/kit-state.ts';
import { useRemedies } from '../kit/remedies.ts';
import { changeKit } from '../kit/write.ts';
import { SentenceText } from '../shell/SentenceText.tsx';
import { act, keep, useBusy } from './adapting.ts';
import { LineFrame } from './LineFrame.tsx';

interface ShortLinesProps {
  readonly plan: Plan;
  readonly assessment: Assessment;
  /** The line whose button is the main one. */
  readonly main: LineKey | undefined;
}

/** So many ways are shown at once. */
const MOST = 2;

export function ShortLines({ plan, assessment, main }: ShortLinesProps) {
  const fitting = useFitting();
  const { remediesOf } = useRemedies(assessment, fitting);
  const lines = plan.lines.filter((line) => line.sort === 'short');
  if (lines.length === 0) return <p className="quiet">{ADAPT.nothingShort}</p>;
  return (
    <ul>
      {lines.map((line) => (
        <Short
          key={line.key}
          line={line}
          assessment={assessment}
          remedies={remediesOf(line.shortage)}
          main={line.key === main}
        />
      ))}
    </ul>
  );
}

interface ShortProps {
  readonly line: ShortLine;
  readonly assessment: Assessment;
  /** Undefined while they are being tried. */
  readonly remedies: readonly Remedy[] | undefined;
  readonly main: boolean;
}

function Short({ line, assessment: { game }, remedies, main }: ShortProps) {
  const first = remedies?.slice(0, MOST) ?? [];
  const rest = remedies?.slice(MOST) ?? [];
  return (
    <LineFrame line={line} done={shortDone(game, line)} otherwise={undefined}>
      <p>
        <SentenceText sentence={shortageSentence(game, line.shortage)} />
      </p>
      {remedies === undefined && <p className="hint">{FOR_GAME.working}</p>}
      {remedies?.length === 0 && <p className="hint">{FOR_GAME.noRemedy}</p>}
      <Ways line={line} game={game} remedies={first} main={main} />
      {rest.length > 0 && (
        <details className="adapt-more">
          <summary>{ADAPT.more(rest.length)}</summary>
          <Ways line={line} game={game} remedies={rest} main={false} />
        </details>
      )}
    </LineFrame>
  );
}

interface WaysProps {
  readonly line: ShortLine;
  readonly game: Game;
  readonly remedies: readonly Remedy[];
  readonly main: boolean;
}

function Ways({ line: { key }, game, remedies, main }: WaysProps) {
  const { items } = useKit(({ owned }) => owned.kit);
  const busy = useBusy();
  const take = (remedy: Remedy) => {
    if (remedy.edits.length > 0) return void act(key, remedy.edits);
    changeKit((kit) => noted(kit, remedy));
    keep(key);
  };
  return (
    <ul className="adapt-ways">
      {remedies.map((remedy, i) => {
        const label = remedyLabel(game, items, remedy);
        return (
          <li key={`${remedy.code} ${label}`}>
            <button
              type="button"
              className={main && i === 0 ? 'button button-main' : 'button'}
              disabled={busy}
              onClick={() => take(remedy)}
            >
              {label}
            </button>
            <p className="hint">
              <SentenceText sentence={remedySentence(game, remedy)} />
            </p>
          </li>
        );
      })}
    </ul>
  );
}
