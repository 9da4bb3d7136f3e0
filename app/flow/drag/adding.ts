/** A new thing: what adding it does, why it may not be added there, and adding one by a click. */
import type { Edit, EditRefusal } from '../../../src/game/edits/edit.ts';
import type { Game, GameNode, Kind, NodeId } from '../../../src/game/model.ts';
import { isHolder } from '../../../src/game/model.ts';
import { freeSpot } from '../../../src/map/free-spot.ts';
import {
  FREE_CONTAINER_WIDTH,
  FREE_THING_WIDTH,
  PLACE_WIDTH,
  PUZZLE_MIN_HEIGHT,
  PUZZLE_WIDTH,
  THING_HEIGHT,
} from '../../../src/map/sizes.ts';
import { newName } from '../../../src/words/canvas.ts';
import { editRefusalSentence } from '../../../src/words/refusals.ts';
import { plain } from '../../../src/words/sentence.ts';
import { useGame } from '../../store/game.ts';
import { freshId } from '../../store/ids.ts';
import { currentLayout } from '../../store/layout.ts';
import { useView } from '../../store/view.ts';
import type { Spot } from '../geometry.ts';
import { inView } from '../viewport.ts';
import { type Landing, landingRefusal } from './landing.ts';

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
export function refusalNote(game: Game, kind: Kind, landing: Landing): string | undefined {
  const id = freshId();
  const refusal: EditRefusal | undefined =
    kind === 'fastener' && landing.holder === null
      ? { reason: 'needsContainer', id }
      : landingRefusal(game, addEdits(kind, id, landing, { x: 0, y: 0 }));
  return refusal && plain(editRefusalSentence({ ...game, nodes: withNew(game, kind, id) }, refusal));
}

/** So that the sentence can speak of the kind of what is not there yet. */
export function withNew(game: Game, kind: Kind, id: NodeId): Game['nodes'] {
  return new Map(game.nodes).set(id, newNode(kind, id, null));
}

/** Adds it, brings it into view and asks for its name. */
export function addAt(kind: Kind, landing: Landing, at: Spot): void {
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
