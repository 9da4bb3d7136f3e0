/** Each lock, box, hasp and tool of the game in the order of play, and the real things that it gets. */
import { useId, useState } from 'react';
import type { Assessment } from '../../src/findings/assess.ts';
import { saidCode } from '../../src/game/codes.ts';
import type { NodeId } from '../../src/game/model.ts';
import type { Fitting, Supply } from '../../src/kit/fit/index.ts';
import type { KitItem, What } from '../../src/kit/model.ts';
import { FOR_GAME, givenText, PARTS_OF_KIT } from '../../src/words/kit-for-game.ts';
import { likeKeysSentence, loosePinSentence } from '../../src/words/kit-remedies.ts';
import { sayer } from '../../src/words/say.ts';
import { itemTitle } from '../../src/words/screen-kit.ts';
import { plain } from '../../src/words/sentence.ts';
import { SentenceText } from '../shell/SentenceText.tsx';
import { choose, usePins } from './fitting.ts';
import { LineSign } from './ItemSign.tsx';
import { useKit } from './kit-state.ts';
import { offLimitsIn } from './off-limits.ts';
import { inOrderOfPlay } from './order.ts';
import { suitingIn } from './suiting.ts';

interface Part {
  readonly what: What;
  readonly supply: Supply;
}

export function FittingTable({ assessment, fitting }: { assessment: Assessment; fitting: Fitting }) {
  const parts: readonly Part[] = [
    { what: 'lock', supply: fitting },
    { what: 'box', supply: fitting.boxes },
    { what: 'hasp', supply: fitting.hasps },
    { what: 'tool', supply: fitting.tools },
  ];
  const kit = useKit(({ owned }) => owned.kit);
  const offLimits = offLimitsIn(assessment.game, kit);
  return (
    <div className="kit-fitting">
      {fitting.likeKeys.map((like) => (
        <p key={`${like.key} ${like.lock}`} className="finding finding-look">
          <SentenceText sentence={likeKeysSentence(assessment.game, like)} />
        </p>
      ))}
      {offLimits.map(({ id }) => (
        <p key={id} className="finding finding-look">
          {FOR_GAME.offLimits(plain(sayer(assessment.game).title(id)))}
        </p>
      ))}
      {parts.map(({ what, supply }) => (
        <PartTable key={what} what={what} supply={supply} assessment={assessment} fitting={fitting} />
      ))}
    </div>
  );
}

interface PartTableProps extends Part {
  readonly assessment: Assessment;
  readonly fitting: Fitting;
}

function PartTable({ what, supply, assessment, fitting }: PartTableProps) {
  const id = useId();
  const { title, uncounted } = PARTS_OF_KIT[what];
  if (supply.isCounted && supply.assigned.size === 0) return null;
  return (
    <section className="kit-part" aria-labelledby={id}>
      <h3 id={id}>{title}</h3>
      {supply.isCounted ? (
        <ul>
          {inOrderOfPlay(assessment, supply.assigned.keys(), (id) => id).map((node) => (
            <Row
              key={node}
              node={node}
              what={what}
              supply={supply}
              assessment={assessment}
              fitting={fitting}
            />
          ))}
        </ul>
      ) : (
        <p className="quiet">{uncounted}</p>
      )}
    </section>
  );
}

function Row({ node, what, supply, assessment, fitting }: PartTableProps & { readonly node: NodeId }) {
  const { game, network, measures } = assessment;
  const [open, setOpen] = useState(false);
  const { items } = useKit(({ owned }) => owned.kit);
  const suiting = suitingIn(assessment.game, fitting.teams)(what, node, items);
  const given = supply.assigned.get(node) ?? [];
  const short = supply.short.get(node) ?? 0;
  const title = sayer(game).title(node);
  const code = what === 'lock' ? saidCode(game, node) : undefined;
  const number = measures.number[network.index.get(node) ?? -1] ?? 0;
  const own = game.nodes.get(node);
  const loose = fitting.loosePins.filter((pin) => pin.node === node);
  return (
    <li className={short > 0 ? 'kit-row kit-row-short' : 'kit-row'}>
      <div className="kit-row-line">
        <span className="kit-row-number">{number > 0 && <span className="kit-step">{number}</span>}</span>
        <LineSign what={what} type={own?.kind === 'fastener' ? own.type : undefined} />
        <p className="kit-row-title">
          <SentenceText sentence={title} />
          {code !== undefined && <span className="kit-row-code told-code">{code}</span>}
        </p>
        <p className="kit-row-given">{givenText(given, items)}</p>
        {suiting.length > 0 && (
          <button
            type="button"
            className="button"
            aria-expanded={open}
            aria-label={FOR_GAME.chooseFor(plain(title))}
            onClick={() => setOpen(!open)}
          >
            {FOR_GAME.choose}
          </button>
        )}
      </div>
      {loose.map((pin) => (
        <p key={`${pin.item} ${pin.why}`} className="kit-row-loose">
          <SentenceText sentence={loosePinSentence(game, items, pin)} />
        </p>
      ))}
      {open && <Copies node={node} what={what} given={given} items={suiting} teams={fitting.teams} />}
    </li>
  );
}

interface CopiesProps {
  readonly node: NodeId;
  readonly what: What;
  readonly given: readonly (string | null)[];
  readonly items: readonly KitItem[];
  readonly teams: number;
}

/** A field for each copy. What is chosen stays; what is not follows from all else. */
function Copies({ node, what, given, items, teams }: CopiesProps) {
  const sort = what === 'hasp' ? 'hasps' : 'nodes';
  const pins = usePins()[sort].get(node);
  return (
    <div className="kit-copies">
      {given.map((got, copy) => {
        const now = items.find(({ id }) => id === got);
        const pinned = pins?.[copy] ?? '';
        return (
          // biome-ignore lint/suspicious/noArrayIndexKey: a copy is what stands in this place
          <label key={copy} className="kit-copy">
            <span className="label">{FOR_GAME.copy(copy + 1, given.length, teams)}</span>
            <select
              className="field"
              value={pinned}
              onChange={({ target }) =>
                choose(sort, node, { copy, copies: given.length, item: target.value || null })
              }
            >
              <option value="">
                {FOR_GAME.asItComes(pinned === '' && now ? itemTitle(now) : undefined)}
              </option>
              {pinned !== '' && !items.some(({ id }) => id === pinned) && (
                <option value={pinned}>{FOR_GAME.gone}</option>
              )}
              {items.map((item) => (
                <option key={item.id} value={item.id}>
                  {itemTitle(item)}
                </option>
              ))}
            </select>
          </label>
        );
      })}
    </div>
  );
}
