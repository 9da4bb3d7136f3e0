/**
 * Which place of the room stands for which hiding place of a game: an assignment of least cost, never to a place that is off limits.
 *
 * Cost of a hiding place g in a place r of the room, in whole numbers so that sums are exact:
 *   0                                       where both have the same name (wording.ts, normalisedName)
 *   A + L · (1 − likeness) + W · (w(g) − w(r))²   else
 *   N                                       where none is taken
 * likeness: of the words of both names, 0 to 1; the zone of r counts for half. w: how far along the walk, (number − ½) / count: for g in the order of play
 * of the game, for r in the walk of the room. A is so large that no sum of the rest outweighs one same name, N that nothing is left without a place
 * while one is free; of free places without a word in common the order of both walks decides, since a square makes crossing dearer.
 */
import { assign } from '../assignment.ts';
import type { RoomPlace } from '../model.ts';
import { likeness, normalisedName, tellingWords } from './wording.ts';

const LIKENESS = 100_000;
const WALK = 10_000;
/** For so many hiding places the sum of all other costs stays below it. */
const MOST = 1000;
const OTHER_NAME = MOST * (LIKENESS + WALK);
const NO_PLACE = MOST * 4 * OTHER_NAME;

/** A hiding place to be found a place for. */
export interface Wanted<Id> {
  readonly id: Id;
  readonly name: string;
}

/** In the order of a walk through the room; places without an order come last, as they stand in the list. Off limits left out. */
export function walkOf(places: readonly RoomPlace[]): readonly RoomPlace[] {
  const order = (place: RoomPlace) => place.order ?? Number.POSITIVE_INFINITY;
  return places
    .filter(({ offLimits }) => offLimits !== true)
    .map((place, i) => ({ place, i }))
    .sort((a, b) => (order(a.place) === order(b.place) ? a.i - b.i : order(a.place) - order(b.place)))
    .map(({ place }) => place);
}

const along = (i: number, count: number) => (i + 0.5) / count;

/**
 * The place of each, where there is one for it. The same for the same names in the same order, and what is left of it when some of both are taken away.
 * @param wanted in the order of play
 */
export function matchPlaces<Id>(
  wanted: readonly Wanted<Id>[],
  places: readonly RoomPlace[],
): ReadonlyMap<Id, RoomPlace> {
  const walk = walkOf(places);
  const names = walk.map(({ name }) => normalisedName(name));
  const words = walk.map(({ name }) => tellingWords(name));
  const zones = walk.map(({ zone }) => tellingWords(zone ?? ''));
  const wantedNames = wanted.map(({ name }) => normalisedName(name));
  const wantedWords = wanted.map(({ name }) => tellingWords(name));
  const cost = (row: number, column: number): number => {
    // Beyond the places of the room: none.
    if (column >= walk.length) return NO_PLACE;
    if (wantedNames[row] !== '' && wantedNames[row] === names[column]) return 0;
    const none: ReadonlySet<string> = new Set();
    const like = likeness(wantedWords[row] ?? none, words[column] ?? none, zones[column]);
    const off = along(row, wanted.length) - along(column, walk.length);
    return OTHER_NAME + Math.round(LIKENESS * (1 - like) + WALK * off * off);
  };
  const columns = assign(wanted.length, walk.length + wanted.length, cost);
  const matched = new Map<Id, RoomPlace>();
  for (const [row, { id }] of wanted.entries()) {
    const place = walk[columns[row] ?? -1];
    if (place) matched.set(id, place);
  }
  return matched;
}

/** The place of the room that has this name, off limits or not. */
export function namesake(places: readonly RoomPlace[], name: string): RoomPlace | undefined {
  const wanted = normalisedName(name);
  return wanted === '' ? undefined : places.find((place) => normalisedName(place.name) === wanted);
}

/** Places that no hiding place has the name of, in the order of the walk. */
export function freePlaces(places: readonly RoomPlace[], names: Iterable<string>): readonly RoomPlace[] {
  const taken = new Set(Array.from(names, normalisedName));
  return walkOf(places).filter(({ name }) => !taken.has(normalisedName(name)));
}
