/**
 * Named edits applied: a list of them is one gesture, done whole or not at all, and one undo. Adding an edit means a line in
 * edit.ts, a reducer beside it and a line in the table here.
 */
import { applyPatches, castDraft, enableMapSet, enablePatches, type Patch, produceWithPatches } from 'immer';
import { sameJson } from '../json.ts';
import type { Game } from '../model.ts';
import { add } from './add.ts';
import { type EditOf, isRefused, type Outcome } from './change.ts';
import type { Edit, EditResult } from './edit.ts';
import { fasten } from './fasten.ts';
import { leaveOut, rename, setFields, setHead } from './fields.ts';
import { link, setLink, unlink } from './links.ts';
import { move } from './move.ts';
import { pin } from './pin.ts';
import { place } from './place.ts';
import { remove } from './remove.ts';

enableMapSet();
enablePatches();

type Reducers = { readonly [T in Edit['type']]: (game: Game, edit: EditOf<T>) => Outcome };

const REDUCERS: Reducers = {
  add,
  place,
  fasten,
  move,
  pin,
  link,
  unlink,
  setLink,
  rename,
  setFields,
  leaveOut,
  remove,
  setHead,
};

function reduce<T extends Edit['type']>(game: Game, edit: EditOf<T> & { readonly type: T }): Outcome {
  return REDUCERS[edit.type](game, edit);
}

/** Makes the one map hold what the other holds, touching only what differs. */
function bringTo<V>(
  draft: Map<string, V>,
  before: ReadonlyMap<string, V>,
  after: ReadonlyMap<string, V>,
): void {
  if (before === after) return;
  for (const id of before.keys()) if (!after.has(id)) draft.delete(id);
  for (const [id, value] of after) if (!sameJson(before.get(id), value)) draft.set(id, value);
}

/**
 * Applies edits one after the other. Nodes, links and positions that no edit touches stay the same objects, and so do the maps:
 * after moves alone `nodes` and `links` are the very maps of before. An edit that changes nothing gives no patch.
 * The first edit that would make the document illegal refuses the whole list.
 */
export function applyEdits(game: Game, edits: readonly Edit[]): EditResult {
  let next = game;
  for (const edit of edits) {
    const outcome = reduce(next, edit);
    if (isRefused(outcome)) return { ok: false, refusal: outcome.refusal };
    next = outcome;
  }
  const after = castDraft(next);
  const before = castDraft(game);
  const [result, patches, inverse] = produceWithPatches(game, (draft) => {
    if (!sameJson(before.head, after.head)) draft.head = after.head;
    bringTo(draft.nodes, before.nodes, after.nodes);
    bringTo(draft.links, before.links, after.links);
    bringTo(draft.positions, before.positions, after.positions);
  });
  return { ok: true, game: result, patches, inverse };
}

/** Undo with an edit's `inverse`, redo with its `patches`; on the game that they were made for. */
export function applyPatchesTo(game: Game, patches: readonly Patch[]): Game {
  return applyPatches(game, [...patches]);
}
