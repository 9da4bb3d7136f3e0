/** Whether pupils may find a place though nothing has led them there, and what that skips. */
import type { NodeOf } from '../../../src/game/model.ts';
import { GUESS } from '../../../src/words/form-guess.ts';
import { FORM } from '../../../src/words/screen-form.ts';
import { useAssessment } from '../../store/assessment.ts';
import { Tick } from '../Tick.tsx';
import { chooseField } from '../write.ts';
import { FindingsHere } from './FindingsHere.tsx';

export function ByChance({ node }: { node: NodeOf<'place'> }) {
  const { network, context } = useAssessment();
  const cut = context.guesses().places.get(network.index.get(node.id) ?? -1);
  return (
    <section className="form-section">
      <Tick
        label={FORM.byChance}
        ticked={node.byChance === true}
        onTick={(ticked) => chooseField(node.id, 'byChance', ticked || undefined)}
      />
      {cut && cut.skips.length === 0 && <p className="hint">{GUESS.skipsNothing}</p>}
      <FindingsHere ids={[node.id]} of="chance" />
    </section>
  );
}
