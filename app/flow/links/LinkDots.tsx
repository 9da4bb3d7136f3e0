/** The dot beside a thing from which an arrow can be drawn: always at the one that is selected, and at the one under the pointer. */

import { ViewportPortal } from 'reactflow';
import type { NodeId } from '../../../src/game/model.ts';
import type { MapLayout } from '../../../src/map/layout.ts';
import { DRAGGING } from '../../../src/words/canvas.ts';
import { useGame } from '../../store/game.ts';
import { useView } from '../../store/view.ts';
import { useDrag } from '../drag/held.ts';
import { usePalette } from '../drag/palette.ts';
import { matRects } from '../geometry.ts';
import { useHover } from '../pointing.ts';
import { beginLinking, useLinking } from './linking.ts';

const OFF = 11;

export function LinkDots({ layout }: { layout: MapLayout }) {
  const hovered = useHover((state) => state.node);
  const selected = useView((state) => (state.nodes.size === 1 ? first(state.nodes) : undefined));
  const busy = useDrag((state) => state.held !== undefined);
  const linking = useLinking((state) => state.linking?.from);
  const ghost = usePalette((state) => state.ghost !== undefined);
  const readOnly = useGame((state) => state.readOnly);
  if (busy || ghost || readOnly || linking !== undefined) return null;
  const ids = new Set([selected, isSource(layout, hovered) ? hovered : undefined]);
  return (
    <ViewportPortal>
      {[...ids].map((id) => (id === undefined ? null : <Dot key={id} id={id} layout={layout} />))}
    </ViewportPortal>
  );
}

/** Trays are seldom evidence for a puzzle; their dot shows when they are selected. */
function isSource(layout: MapLayout, id: NodeId | undefined): boolean {
  const kind = id === undefined ? undefined : layout.slots.get(id)?.kind;
  return kind !== 'place' && kind !== 'container';
}

function first(ids: ReadonlySet<NodeId>): NodeId | undefined {
  return ids.values().next().value;
}

function Dot({ id, layout }: { id: NodeId; layout: MapLayout }) {
  const node = useGame((state) => state.game.nodes.get(id));
  const rect = matRects(layout).get(id);
  const slot = layout.slots.get(id);
  if (!node || !rect || !slot || node.kind === 'prize') return null;
  const left = slot.kind === 'fastener' && slot.wall === 'left' ? rect.x - OFF : rect.x + rect.width + OFF;
  return (
    <button
      type="button"
      tabIndex={-1}
      className="flow-dot nodrag nopan"
      style={{ transform: `translate(${left}px, ${rect.y + rect.height / 2}px)` }}
      aria-label={DRAGGING.drawLink(node.name)}
      title={DRAGGING.link}
      onPointerEnter={() => useHover.setState({ node: id })}
      onPointerDown={(event) => {
        event.stopPropagation();
        event.preventDefault();
        event.currentTarget.releasePointerCapture(event.pointerId);
        beginLinking(id, event);
      }}
    />
  );
}
