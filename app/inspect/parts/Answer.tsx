/** What a puzzle or clue gives. */
import { fastenerType } from '../../../src/fasteners/index.ts';
import type { NodeOf } from '../../../src/game/model.ts';
import { FORM } from '../../../src/words/screen-form.ts';
import { useGame } from '../../store/game.ts';
import { Section } from '../Section.tsx';
import { arrowsFrom, fillsPlaces } from './arrows.ts';
import { CodeField } from './CodeField.tsx';
import { FindingsHere } from './FindingsHere.tsx';

export function Answer({ node }: { node: NodeOf<'puzzle'> | NodeOf<'clue'> }) {
  const game = useGame((state) => state.game);
  const targets = arrowsFrom(game, node.id).map(({ other }) => other);
  // An answer is read as directions when a lock with directions takes it.
  const directions = targets.some((to) => to.kind === 'fastener' && fastenerType(to.type).directions);
  const isAsked =
    targets.some((to) => fillsPlaces(node, to)) || (node.kind === 'puzzle' && targets.length === 0);
  return (
    <Section title={FORM.answer}>
      <CodeField
        id={node.id}
        field="answer"
        label={FORM.answer}
        raw={node.answer}
        empty={isAsked ? FORM.noAnswer : FORM.noAnswerNeeded}
        directions={directions}
      />
      <FindingsHere ids={[node.id]} of="code" />
    </Section>
  );
}
