/** Where a thing lies, in words. Teachers call a place 'Under the atlas shelf' as well as 'Window sill'. */
import type { Game, NodeId } from '../game/model.ts';
import { sayer, sentence } from './say.ts';
import type { Sentence } from './sentence.ts';

const SAYS_WHERE =
  /^(above|against|among|around|at|atop|behind|below|beneath|beside|between|by|in|inside|near|next to|on|opposite|outside|over|under|underneath|within)\s/iu;

/** A name that says 'in' or 'under' itself. */
export function saysWhere(name: string): boolean {
  return SAYS_WHERE.test(name.trim());
}

/** "in Red tin", "Under the atlas shelf". */
export function inText(name: string): string {
  return saysWhere(name) ? name : `in ${name}`;
}

/** The same as a sentence that leads there. */
export function inHolderOf(game: Game, holder: NodeId): Sentence {
  const name = game.nodes.get(holder)?.name ?? '';
  return sentence(saysWhere(name) ? '' : 'in ', sayer(game).name(holder));
}

/** "Point the team to Window sill", "Have the team look Under the atlas shelf". */
export function pointTo(game: Game, place: NodeId): Sentence {
  const name = game.nodes.get(place)?.name ?? '';
  return sentence(
    saysWhere(name) ? 'Have the team look ' : 'Point the team to ',
    sayer(game).name(place),
    '.',
  );
}

/** "Search Window sill", "Look Under the atlas shelf". */
export function search(game: Game, place: NodeId): Sentence {
  const name = game.nodes.get(place)?.name ?? '';
  return sentence(saysWhere(name) ? 'Look ' : 'Search ', sayer(game).name(place));
}
