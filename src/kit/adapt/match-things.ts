/**
 * Which thing of the cupboard stands for which box, tool or key lock of a game, as far as their names say so: an assignment of least cost. Which lock really
 * goes where is settled by the fit of the kit; here it is only asked what is to be called otherwise.
 *
 * Cost of a thing for an item, in whole numbers: 0 for the same name; else 1,000,000 + 1000 · (1 − likeness of the words), and for a colour that is not the same 400 more;
 * none: twice that. Things and items without a word in common are no pair, but for
 * locks, whose colour is all that tells them apart, and for labels that are but a colour.
 */
import { assign } from '../assignment.ts';
import type { KitItem } from '../model.ts';
import { coloursIn, isSameColour } from './colours.ts';
import { likeness, normalisedName, tellingWords } from './wording.ts';

const OTHER_NAME = 1_000_000;
const LIKENESS = 1000;
const OTHER_COLOUR = 400;
const NONE = 2 * (OTHER_NAME + LIKENESS + OTHER_COLOUR);

export interface Called<Id> {
  readonly id: Id;
  readonly name: string;
}

function costOf(name: string, { label, what }: KitItem): number | undefined {
  const own = normalisedName(name);
  if (own !== '' && own === normalisedName(label)) return 0;
  const words = tellingWords(label);
  const like = likeness(tellingWords(name), words);
  const [one] = coloursIn(name);
  const [other] = coloursIn(label);
  // A label that is but a colour ('red') can be on anything.
  const isMark = other !== undefined && words.size === 1;
  if (like === 0 && what !== 'lock' && !isMark) return undefined;
  const differs = one !== undefined && other !== undefined && !isSameColour(one, other);
  return OTHER_NAME + Math.round(LIKENESS * (1 - like)) + (differs ? OTHER_COLOUR : 0);
}

/** Each item stands for one thing, however many there are of it: two boxes of one name would be mistaken for each other. */
export function matchThings<Id>(
  things: readonly Called<Id>[],
  items: readonly KitItem[],
): ReadonlyMap<Id, KitItem> {
  const units = items.filter(({ count }) => count > 0);
  const cost = (row: number, column: number): number => {
    const [thing, item] = [things[row], units[column]];
    return (thing && item && costOf(thing.name, item)) ?? NONE;
  };
  const columns = assign(things.length, units.length + things.length, cost);
  const matched = new Map<Id, KitItem>();
  for (const [row, { id, name }] of things.entries()) {
    const item = units[columns[row] ?? -1];
    if (item && costOf(name, item) !== undefined) matched.set(id, item);
  }
  return matched;
}
