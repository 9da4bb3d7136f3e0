/** The form of one arrow. */
import type { GameLink } from '../../src/game/model.ts';
import { ARROW, FORM } from '../../src/words/screen-form.ts';
import { NodeLink } from '../shell/NodeLink.tsx';
import { useGame } from '../store/game.ts';
import { FormHead, FormPage } from './FormPage.tsx';
import { fillsPlaces, handsOver, removeArrow } from './parts/arrows.ts';
import { shownName } from './parts/holders.ts';
import { PlacesField } from './parts/PlacesField.tsx';
import { Section } from './Section.tsx';

export function LinkForm({ link }: { link: GameLink }) {
  const game = useGame((state) => state.game);
  const from = game.nodes.get(link.from);
  const to = game.nodes.get(link.to);
  if (!from || !to) return null;
  return (
    <FormPage head={<FormHead title={ARROW.heading} />}>
      <Section title={ARROW.from}>
        <NodeLink id={from.id}>{shownName(game, from)}</NodeLink>
      </Section>
      <Section title={ARROW.to}>
        <NodeLink id={to.id}>{shownName(game, to)}</NodeLink>
        {handsOver(from, to) && <p className="hint">{ARROW.handsOver}</p>}
      </Section>
      {fillsPlaces(from, to) && (
        <section className="form-section">
          <PlacesField link={link} hint={FORM.positionsHint} />
        </section>
      )}
      <section className="form-section form-actions">
        <button type="button" className="button" onClick={() => removeArrow(link.id)}>
          {ARROW.remove}
        </button>
      </section>
    </FormPage>
  );
}
