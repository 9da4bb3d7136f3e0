/** Dragging a new thing onto the map from the edge of the page, and adding one by a click. */
import { create } from 'zustand';
import type { Edit, EditRefusal } from '../../../src/game/edits/edit.ts';
import type { Game, GameNode, Kind, NodeId } from '../../../src/game/model.ts';
import { isHolder } from '../../../src/game/model.ts';
import { freeSpot } from '../../../src/map/free-spot.ts';
import type { MapLayout } from '../../../src/map/layout.ts';
import {
  FREE_CONTAINER_WIDTH,
  FREE_THING_WIDTH,
  PLACE_WIDTH,
  PUZZLE_MIN_HEIGHT,
  PUZZLE_WIDTH,
  THING_HEIGHT,
} from '../../../src/map/sizes.ts';
import { DRAGGING, newName } from '../../../src/words/canvas.ts';
import { editRefusalSentence } from '../../../src/words/refusals.ts';
import { plain } from '../../../src/words/sentence.ts';
import { useGame } from '../../store/game.ts';
import { freshId } from '../../store/ids.ts';
import { currentLayout } from '../../store/layout.ts';
import { useView } from '../../store/view.ts';
import { contains, type Spot } from '../geometry.ts';
import { inView, useMounted } from '../viewport.ts';
import { letGo, useDrag } from './held.ts';
import { type Landing, landingAt, landingMark, landingRefusal } from './landing.ts';

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

/** A lock is a number lock until its form says otherwise. */
function newNode(kind: Kind, id: NodeId, on: NodeId | null): GameNode {
  const name = newName(kind);
  return kind === 'fastener' ? { id, name, kind, on: on ?? '', type: 'number' } : { id, name, kind };
}

/** Added, and then put where it was let go. */
function addEdits(kind: Kind, id: NodeId, { holder, before }: Landing, at: Spot): readonly Edit[] {
  const node = newNode(kind, id, holder);
  const position = { x: Math.round(at.x), y: Math.round(at.y) };
  const add: Edit = {
    type: 'add',
    nodes: [node],
    links: [],
    positions: holder === null ? [[id, position]] : [],
  };
  if (holder === null) return [add];
  if (kind === 'fastener') return [add, { type: 'fasten', ids: [id], on: holder, before }];
  return [add, { type: 'place', ids: [id], holder, before }];
}

/** Why it may not be let go there. Asked of the edits themselves, so that the answer is theirs. */
function refusalNote(game: Game, kind: Kind, landing: Landing): string | undefined {
  const id = freshId();
  const refusal: EditRefusal | undefined =
    kind === 'fastener' && landing.holder === null
      ? { reason: 'needsContainer', id }
      : landingRefusal(game, addEdits(kind, id, landing, { x: 0, y: 0 }));
  return refusal && plain(editRefusalSentence({ ...game, nodes: withNew(game, kind, id) }, refusal));
}

/** So that the sentence can speak of the kind of what is not there yet. */
function withNew(game: Game, kind: Kind, id: NodeId): Game['nodes'] {
  return new Map(game.nodes).set(id, newNode(kind, id, null));
}

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

function addAt(kind: Kind, landing: Landing, at: Spot): void {
  const { apply } = useGame.getState();
  const id = freshId();
  if (!apply(addEdits(kind, id, landing, at))) return;
  useView.getState().show([id]);
  useView.getState().askName(id);
}

/**
 * Adds a thing without dragging: into the selected tray where it can lie there, a lock onto the selected box,
 * else near the middle of what is in view. False when it may not be added (a lock with no box selected).
 */
export function addByClick(kind: Kind): boolean {
  const { game } = useGame.getState();
  const chosen = useView.getState().nodes;
  const only = chosen.size === 1 ? game.nodes.get([...chosen][0] ?? '') : undefined;
  const boxOf = only?.kind === 'fastener' ? only.on : only?.id;
  const tray = kind === 'fastener' ? boxOf : only && isHolder(only) ? only.id : undefined;
  const inTray: Landing = { holder: tray ?? null, before: null };
  const fits = refusalNote(game, kind, inTray) === undefined;
  if (!fits && kind === 'fastener') return false;
  const landing = fits ? inTray : { holder: null, before: null };
  addAt(kind, landing, freeSpot(currentLayout(), inView(), SIZES[kind]));
  return true;
}

/** About as large as a new thing of that kind is drawn. */
const SIZES: Readonly<Record<Kind, { readonly width: number; readonly height: number }>> = {
  place: { width: PLACE_WIDTH, height: 80 },
  container: { width: FREE_CONTAINER_WIDTH, height: 80 },
  fastener: { width: 0, height: 0 },
  key: { width: FREE_THING_WIDTH, height: THING_HEIGHT },
  clue: { width: FREE_THING_WIDTH, height: THING_HEIGHT },
  tool: { width: FREE_THING_WIDTH, height: THING_HEIGHT },
  puzzle: { width: PUZZLE_WIDTH, height: PUZZLE_MIN_HEIGHT },
  prize: { width: FREE_THING_WIDTH, height: THING_HEIGHT },
};
