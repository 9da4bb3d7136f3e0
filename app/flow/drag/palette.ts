/** Dragging a new thing onto the map from the edge of the page. */
import { create } from 'zustand';
import type { Game, Kind } from '../../../src/game/model.ts';
import type { MapLayout } from '../../../src/map/layout.ts';
import { DRAGGING } from '../../../src/words/canvas.ts';
import { useGame } from '../../store/game.ts';
import { freshId } from '../../store/ids.ts';
import { currentLayout } from '../../store/layout.ts';
import { contains, type Spot } from '../geometry.ts';
import { useMounted } from '../viewport.ts';
import { addAt, refusalNote, withNew } from './adding.ts';
import { letGo, useDrag } from './held.ts';
import { type Landing, landingAt, landingMark } from './landing.ts';

/** The new thing under the pointer, in the window's pixels. */
export interface Ghost {
  readonly kind: Kind;
  readonly x: number;
  readonly y: number;
  /** Over the map, where it would be added if it were let go. */
  readonly over: boolean;
}

export const usePalette = create<{ readonly ghost: Ghost | undefined }>()(() => ({ ghost: undefined }));

/** A click is no drag: the hand has to move by this much, in screen pixels. */
const TREMBLE = 5;

function landingFor(game: Game, kind: Kind, layout: MapLayout, spot: Spot): Landing {
  const id = freshId();
  const withGhost = { ...game, nodes: withNew(game, kind, id) };
  return landingAt(withGhost, layout, spot, [id], new Set([id]));
}

let stop: (() => void) | undefined;

/** Takes the ghost away again; nothing is added. */
export function cancelPaletteDrag(): boolean {
  if (!stop) return false;
  stop();
  return true;
}

/**
 * Follows the pointer from the press in the palette until it is let go: on the map the thing is added there, as one undo.
 * A press that never moves is left to the click.
 */
export function beginPaletteDrag(
  kind: Kind,
  press: { readonly clientX: number; readonly clientY: number },
): void {
  cancelPaletteDrag();
  const start = { x: press.clientX, y: press.clientY };
  let landing: Landing | undefined;

  const move = (event: PointerEvent) => {
    const at = { x: event.clientX, y: event.clientY };
    if (!usePalette.getState().ghost && Math.hypot(at.x - start.x, at.y - start.y) < TREMBLE) return;
    event.preventDefault();
    const { instance } = useMounted.getState();
    const layout = currentLayout();
    const over = isOverMap(at);
    usePalette.setState({ ghost: { kind, ...at, over } });
    if (!instance || !over) {
      landing = undefined;
      letGo();
      return;
    }
    const { game } = useGame.getState();
    const next = landingFor(game, kind, layout, instance.screenToFlowPosition(at));
    if (landing && landing.holder === next.holder && landing.before === next.before) return;
    landing = next;
    const refused = refusalNote(game, kind, next);
    const name = next.holder === null ? undefined : (game.nodes.get(next.holder)?.name ?? '');
    const say = kind === 'fastener' ? DRAGGING.onto : DRAGGING.into;
    useDrag.setState({
      target: refused === undefined ? (next.holder ?? undefined) : undefined,
      mark: refused === undefined ? landingMark(layout, next, new Set()) : undefined,
      note:
        refused !== undefined
          ? { text: refused, refused: true }
          : name === undefined
            ? undefined
            : { text: say(name), refused: false },
    });
  };

  const up = (event: PointerEvent) => {
    const { ghost } = usePalette.getState();
    const refused = useDrag.getState().note?.refused === true;
    const chosen = landing;
    cancelPaletteDrag();
    const { instance } = useMounted.getState();
    if (!ghost?.over || !chosen || refused || !instance) return;
    addAt(
      kind,
      chosen,
      cornerOf(kind, instance.screenToFlowPosition({ x: event.clientX, y: event.clientY })),
    );
  };

  stop = () => {
    stop = undefined;
    removeEventListener('pointermove', move);
    removeEventListener('pointerup', up);
    removeEventListener('pointercancel', cancelPaletteDrag);
    usePalette.setState({ ghost: undefined });
    letGo();
  };
  addEventListener('pointermove', move);
  addEventListener('pointerup', up);
  addEventListener('pointercancel', cancelPaletteDrag);
}

function isOverMap(at: Spot): boolean {
  const box = useMounted.getState().element?.getBoundingClientRect();
  return box !== undefined && contains(box, at);
}

/** The pointer holds it near its upper left. */
function cornerOf(kind: Kind, at: Spot): Spot {
  const hold = kind === 'place' || kind === 'container' ? { x: 60, y: 24 } : { x: 60, y: 14 };
  return { x: at.x - hold.x, y: at.y - hold.y };
}
