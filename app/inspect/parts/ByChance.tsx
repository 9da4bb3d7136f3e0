/** Whether pupils may find a place though nothing has led them there. */
import type { NodeOf } from '../../../src/game/model.ts';
import { FORM } from '../../../src/words/screen-form.ts';
import { Tick } from '../Tick.tsx';
import { chooseField } from '../write.ts';

export function ByChance({ node }: { node: NodeOf<'place'> }) {
  return (
    <section className="form-section">
      <Tick
        label={FORM.byChance}
        ticked={node.byChance === true}
        onTick={(ticked) => chooseField(node.id, 'byChance', ticked || undefined)}
      />
    </section>
  );
}
