/** The form of what is selected: one thing, one arrow, or several together. */
import { useGame } from '../store/game.ts';
import { useView } from '../store/view.ts';
import { LinkForm } from './LinkForm.tsx';
import { ManyForm } from './ManyForm.tsx';
import { NodeForm } from './NodeForm.tsx';
import './inspector.css';

export default function Inspector() {
  const game = useGame((state) => state.game);
  const selectedNodes = useView((state) => state.nodes);
  const selectedLinks = useView((state) => state.links);
  const nodes = [...selectedNodes].flatMap((id) => game.nodes.get(id) ?? []);
  const links = [...selectedLinks].flatMap((id) => game.links.get(id) ?? []);
  const [node] = nodes;
  const [link] = links;

  return (
    <div className="inspector">
      {nodes.length === 1 && links.length === 0 && node ? (
        <NodeForm key={node.id} node={node} />
      ) : links.length === 1 && nodes.length === 0 && link ? (
        <LinkForm key={link.id} link={link} />
      ) : (
        <ManyForm nodes={nodes} links={links} />
      )}
    </div>
  );
}
