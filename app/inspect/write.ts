/** How the forms change the game: one field at a time, all that is typed into one field being one undo. */
import type { NodeField } from '../../src/game/edits/edit.ts';
import type { NodeId } from '../../src/game/model.ts';
import { useGame } from '../store/game.ts';

/** `undefined` takes the field away, so that its default holds. */
export function typeField(id: NodeId, field: NodeField, value: unknown): void {
  useGame.getState().apply([{ type: 'setFields', id, fields: { [field]: value } }], `${field} ${id}`);
}

/** A choice, made at once: an undo of its own. */
export function chooseField(id: NodeId, field: NodeField, value: unknown): void {
  useGame.getState().apply([{ type: 'setFields', id, fields: { [field]: value } }]);
}
