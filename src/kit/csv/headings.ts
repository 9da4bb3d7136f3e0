/** Which table it is, and which of its columns are known. */
import papa from 'papaparse';
import {
  ITEM_COLUMNS,
  type ItemColumn,
  OTHER_HEADINGS,
  PLACE_COLUMNS,
  type PlaceColumn,
} from '../../words/kit-table.ts';
import { plainWords } from '../fit/suits.ts';
import { unguarded } from './cells.ts';
import type { Column } from './line.ts';

const SEPARATORS = [',', ';', '\t', '|'];
/** In no text: the whole line is one cell. */
const NO_SEPARATOR = '\u001F';
/** Spreadsheets may say in a first line which separator they mean. */
const SAYS_SEPARATOR = /^sep=(.)[ \t]*\n/iu;

const ITEMS = Object.keys(ITEM_COLUMNS) as ItemColumn[];
const PLACES = Object.keys(PLACE_COLUMNS) as PlaceColumn[];

const HEADINGS: Readonly<Record<'items' | 'places', ReadonlyMap<string, Column>>> = {
  items: new Map(ITEMS.map((column) => [plainHeading(ITEM_COLUMNS[column]), column])),
  places: new Map(PLACES.map((column) => [plainHeading(PLACE_COLUMNS[column]), column])),
};

function plainHeading(name: string): string {
  return plainWords(unguarded(name).replace(/[^\p{L}\p{N}\s]+/gu, ' '));
}

/** Which column a heading means, in a table of either sort. */
function columnOf(heading: string, table: 'items' | 'places'): Column | undefined {
  const words = plainHeading(heading);
  const own = HEADINGS[table].get(words);
  if (own) return own;
  if (words === 'name') return table === 'items' ? 'label' : 'place';
  const other = OTHER_HEADINGS.get(words);
  return other !== undefined && [...HEADINGS[table].values()].includes(other) ? other : undefined;
}

/** The column that a table cannot do without. */
const MAIN = { items: 'thing', places: 'place' } as const;

export interface Headed {
  readonly table: 'items' | 'places';
  readonly columns: readonly (Column | undefined)[];
  readonly headings: readonly string[];
}

function headed(headings: readonly string[]): Headed | undefined {
  for (const table of ['items', 'places'] as const) {
    const columns = headings.map((heading) => columnOf(heading, table));
    if (columns.includes(MAIN[table])) return { table, columns, headings };
  }
  return undefined;
}

function known({ columns }: Pick<Headed, 'columns'>): number {
  return columns.filter((column) => column !== undefined).length;
}

export interface Split {
  readonly separator: string;
  readonly headings: readonly string[];
  readonly head: Headed | undefined;
}

function firstLine(text: string, separator: string): Split {
  const { data } = papa.parse<string[]>(text, { delimiter: separator, newline: '\n', preview: 1 });
  const headings = (data[0] ?? []).map((heading) => heading.trim());
  return { separator, headings, head: headed(headings) };
}

/** The separator by which most columns are known, none where that is as good; of those that know none, the one that makes most cells. */
export function splitBest(text: string): Split {
  const said = SAYS_SEPARATOR.exec(text)?.[1];
  const splits = (said === undefined ? [NO_SEPARATOR, ...SEPARATORS] : [said]).map((separator) =>
    firstLine(withoutSaying(text), separator),
  );
  const rank = ({ head, headings }: Split) => (head ? 1000 * known(head) : 0) + headings.length;
  return splits.reduce((best, split) => (rank(split) > rank(best) ? split : best));
}

/** The text without that first line. */
export function withoutSaying(text: string): string {
  return text.replace(SAYS_SEPARATOR, '');
}
