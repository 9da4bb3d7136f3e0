/** What the pointer means: a thing, an arrow, or the bare mat. */

import type { NodeChange } from 'reactflow';
import { create } from 'zustand';
import { isHolder, type LinkId, type NodeId } from '../../src/game/model.ts';
import type { Route } from '../../src/map/layout.ts';
import { useGame } from '../store/game.ts';
import { useView } from '../store/view.ts';
import type { CardNode } from './card.ts';
import { linkNear } from './links/near.ts';
import { notePointer, useMounted } from './viewport.ts';

interface Hover {
  readonly node: NodeId | undefined;
  readonly link: LinkId | undefined;
}

/** What is under the pointer. */
export const useHover = create<Hover>()(() => ({ node: undefined, link: undefined }));

/** How near the pointer has to come to an arrow, in screen pixels. */
const REACH = 6;
/** Things that an arrow passes beneath, so that the pointer means them and not the arrow. */
const SOLID =
  '.react-flow__node-thing, .react-flow__node-puzzle, .react-flow__node-fastener, .flow-dot, .flow-overview';

let drawnRoutes: ReadonlyMap<LinkId, Route> = new Map();

/** The canvas says where its arrows run. */
export function setDrawnRoutes(routes: ReadonlyMap<LinkId, Route>): void {
  drawnRoutes = routes;
}

interface At {
  readonly clientX: number;
  readonly clientY: number;
}

function linkAt({ clientX, clientY }: At): LinkId | undefined {
  const { instance } = useMounted.getState();
  if (!instance) return undefined;
  const spot = instance.screenToFlowPosition({ x: clientX, y: clientY });
  return linkNear(drawnRoutes, spot, REACH / instance.getZoom());
}

/** The thing on whose drawing something happens. */
export function nodeUnder(target: EventTarget): NodeId | undefined {
  const element = target instanceof Element ? target.closest('.react-flow__node') : null;
  return element instanceof HTMLElement ? element.dataset['id'] : undefined;
}

export function onPaneClick(event: At): void {
  const link = linkAt(event);
  const view = useView.getState();
  view.lift(undefined);
  view.select([], link === undefined ? [] : [link]);
}

/** The canvas has selected the thing already. An arrow that crosses a tray is meant rather than the tray; a folded box opens. */
export function onNodeClick(event: At, node: CardNode): void {
  const view = useView.getState();
  if (view.lifted !== undefined && view.lifted !== node.id) view.lift(undefined);
  const { slot } = node.data;
  if (!isHolder(slot)) return;
  const link = linkAt(event);
  if (link !== undefined) view.select([], [link]);
  else if (slot.folded) view.setOpened(node.id, true);
}

/** Its name is to be typed. Not where the two clicks meant an arrow across a tray. */
export function onNodeDoubleClick(_event: unknown, node: CardNode): void {
  const view = useView.getState();
  if (view.nodes.has(node.id) && !useGame.getState().readOnly) view.askName(node.id);
}

export function onPointerMove(event: At & { readonly target: EventTarget; readonly buttons: number }): void {
  notePointer({ x: event.clientX, y: event.clientY });
  if (event.buttons !== 0 || !(event.target instanceof Element)) return;
  const link = event.target.closest(SOLID) ? undefined : linkAt(event);
  const before = useHover.getState();
  const node = event.target.closest('.flow-dot') ? before.node : nodeUnder(event.target);
  if (link !== before.link || node !== before.node) useHover.setState({ link, node });
}

export function onPointerLeave(): void {
  notePointer(undefined);
  pointAtNothing();
}

/** Until the pointer moves again. */
export function pointAtNothing(): void {
  useHover.setState({ node: undefined, link: undefined });
}

/** What the canvas says of selection goes into the view, which alone knows it. */
export function selectBy(changes: readonly NodeChange<CardNode>[]): void {
  const view = useView.getState();
  let next: Set<NodeId> | undefined;
  for (const change of changes) {
    if (change.type !== 'select' || view.nodes.has(change.id) === change.selected) continue;
    next ??= new Set(view.nodes);
    if (change.selected) next.add(change.id);
    else next.delete(change.id);
  }
  if (next) view.select(next);
}
