/** What stands in a table of my kit or my room: its columns, and words in its cells. Own words, in plain English. */

/** In the order in which they are written. */
export const ITEM_COLUMNS = {
  thing: 'Thing',
  label: 'Label',
  count: 'How many',
  wheels: 'Wheels',
  marks: 'Marks on dial',
  shackleMm: 'Shackle mm',
  clearanceMm: 'Room in shackle mm',
  keyedAlike: 'Key group',
  keys: 'Keys for each',
  takes: 'Kept shut by',
  holeMm: 'Hole mm',
  roundMm: 'Staple thickness mm',
  holes: 'Holes',
  batteries: 'Batteries',
  hazards: 'Hazards',
  toBuy: 'To buy',
  note: 'Note',
  id: 'Id',
} as const;

export const PLACE_COLUMNS = {
  place: 'Place',
  zone: 'Zone',
  order: 'Order of walk',
  offLimits: 'Off limits',
  note: 'Note',
  id: 'Id',
} as const;

export type ItemColumn = keyof typeof ITEM_COLUMNS;
export type PlaceColumn = keyof typeof PLACE_COLUMNS;

/** What else people head such a column with. Lower case, without signs. */
export const OTHER_HEADINGS: ReadonlyMap<string, ItemColumn | PlaceColumn> = new Map<
  string,
  ItemColumn | PlaceColumn
>([
  ['what', 'thing'],
  ['item', 'thing'],
  ['kind', 'thing'],
  ['type', 'thing'],
  ['count', 'count'],
  ['number', 'count'],
  ['quantity', 'count'],
  ['amount', 'count'],
  ['qty', 'count'],
  ['colour', 'label'],
  ['shackle', 'shackleMm'],
  ['hole', 'holeMm'],
  ['notes', 'note'],
  ['hiding place', 'place'],
  ['spot', 'place'],
  ['room', 'zone'],
  ['order', 'order'],
  // What was written before.
  ['walk', 'order'],
  ['numbers on dial', 'marks'],
  ['keys alike with', 'keyedAlike'],
  ['shackle goes round mm', 'roundMm'],
  ['can hurt by', 'hazards'],
]);

/** Things that are no lock; what they are called in a table first, then what else is understood. */
export const THINGS = {
  box: ['box', 'boxes', 'bag', 'bags', 'tin', 'tins', 'case', 'cases', 'box, tin or bag'],
  hasp: ['hasp', 'hasps'],
  tool: ['tool', 'tools', 'lamp', 'lamps', 'lamp or tool'],
} as const;

/** Tools that are known by their own name, which is then the label where the table has none. */
export const TOOLS_BY_NAME = ['UV lamp', 'torch', 'magnifier', 'mirror'] as const;

/** What else a lock is called than by the name of its type. */
export const OTHER_LOCKS: ReadonlyMap<string, string> = new Map([
  ['padlock', 'key'],
  ['padlock with key', 'key'],
  ['combination lock', 'number'],
  ['letter lock', 'word'],
  ['colour lock', 'picture'],
  ['device', 'typed'],
  ['tablet', 'typed'],
]);

/** A lock of a type that has no name here. */
export const OF_TYPE = 'lock of type ';

export const TAKES_WORDS = { nothing: 'lid', lock: 'one lock', hasp: 'hasp' } as const;
/** What else is understood there. */
export const OTHER_TAKES: ReadonlyMap<string, 'nothing' | 'lock' | 'hasp'> = new Map([
  ['nothing', 'nothing'],
  ['none', 'nothing'],
  ['no lock', 'nothing'],
  ['lock', 'lock'],
  ['a lock', 'lock'],
  ['1 lock', 'lock'],
  ['a hasp', 'hasp'],
]);

export const YES = ['yes', 'y', 'true', '1', 'x', '✓', '✔'] as const;
export const NO = ['no', 'n', 'false', '0', '-', '–'] as const;
