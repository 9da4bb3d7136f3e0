/** What a thing is called in a table: the name of a type of lock, or one of the other words that are understood. */
import { FASTENER_TYPES, isKnownType } from '../../fasteners/index.ts';
import { lockName } from '../../words/kinds.ts';
import {
  OF_TYPE,
  OTHER_LOCKS,
  OTHER_TAKES,
  TAKES_WORDS,
  THINGS,
  TOOLS_BY_NAME,
} from '../../words/kit-table.ts';
import { plainWords } from '../fit/suits.ts';
import type { ItemOf, KitItem, What } from '../model.ts';

/** Beside what it is, what its words say of it: "hasp, 6 holes", "UV lamp". Cells of their own come first. */
export type Thing = (
  | { readonly what: 'lock'; readonly type: string }
  | { readonly what: Exclude<What, 'lock'> }
) & { readonly label?: string; readonly number?: number };
type Takes = NonNullable<ItemOf<'box'>['takes']>;

/** A latch is a part of its box and in no cupboard. */
const LOCKS = FASTENER_TYPES.filter(({ opensWith }) => opensWith !== 'nothing').map(({ type }) => type);

/** As they are written, for a sentence that lists them. */
export const THING_WORDS: readonly string[] = [
  ...LOCKS.map(lockName),
  ...Object.values(THINGS).map(([first]) => first),
];

export function thingWords(item: KitItem): string {
  if (item.what !== 'lock') return THINGS[item.what][0];
  return isKnownType(item.type) ? lockName(item.type) : `${OF_TYPE}${item.type}`;
}

const WITH_NUMBER = /^(.*), ([1-9]\d{0,2}) (?:wheels?|marks|holes?)$/u;

export function readThing(cell: string): Thing | undefined {
  const [, named, number] = WITH_NUMBER.exec(plainWords(cell)) ?? [];
  if (named !== undefined && number !== undefined) {
    const thing = readThing(named);
    return thing && { ...thing, number: Number(number) };
  }
  const words = plainWords(cell).replace(/-/gu, ' ');
  const singular = words.replace(/locks$/u, 'lock');
  for (const type of LOCKS) {
    const name = lockName(type).replace(/-/gu, ' ');
    if (singular === name || words === type) return { what: 'lock', type };
  }
  const other = OTHER_LOCKS.get(singular) ?? OTHER_LOCKS.get(words);
  if (other !== undefined) return { what: 'lock', type: other };
  for (const what of ['box', 'hasp', 'tool'] as const) {
    if (THINGS[what].some((word) => word === words)) return { what };
  }
  const tool = TOOLS_BY_NAME.find((name) => plainWords(name) === words);
  if (tool !== undefined) return { what: 'tool', label: tool };
  const text = cell.trim();
  const isOfType = text.toLowerCase().startsWith(OF_TYPE) && text.length > OF_TYPE.length;
  return isOfType ? { what: 'lock', type: text.slice(OF_TYPE.length) } : undefined;
}

export const TAKES_OPTIONS: readonly string[] = Object.values(TAKES_WORDS);

export function readTakes(cell: string): Takes | undefined {
  const words = plainWords(cell);
  for (const takes of ['nothing', 'lock', 'hasp'] as const) if (TAKES_WORDS[takes] === words) return takes;
  return OTHER_TAKES.get(words);
}
