import { checkHead, checkNode } from '../faults.ts';
import { isObject, type JsonObject } from '../json.ts';
import type { Game, GameNode, NodeId } from '../model.ts';
import { badValue, type EditOf, type Outcome, unknownId } from './change.ts';

/** These have edits of their own. */
const NOT_FIELDS = ['id', 'kind', 'in', 'on', 'at', 'name', 'leftOut'];

/**
 * Fields set over those that are there. Objects (estimates, the lesson) are merged field by field, so that what this version
 * does not know of them stays; lists and all else are replaced. `undefined` takes a field away.
 */
function merged(old: JsonObject, fields: JsonObject): JsonObject {
  const next = new Map(Object.entries(old));
  for (const [key, value] of Object.entries(fields)) {
    const before = next.get(key);
    const after = isObject(before) && isObject(value) ? merged(before, value) : value;
    if (after === undefined) next.delete(key);
    else next.set(key, after);
  }
  return Object.fromEntries(next);
}

function withFields(game: Game, node: GameNode, fields: JsonObject): Outcome {
  const checked = checkNode(merged(node, fields));
  if (!checked.ok) return badValue(node.id, checked.field);
  return { ...game, nodes: new Map(game.nodes).set(node.id, checked.value) };
}

export function setFields(game: Game, { id, fields }: EditOf<'setFields'>): Outcome {
  const node = game.nodes.get(id);
  if (!node) return unknownId(id);
  const foreign = NOT_FIELDS.find((field) => Object.hasOwn(fields, field));
  return foreign === undefined ? withFields(game, node, fields) : badValue(id, foreign);
}

export function rename(game: Game, { id, name }: EditOf<'rename'>): Outcome {
  const node = game.nodes.get(id);
  return node ? withFields(game, node, { name }) : unknownId(id);
}

/** A default is never written: what is used again loses the field. */
export function leaveOut(game: Game, { ids, leftOut }: EditOf<'leaveOut'>): Outcome {
  const changed = new Map<NodeId, GameNode>();
  for (const id of new Set(ids)) {
    const node = game.nodes.get(id);
    if (!node) return unknownId(id);
    if ((node.leftOut === true) === leftOut) continue;
    const { leftOut: _, ...used } = node;
    changed.set(id, leftOut ? { ...node, leftOut } : used);
  }
  return changed.size === 0 ? game : { ...game, nodes: new Map([...game.nodes, ...changed]) };
}

/** Title, summary, lesson, objectives; the `id` of a refusal is '' for the head. */
export function setHead(game: Game, { fields }: EditOf<'setHead'>): Outcome {
  const checked = checkHead(merged(game.head, fields));
  return checked.ok ? { ...game, head: checked.value } : badValue('', checked.field);
}
