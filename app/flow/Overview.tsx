/** The whole map in small, with what is in view; dragging in it moves the view. */
import { MiniMap } from 'reactflow';
import { ZOOM } from '../../src/words/canvas.ts';
import type { CardNode } from './card.ts';

const classOf = (node: CardNode) => `flow-mini flow-mini-${node.type ?? ''}`;

export function Overview() {
  return (
    <MiniMap<CardNode>
      className="flow-overview"
      ariaLabel={ZOOM.overview}
      nodeClassName={classOf}
      nodeBorderRadius={2}
      pannable
      zoomable
    />
  );
}
