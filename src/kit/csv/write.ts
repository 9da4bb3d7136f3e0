/**
 * A table of things or of places for a spreadsheet: commas, CRLF and a byte order mark, by which spreadsheets know UTF-8 (RFC 4180). Columns of which no
 * line has anything are left away, but for the first ones. Nothing in it is taken for a formula (cells.ts). Fields that this version does not know are not in a table.
 */
import papa from 'papaparse';
import {
  ITEM_COLUMNS,
  type ItemColumn,
  NO,
  PLACE_COLUMNS,
  type PlaceColumn,
  TAKES_WORDS,
  YES,
} from '../../words/kit-table.ts';
import type { Kit, KitItem, RoomPlace } from '../model.ts';
import { guarded } from './cells.ts';
import { thingWords } from './things.ts';
import { writeWheels } from './wheels.ts';

type Cells<C extends string> = Partial<Record<C, string | number | boolean | undefined>>;

const ALWAYS_ITEMS: readonly ItemColumn[] = ['thing', 'label', 'count', 'wheels', 'id'];
const ALWAYS_PLACES: readonly PlaceColumn[] = ['place', 'zone', 'order', 'offLimits', 'id'];

function written(value: string | number | boolean | undefined): string {
  if (value === undefined) return '';
  if (typeof value === 'boolean') return value ? YES[0] : NO[0];
  return typeof value === 'number' ? String(value) : guarded(value);
}

function table<C extends string>(
  names: Readonly<Record<C, string>>,
  columns: readonly C[],
  always: readonly C[],
  rows: readonly Cells<C>[],
): string {
  const used = columns.filter(
    (column) => always.includes(column) || rows.some((row) => row[column] !== undefined),
  );
  const lines = rows.map((row) => used.map((column) => written(row[column])));
  const text = papa.unparse([used.map((column) => names[column]), ...lines], {
    delimiter: ',',
    newline: '\r\n',
  });
  return `\uFEFF${text}\r\n`;
}

function itemCells(item: KitItem): Cells<ItemColumn> {
  const { id, label, count, toBuy, note } = item;
  const common = { id, thing: thingWords(item), label, count, toBuy, note };
  switch (item.what) {
    case 'lock': {
      const { wheels, marks, shackleMm, clearanceMm, keyedAlike, keys } = item;
      const shown = wheels && writeWheels(wheels);
      return { ...common, wheels: shown, marks, shackleMm, clearanceMm, keyedAlike, keys };
    }
    case 'box': {
      const { takes, holeMm, roundMm } = item;
      return { ...common, takes: takes && TAKES_WORDS[takes], holeMm, roundMm };
    }
    case 'hasp':
      return { ...common, holes: item.holes, holeMm: item.holeMm };
    case 'tool':
      return { ...common, batteries: item.batteries, hazards: item.hazards?.join(', ') };
  }
}

function placeCells(place: RoomPlace): Cells<PlaceColumn> {
  const { id, name, zone, order, offLimits, note } = place;
  return { id, place: name, zone, order, offLimits, note };
}

export function writeItems(kit: Kit): string {
  const columns = Object.keys(ITEM_COLUMNS) as ItemColumn[];
  return table(ITEM_COLUMNS, columns, ALWAYS_ITEMS, kit.items.map(itemCells));
}

export function writePlaces(kit: Kit): string {
  const columns = Object.keys(PLACE_COLUMNS) as PlaceColumn[];
  return table(PLACE_COLUMNS, columns, ALWAYS_PLACES, kit.places.map(placeCells));
}
