/** What of my kit is short, and what can be done about it: the most sensible ways first, each tried on the game. */
import type { Assessment } from '../../src/findings/assess.ts';
import type { Game } from '../../src/game/model.ts';
import type { LineKey, Plan, ShortLine } from '../../src/kit/adapt/plan.ts';
import { changeItem, removeItem } from '../../src/kit/edits.ts';
import type { ItemId, Kit, KitItem } from '../../src/kit/model.ts';
import { noted, type Remedy } from '../../src/kit/remedies/index.ts';
import { ADAPT, shortDone } from '../../src/words/adapt.ts';
import { FOR_GAME } from '../../src/words/kit-for-game.ts';
import { remedyLabel, remedySentence, shortageSentence } from '../../src/words/kit-remedies.ts';
import { plain, type Sentence } from '../../src/words/sentence.ts';
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
  const { remediesOf, failed } = useRemedies(assessment, fitting);
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
          failed={failed}
          main={line.key === main}
        />
      ))}
    </ul>
  );
}

interface ShortProps {
  readonly line: ShortLine;
  readonly assessment: Assessment;
  /** Undefined while they are being tried, or where that failed. */
  readonly remedies: readonly Remedy[] | undefined;
  readonly failed: boolean;
  readonly main: boolean;
}

function Short({ line, assessment: { game }, remedies, failed, main }: ShortProps) {
  const { items } = useKit(({ owned }) => owned.kit);
  const ways = waysOf(game, items, remedies ?? []);
  const rest = ways.slice(MOST);
  return (
    <LineFrame line={line} done={shortDone(game, line)} otherwise={undefined}>
      <p>
        <SentenceText sentence={shortageSentence(game, line.shortage)} />
      </p>
      {remedies === undefined && <p className="hint">{failed ? FOR_GAME.failed : FOR_GAME.working}</p>}
      {remedies?.length === 0 && <p className="hint">{FOR_GAME.noRemedy}</p>}
      <Ways line={line} ways={ways.slice(0, MOST)} main={main} />
      {rest.length > 0 && (
        <details className="adapt-more">
          <summary>{ADAPT.more(rest.length)}</summary>
          <Ways line={line} ways={rest} main={false} />
        </details>
      )}
    </LineFrame>
  );
}

/** What comes of it is said once for all that do the same. */
interface Way {
  readonly sentence: Sentence;
  readonly buttons: readonly { readonly label: string; readonly remedy: Remedy }[];
}

function waysOf(game: Game, items: readonly KitItem[], remedies: readonly Remedy[]): readonly Way[] {
  const ways = new Map<string, Way>();
  for (const remedy of remedies) {
    const sentence = remedySentence(game, remedy);
    const { buttons = [] } = ways.get(plain(sentence)) ?? {};
    const button = { label: remedyLabel(game, items, remedy), remedy };
    ways.set(plain(sentence), { sentence, buttons: [...buttons, button] });
  }
  return [...ways.values()];
}

/** The list to buy as it was; the rest of what is owned stays. */
function unnoted(kit: Kit, id: ItemId, before: KitItem | undefined): Kit {
  const now = kit.items.find((item) => item.id === id);
  if (!now) return kit;
  if (!before && now.count === 0) return removeItem(kit, id);
  const { toBuy: _, ...rest } = now;
  return changeItem(kit, before?.toBuy === undefined ? rest : { ...rest, toBuy: before.toBuy });
}

interface WaysProps {
  readonly line: ShortLine;
  readonly ways: readonly Way[];
  readonly main: boolean;
}

function Ways({ line: { key }, ways, main }: WaysProps) {
  const busy = useBusy();
  const take = (remedy: Remedy) => {
    if (remedy.edits.length > 0) return void act(key, remedy.edits);
    if (remedy.code !== 'buy') return;
    const { id } = remedy.values.item;
    const before = useKit.getState().owned.kit.items.find((item) => item.id === id);
    changeKit((kit) => noted(kit, remedy));
    keep(key, () => changeKit((kit) => unnoted(kit, id, before)));
  };
  return (
    <ul className="adapt-ways">
      {ways.map(({ sentence, buttons }, way) => (
        <li key={plain(sentence)}>
          <div className="adapt-way-buttons">
            {buttons.map(({ label, remedy }, i) => (
              <button
                key={`${remedy.code} ${label}`}
                type="button"
                className={main && way === 0 && i === 0 ? 'button button-main' : 'button'}
                disabled={busy}
                onClick={() => take(remedy)}
              >
                {label}
              </button>
            ))}
          </div>
          <p className="hint">
            <SentenceText sentence={sentence} />
          </p>
        </li>
      ))}
    </ul>
  );
}
