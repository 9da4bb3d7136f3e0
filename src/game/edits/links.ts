import { checkLink } from '../faults.ts';
import { linkRefusal } from '../links.ts';
import type { Game, GameLink } from '../model.ts';
import { badValue, type EditOf, type Outcome, refuse, unknownId } from './change.ts';

/** Adds a link to a game whose nodes are there already; what may not be is refused. */
export function addLink(game: Game, link: GameLink): Outcome {
  const { id, from, to } = link;
  const checked = checkLink(link);
  if (!checked.ok) return badValue(id, checked.field);
  if (game.links.has(id)) return refuse({ reason: 'taken', id });
  const refusal = linkRefusal(game, from, to);
  if (refusal) return refuse({ reason: 'link', from, to, refusal });
  return { ...game, links: new Map(game.links).set(id, checked.value) };
}

export function link(game: Game, { id, from, to, at }: EditOf<'link'>): Outcome {
  return addLink(game, at === undefined ? { id, from, to } : { id, from, to, at });
}

export function unlink(game: Game, edit: EditOf<'unlink'>): Outcome {
  const links = new Map(game.links);
  for (const id of new Set(edit.ids)) {
    if (!links.delete(id)) return unknownId(id);
  }
  return { ...game, links };
}

/** Says which positions of the code the link's answer fills; undefined: the whole code. */
export function setLink(game: Game, { id, at }: EditOf<'setLink'>): Outcome {
  const old = game.links.get(id);
  if (!old) return unknownId(id);
  const { at: _, ...whole } = old;
  const checked = checkLink(at === undefined ? whole : { ...whole, at });
  if (!checked.ok) return badValue(id, checked.field);
  return { ...game, links: new Map(game.links).set(id, checked.value) };
}
