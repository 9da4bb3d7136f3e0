/** Drawing an arrow: from the dot of a thing to what it is needed for. */
import { create } from 'zustand';
import { linkRefusal } from '../../../src/game/links.ts';
import type { Game, NodeId } from '../../../src/game/model.ts';
import { DRAGGING } from '../../../src/words/canvas.ts';
import { linkRefusalSentence } from '../../../src/words/refusals.ts';
import { plain } from '../../../src/words/sentence.ts';
import { useGame } from '../../store/game.ts';
import { freshId } from '../../store/ids.ts';
import { currentLayout } from '../../store/layout.ts';
import { useView } from '../../store/view.ts';
import { type Spot, thingAt } from '../geometry.ts';
import { useMounted } from '../viewport.ts';

export interface Linking {
  readonly from: NodeId;
  /** What may be its other end. */
  readonly legal: ReadonlySet<NodeId>;
  /** Under the pointer and legal. */
  readonly to: NodeId | undefined;
  /** The pointer, on the mat. */
  readonly at: Spot;
  readonly note: { readonly text: string; readonly refused: boolean } | undefined;
}

export const useLinking = create<{ readonly linking: Linking | undefined }>()(() => ({ linking: undefined }));

function legalTargets(game: Game, from: NodeId): ReadonlySet<NodeId> {
  const legal = new Set<NodeId>();
  for (const id of game.nodes.keys()) {
    if (linkRefusal(game, from, id) === undefined) legal.add(id);
  }
  return legal;
}

/** Near misses count: a finger is wider than a slip of paper. */
const REACH = 6;

let stop: (() => void) | undefined;

/** Takes the arrow that is being drawn away again. */
export function cancelLinking(): boolean {
  if (!stop) return false;
  stop();
  return true;
}

/** Follows the pointer until it is let go. */
export function beginLinking(from: NodeId, pointer: { clientX: number; clientY: number }): void {
  const { instance } = useMounted.getState();
  const { game, readOnly } = useGame.getState();
  if (!instance || readOnly) return;
  cancelLinking();
  const legal = legalTargets(game, from);
  const spotOf = (event: { clientX: number; clientY: number }) =>
    instance.screenToFlowPosition({ x: event.clientX, y: event.clientY });
  useLinking.setState({ linking: { from, legal, to: undefined, at: spotOf(pointer), note: undefined } });

  const move = (event: PointerEvent) => {
    const at = spotOf(event);
    const under = thingAt(currentLayout(), at, REACH);
    const to = under !== undefined && legal.has(under) ? under : undefined;
    useLinking.setState({ linking: { from, legal, to, at, note: noteFor(game, from, under) } });
  };
  const up = () => {
    const to = useLinking.getState().linking?.to;
    cancelLinking();
    if (to === undefined) return;
    const id = freshId();
    if (useGame.getState().apply([{ type: 'link', id, from, to }])) useView.getState().select([], [id]);
  };
  stop = () => {
    stop = undefined;
    removeEventListener('pointermove', move);
    removeEventListener('pointerup', up);
    removeEventListener('pointercancel', cancelLinking);
    useLinking.setState({ linking: undefined });
  };
  addEventListener('pointermove', move);
  addEventListener('pointerup', up);
  addEventListener('pointercancel', cancelLinking);
}

function noteFor(game: Game, from: NodeId, to: NodeId | undefined): Linking['note'] {
  if (to === undefined || to === from) return undefined;
  const refusal = linkRefusal(game, from, to);
  if (refusal === undefined) {
    return { text: DRAGGING.linkTo(game.nodes.get(to)?.name ?? ''), refused: false };
  }
  return { text: plain(linkRefusalSentence(game, from, to, refusal)), refused: true };
}
