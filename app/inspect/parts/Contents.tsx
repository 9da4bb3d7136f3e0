/** What lies in a place or box, what hangs on it, and what a lock keeps shut. */
import { childrenOf, type Game, type GameNode, type NodeId } from '../../../src/game/model.ts';
import { behindIt, FORM } from '../../../src/words/screen-form.ts';
import { NodeLink } from '../../shell/NodeLink.tsx';
import { SentenceText } from '../../shell/SentenceText.tsx';
import { useGame } from '../../store/game.ts';
import { Section } from '../Section.tsx';
import { shownName } from './holders.ts';

/** In the order of the tray. */
function rows(game: Game, holder: NodeId, locks: boolean): GameNode[] {
  const y = (node: GameNode) => game.positions.get(node.id)?.y ?? Number.POSITIVE_INFINITY;
  return [...(childrenOf(game).get(holder) ?? [])]
    .filter((node) => (node.kind === 'fastener') === locks)
    .sort((a, b) => (y(a) < y(b) ? -1 : y(a) > y(b) ? 1 : a.name.localeCompare(b.name, 'en')));
}

function Names({ nodes, none }: { nodes: readonly GameNode[]; none: string }) {
  const game = useGame((state) => state.game);
  if (nodes.length === 0) return <p className="quiet">{none}</p>;
  return (
    <ul className="form-names">
      {nodes.map((node) => (
        <li key={node.id}>
          <NodeLink id={node.id}>{shownName(game, node)}</NodeLink>
        </li>
      ))}
    </ul>
  );
}

export function Contents({ node }: { node: GameNode }) {
  const game = useGame((state) => state.game);
  const locks = rows(game, node.id, true);
  return (
    <>
      {node.kind === 'container' && (
        <Section title={FORM.locks(locks.length)}>
          <Names nodes={locks} none={FORM.noLocks} />
        </Section>
      )}
      <Section title={FORM.contents}>
        <Names nodes={rows(game, node.id, false)} none={FORM.nothingInside} />
      </Section>
    </>
  );
}

export function Behind({ box }: { box: NodeId }) {
  const game = useGame((state) => state.game);
  const contents = rows(game, box, false).map((node) => node.id);
  return (
    <Section title={FORM.behind}>
      <p>
        <SentenceText sentence={behindIt(game, box, contents)} leads />
      </p>
    </Section>
  );
}
