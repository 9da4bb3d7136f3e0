/** What a puzzle or clue gives. */
import { fastenerType } from '../../../src/fasteners/index.ts';
import type { NodeOf } from '../../../src/game/model.ts';
import { FORM } from '../../../src/words/screen-form.ts';
import { useGame } from '../../store/game.ts';
import { Section } from '../Section.tsx';
import { arrowsFrom } from './arrows.ts';
import { CodeField } from './CodeField.tsx';

export function Answer({ node }: { node: NodeOf<'puzzle'> | NodeOf<'clue'> }) {
  const game = useGame((state) => state.game);
  // An answer is read as directions when a lock with directions takes it.
  const directions = arrowsFrom(game, node.id).some(
    ({ other }) => other.kind === 'fastener' && fastenerType(other.type).directions,
  );
  return (
    <Section title={FORM.answer}>
      <CodeField id={node.id} field="answer" label={FORM.answer} raw={node.answer} directions={directions} />
    </Section>
  );
}
