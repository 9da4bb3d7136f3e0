/**
 * One change taken back after others have been made: every field that it changed and that is still as it left it gets its old value, what it added goes, what it
 * removed comes back. Linear in the game.
 */
import type { Edit, NodeFields } from '../../game/edits/edit.ts';
import { sameJson } from '../../game/json.ts';
import { type Game, type GameNode, type NodeId, parentOf } from '../../game/model.ts';

/** These have edits of their own. */
const APART = new Set(['id', 'kind', 'in', 'on', 'name', 'leftOut']);

type Fields = ReadonlyMap<string, unknown>;
const fieldsOf = (node: GameNode): Fields => new Map(Object.entries(node));

/** Undefined: something of it has been changed since. */
function nodeBack(before: GameNode, after: GameNode, now: GameNode): Edit[] | undefined {
  const [old, made, current] = [fieldsOf(before), fieldsOf(after), fieldsOf(now)];
  const changed = [...new Set([...old.keys(), ...made.keys()])].filter(
    (field) => !sameJson(old.get(field), made.get(field)),
  );
  if (changed.some((field) => !sameJson(current.get(field), made.get(field)))) return undefined;
  const { id } = before;
  const edits: Edit[] = [];
  if (changed.includes('name')) edits.push({ type: 'rename', id, name: before.name });
  if (changed.includes('leftOut'))
    edits.push({ type: 'leaveOut', ids: [id], leftOut: before.leftOut === true });
  if (changed.includes('in'))
    edits.push({ type: 'place', ids: [id], holder: parentOf(before) ?? null, before: null });
  if (changed.includes('on'))
    edits.push({ type: 'fasten', ids: [id], on: parentOf(before) ?? '', before: null });
  const fields = changed.filter((field) => !APART.has(field));
  // Objects are merged where they are set, so that what is to go is taken away first.
  const cleared: NodeFields = Object.fromEntries(fields.map((field) => [field, undefined]));
  const restored: NodeFields = Object.fromEntries(fields.map((field) => [field, old.get(field)]));
  if (fields.length > 0)
    edits.push({ type: 'setFields', id, fields: cleared }, { type: 'setFields', id, fields: restored });
  return edits;
}

/** Undefined where what it changed has been changed again, or is gone. */
export function takeBack(before: Game, after: Game, now: Game): readonly Edit[] | undefined {
  const edits: Edit[] = [];
  const added = (
    list: ReadonlyMap<string, unknown>,
    old: ReadonlyMap<string, unknown>,
    there: ReadonlyMap<string, unknown>,
  ) => [...list.keys()].filter((id) => !old.has(id) && there.has(id));
  const links = added(after.links, before.links, now.links);
  const nodes: NodeId[] = added(after.nodes, before.nodes, now.nodes);
  if (links.length > 0) edits.push({ type: 'unlink', ids: links });
  if (nodes.length > 0) edits.push({ type: 'remove', nodes, links: [] });
  const lost = [...before.nodes.values()].filter(({ id }) => !after.nodes.has(id));
  if (lost.length > 0) edits.push({ type: 'add', nodes: lost, links: [], positions: [] });
  for (const [id, old] of before.nodes) {
    const made = after.nodes.get(id);
    if (!made || sameJson(old, made)) continue;
    const current = now.nodes.get(id);
    const back = current && nodeBack(old, made, current);
    if (!back) return undefined;
    edits.push(...back);
  }
  for (const [id, old] of before.links) {
    const made = after.links.get(id);
    if (made && sameJson(old, made)) continue;
    const { from, to, at } = old;
    if (!made) edits.push({ type: 'link', id, from, to, ...(at && { at }) });
    else if (now.links.has(id)) edits.push({ type: 'setLink', id, at });
    else return undefined;
  }
  return edits;
}
