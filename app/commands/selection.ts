/** What the commands do with the selection. */
import { duplicateEdits, removeEdits } from '../../src/game/edits/copies.ts';
import type { Placement } from '../../src/game/edits/edit.ts';
import { isPinned, type NodeId, parentOf } from '../../src/game/model.ts';
import { ASK, TIDY_UP } from '../flow/tidy/parts.ts';
import { useGame } from '../store/game.ts';
import { freshId } from '../store/ids.ts';
import { currentLayout } from '../store/layout.ts';
import { useTidying } from '../store/tidying.ts';
import { useView } from '../store/view.ts';
import type { Situation } from './command.ts';
import { noteRemoval } from './removed.ts';

type Selection = Pick<Situation, 'game' | 'view'>;

/** Copies stand this far to the side of what they were copied from, in pixels of the map. */
export const BESIDE = { x: 32, y: 32 };

export function duplicateSelection(): void {
  const { game, apply } = useGame.getState();
  const { nodes, select } = useView.getState();
  const copies = duplicateEdits(game, nodes, freshId, BESIDE);
  if (apply(copies.edits)) select(copies.ids);
}

export function removeSelection(): void {
  const { game, apply } = useGame.getState();
  const { nodes, links, select } = useView.getState();
  if (!apply(removeEdits(game, nodes, links))) return;
  select([]);
  noteRemoval(game);
}

export function selectAll(): void {
  const { game } = useGame.getState();
  useView.getState().select(game.nodes.keys(), game.links.keys());
}

/** All that is selected is left out already. */
export function selectionLeftOut({ game, view }: Selection): boolean {
  const nodes = [...view.nodes].flatMap((id) => game.game.nodes.get(id) ?? []);
  return nodes.length > 0 && nodes.every((node) => node.leftOut === true);
}

export function leaveOutSelection(): void {
  const game = useGame.getState();
  const view = useView.getState();
  game.apply([{ type: 'leaveOut', ids: [...view.nodes], leftOut: !selectionLeftOut({ game, view }) }]);
}

/** What of the selection stands on the mat itself; what lies in trays goes where they go. */
export function standing({ game, view }: Selection): NodeId[] {
  return [...view.nodes].filter((id) => {
    const node = game.game.nodes.get(id);
    return node !== undefined && parentOf(node) === undefined;
  });
}

export function selectionPinned(now: Selection): boolean {
  const ids = standing(now);
  return ids.length > 0 && ids.every((id) => isPinned(now.game.game, id));
}

/** Pins what stands where it stands in the picture, also where the document does not say so yet. */
export function pinSelection(): void {
  const now = { game: useGame.getState(), view: useView.getState() };
  const ids = standing(now);
  const { slots } = currentLayout();
  const positions = ids.flatMap((id): Placement[] => {
    const slot = now.game.game.positions.has(id) ? undefined : slots.get(id);
    return slot ? [[id, { x: slot.x, y: slot.y }]] : [];
  });
  now.game.apply([
    { type: 'move', positions },
    { type: 'pin', ids, pinned: !selectionPinned(now) },
  ]);
}

/** Has what tidies loaded and its worker started, so that the first result comes at once. */
export async function prepareTidying(): Promise<void> {
  if (useTidying.getState().work) return;
  (await ASK.load())?.prepare();
}

/** Several things selected are tidied among themselves, else the whole map is; what is under way is stopped. */
export async function tidyOrStop(): Promise<void> {
  const { work, stop } = useTidying.getState();
  if (work === 'asked') return stop?.();
  const tidying = await TIDY_UP.ask();
  const { nodes } = useView.getState();
  tidying?.tidyUp(nodes.size > 1 ? nodes : undefined);
}
