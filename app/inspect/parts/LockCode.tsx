/** The code of a lock, where it comes from, and whether it is the right one. */
import { fastenerType } from '../../../src/fasteners/index.ts';
import { codeOf, symbolsOf } from '../../../src/game/codes.ts';
import type { NodeOf } from '../../../src/game/model.ts';
import { codeComesFrom, FORM } from '../../../src/words/screen-form.ts';
import { SentenceText } from '../../shell/SentenceText.tsx';
import { useGame } from '../../store/game.ts';
import { Section } from '../Section.tsx';
import { arrowsInto, fillsPlaces } from './arrows.ts';
import { CodeField } from './CodeField.tsx';
import { shownName } from './holders.ts';

export function LockCode({ node }: { node: NodeOf<'fastener'> }) {
  const game = useGame((state) => state.game);
  const { opensWith, directions } = fastenerType(node.type);
  if ((opensWith === 'key' || opensWith === 'nothing') && node.code === undefined) return null;
  const length = symbolsOf(codeOf(game, node.id) ?? '').length;
  const sources = arrowsInto(game, node.id)
    .filter(({ other }) => fillsPlaces(other, node) && codeOf(game, other.id) !== undefined)
    .map(({ link, other }) => ({ id: other.id, name: shownName(game, other), positions: link.at }));
  return (
    <Section title={FORM.code}>
      <CodeField
        id={node.id}
        field="code"
        label={FORM.code}
        raw={node.code}
        empty={FORM.noCode}
        directions={directions}
      />
      {length > 0 && sources.length > 0 && (
        <p className="hint">
          <SentenceText sentence={codeComesFrom(sources, length)} leads />
        </p>
      )}
    </Section>
  );
}
