/** What a thing waits for: the arrows into it, how many of them count, and which positions of a code each fills. */
import { useId } from 'react';
import { fastenerType } from '../../../src/fasteners/index.ts';
import type { GameNode } from '../../../src/game/model.ts';
import { FORM } from '../../../src/words/screen-form.ts';
import { useGame } from '../../store/game.ts';
import { Section } from '../Section.tsx';
import { chooseField } from '../write.ts';
import { ArrowList } from './ArrowList.tsx';
import { addArrow, arrowsInto, fillsPlaces, possibleSources } from './arrows.ts';
import { PlacesField } from './PlacesField.tsx';

export function Needs({ node }: { node: GameNode }) {
  const game = useGame((state) => state.game);
  const arrows = arrowsInto(game, node.id);
  const fillers = arrows.filter((arrow) => fillsPlaces(arrow.other, node));
  // One answer is the whole code unless it says otherwise; the question only arises with several.
  const asksPlaces = fillers.length > 1 || fillers.some(({ link }) => link.at !== undefined);

  const isLock = node.kind === 'fastener' && fastenerType(node.type).opensWith !== 'nothing';

  return (
    <Section title={FORM.needs}>
      <ArrowList
        arrows={arrows}
        none={isLock ? FORM.lockNeedsNothing : FORM.needsNothing}
        add={FORM.addNeed}
        choices={() => possibleSources(game, node.id)}
        onAdd={(from) => addArrow(from, node.id)}
        below={({ link, other }) =>
          asksPlaces && fillsPlaces(other, node) && <PlacesField key={link.id} link={link} />
        }
      >
        {asksPlaces && <p className="hint">{FORM.positionsHint}</p>}
        <HowMany node={node} count={arrows.length} />
      </ArrowList>
    </Section>
  );
}

/** All, or any n of m. A need that the file has and that cannot be met stands as it is. */
function HowMany({ node, count }: { node: GameNode; count: number }) {
  const id = useId();
  const need = node.need ?? 'all';
  if (count < 2 && need === 'all') return null;
  const fewer = Array.from({ length: Math.max(count - 1, 0) }, (_, i) => i + 1);
  const odd = need !== 'all' && !fewer.includes(need) ? [need] : [];
  return (
    <div className="form-choice">
      <label className="label" htmlFor={id}>
        {FORM.howMany}
      </label>
      <select
        id={id}
        className="field"
        value={String(need)}
        onChange={(event) =>
          chooseField(node.id, 'need', event.target.value === 'all' ? undefined : Number(event.target.value))
        }
      >
        <option value="all">{FORM.all(count)}</option>
        {[...fewer, ...odd].map((n) => (
          <option key={n} value={n}>
            {FORM.anyOf(n, count)}
          </option>
        ))}
      </select>
    </div>
  );
}
