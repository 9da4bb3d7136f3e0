/** What a puzzle or clue gives. */
import { fastenerType } from '../../../src/fasteners/index.ts';
import { writtenFor } from '../../../src/fasteners/written-for.ts';
import type { Game, NodeOf } from '../../../src/game/model.ts';
import { FORM } from '../../../src/words/screen-form.ts';
import { useGame } from '../../store/game.ts';
import { Section } from '../Section.tsx';
import { arrowsFrom, fillsPlaces } from './arrows.ts';
import { CodeField } from './CodeField.tsx';
import { FindingsHere } from './FindingsHere.tsx';

export function Answer({ node }: { node: NodeOf<'puzzle'> | NodeOf<'clue'> }) {
  const game = useGame((state) => state.game);
  const targets = arrowsFrom(game, node.id).map(({ other }) => other);
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
        type={writtenFor(game).get(node.id) ?? fastenerType()}
        hardware={onlyLock(game, node)?.hardware}
      />
      <FindingsHere ids={[node.id]} of="code" />
    </Section>
  );
}

/** The one lock that it is for: its wheels tell what is meant. */
function onlyLock(game: Game, node: NodeOf<'puzzle'> | NodeOf<'clue'>): NodeOf<'fastener'> | undefined {
  const locks = arrowsFrom(game, node.id).flatMap(({ other }) =>
    fillsPlaces(node, other) && other.kind === 'fastener' ? [other] : [],
  );
  return locks.length === 1 ? locks[0] : undefined;
}
