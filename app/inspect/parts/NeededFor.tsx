/** What a thing is needed for: the arrows out of it. */
import type { GameNode } from '../../../src/game/model.ts';
import { FORM } from '../../../src/words/screen-form.ts';
import { useGame } from '../../store/game.ts';
import { Section } from '../Section.tsx';
import { ArrowList } from './ArrowList.tsx';
import { addArrow, arrowsFrom, possibleTargets } from './arrows.ts';

export function NeededFor({ node }: { node: GameNode }) {
  const game = useGame((state) => state.game);
  return (
    <Section title={FORM.neededFor}>
      <ArrowList
        arrows={arrowsFrom(game, node.id)}
        none={FORM.neededForNothing}
        add={FORM.addNeededFor}
        choices={() => possibleTargets(game, node.id)}
        onAdd={(to) => addArrow(node.id, to)}
      />
    </Section>
  );
}
