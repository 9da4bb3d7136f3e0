/** Dragging nodes: they follow the hand on their own, the tray that would take them is shown, and the game is written once, on letting go. */
import type { NodeChange, OnNodeDrag } from 'reactflow';
import type { Placement } from '../../../src/game/edits/edit.ts';
import { outermost } from '../../../src/game/edits/place.ts';
import { type Game, type NodeId, withContents } from '../../../src/game/model.ts';
import type { MapLayout } from '../../../src/map/layout.ts';
import { DRAGGING } from '../../../src/words/canvas.ts';
import { editRefusalSentence } from '../../../src/words/refusals.ts';
import { plain } from '../../../src/words/sentence.ts';
import { useGame } from '../../store/game.ts';
import { currentLayout } from '../../store/layout.ts';
import type { CardNode } from '../card.ts';
import { matRects, type Spot } from '../geometry.ts';
import { showThings } from '../useInView.ts';
import { useMounted } from '../viewport.ts';
import { letGo, useDrag } from './held.ts';
import { type Landing, landingAt, landingEdits, landingMark, landingRefusal } from './landing.ts';

function pointerOf(event: MouseEvent | TouchEvent): Spot | undefined {
  const at = 'touches' in event ? (event.touches[0] ?? event.changedTouches[0]) : event;
  return at && { x: at.clientX, y: at.clientY };
}

/** What a landing says at the pointer; nothing where nothing changes hands. */
function landingNote(
  game: Game,
  roots: readonly NodeId[],
  landing: Landing,
): { text: string; refused: boolean } | undefined {
  const refusal = landingRefusal(game, landingEdits(game, roots, landing, []));
  if (refusal) return { text: plain(editRefusalSentence(game, refusal)), refused: true };
  const first = game.nodes.get(roots[0] ?? '');
  const home = first?.on ?? first?.in ?? null;
  if (landing.holder === home) return undefined;
  const name = (id: NodeId) => game.nodes.get(id)?.name ?? '';
  if (landing.holder === null)
    return home === null ? undefined : { text: DRAGGING.takeOut(name(home)), refused: false };
  const say = first?.kind === 'fastener' ? DRAGGING.onto : DRAGGING.into;
  return { text: say(name(landing.holder)), refused: false };
}

/** Ends the drag without a trace. The canvas drags on until the button is released; with nothing held, that counts for nothing. */
export function cancelDrag(): boolean {
  if (!useDrag.getState().held) return false;
  letGo();
  return true;
}

function positionsOnMat(
  layout: MapLayout,
  nodes: readonly CardNode[],
  roots: readonly NodeId[],
): Placement[] {
  const rects = matRects(layout);
  const placements: Placement[] = [];
  for (const id of roots) {
    const node = nodes.find((candidate) => candidate.id === id);
    if (!node) continue;
    const parent = node.parentId === undefined ? undefined : rects.get(node.parentId);
    const x = Math.round(node.position.x + (parent?.x ?? 0));
    const y = Math.round(node.position.y + (parent?.y ?? 0));
    placements.push([id, { x, y }]);
  }
  return placements;
}

function look(event: MouseEvent | TouchEvent): void {
  const at = pointerOf(event);
  const { instance } = useMounted.getState();
  const { held, landing: before } = useDrag.getState();
  if (!held || !at || !instance) return;
  const { game } = useGame.getState();
  const layout = currentLayout();
  const landing = landingAt(game, layout, instance.screenToFlowPosition(at), held.roots, held.moving);
  if (before?.holder === landing.holder && before.before === landing.before) return;
  const note = landingNote(game, held.roots, landing);
  useDrag.setState({
    landing,
    target: note?.refused ? undefined : (landing.holder ?? undefined),
    mark: note?.refused ? undefined : landingMark(layout, landing, held.moving),
    note,
  });
}

export const onNodeDragStart: OnNodeDrag<CardNode> = (_event, node, nodes) => {
  const { game } = useGame.getState();
  const roots = outermost(game, [node.id, ...nodes.map((dragged) => dragged.id)]);
  const moving = withContents(game, roots);
  useDrag.setState({ held: { roots, moving, positions: new Map() } });
};

export const onNodeDrag: OnNodeDrag<CardNode> = (event) => look(event);

export const onNodeDragStop: OnNodeDrag<CardNode> = (event, _node, nodes) => {
  look(event);
  const { held, landing } = useDrag.getState();
  if (!held) return;
  const { roots } = held;
  const { game, apply } = useGame.getState();
  const edits = landing && landingEdits(game, roots, landing, positionsOnMat(currentLayout(), nodes, roots));
  const landed = edits !== undefined && apply(edits);
  letGo();
  if (landed) showThings(roots);
};

/** What the canvas says of positions while the hand moves. */
export function follow(changes: readonly NodeChange<CardNode>[]): void {
  const { held } = useDrag.getState();
  if (!held) return;
  let positions: Map<NodeId, Spot> | undefined;
  for (const change of changes) {
    if (change.type !== 'position' || !change.position) continue;
    positions ??= new Map(held.positions);
    positions.set(change.id, change.position);
  }
  if (positions) useDrag.setState({ held: { ...held, positions } });
}
