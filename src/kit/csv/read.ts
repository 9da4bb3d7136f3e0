/**
 * A table of things or of places. The separator is the one by which most columns are known (comma, semicolon, tab, bar); columns may stand in any order, and
 * those that mean nothing here are left away and told. A table with a wrong cell is refused as a whole, with every wrong cell and its line.
 */
import papa from 'papaparse';
import { ITEM_COLUMNS, PLACE_COLUMNS } from '../../words/kit-table.ts';
import { emptyKit, type KitItem, type RoomPlace } from '../model.ts';
import type { KitNote, KitProblem, KitReading } from '../problem.ts';
import { MOST_THINGS, type ReadKitOptions, refusal } from '../refusal.ts';
import { kitItem, roomPlace } from '../schema.ts';
import { unknownTypes } from '../unknown-types.ts';
import { splitBest, withoutSaying } from './headings.ts';
import { readItem } from './items.ts';
import { type Column, Line } from './line.ts';
import { readPlace } from './places.ts';

/** @param given the text of a file that is no JSON, without a byte order mark */
export function readTable(given: string, { newId }: ReadKitOptions): KitReading {
  const text = given.replace(/\r\n?/gu, '\n');
  const { separator, headings, head } = splitBest(text);
  if (!head) {
    return refusal({
      code: 'columnMissing',
      columns: [ITEM_COLUMNS.thing, PLACE_COLUMNS.place],
      found: headings.slice(0, 8),
    });
  }
  const { table, columns } = head;
  const names: Readonly<Record<string, string>> = table === 'items' ? ITEM_COLUMNS : PLACE_COLUMNS;
  const twice = columns.find((column, i) => column !== undefined && columns.indexOf(column) !== i);
  if (twice !== undefined) return refusal({ code: 'columnTwice', column: names[twice] ?? twice });

  const body = withoutSaying(text);
  const { data, errors } = papa.parse<string[]>(body, { delimiter: separator, newline: '\n' });
  let line = text.length === body.length ? 1 : 2;
  const lines = data.map((cells) => {
    const at = line;
    line += 1 + cells.reduce((sum, cell) => sum + cell.split('\n').length - 1, 0);
    return { cells, at };
  });
  const open = errors.find(({ code }) => code === 'MissingQuotes');
  if (open) return refusal({ code: 'openQuote', line: lines[open.row ?? 0]?.at ?? 1 });
  const rows = lines.slice(1).filter(({ cells }) => cells.some((cell) => cell.trim() !== ''));
  if (rows.length > MOST_THINGS) {
    const part = table === 'items' ? 'item' : 'place';
    return refusal({ code: 'tooMany', part, count: rows.length, limit: MOST_THINGS });
  }

  const problems: KitProblem[] = [];
  const items: KitItem[] = [];
  const places: RoomPlace[] = [];
  const ids = new Set<string>();
  const hasCount = columns.includes('count');
  for (const { cells, at } of rows) {
    const beyond = cells.slice(columns.length).filter((cell) => cell.trim() !== '');
    if (beyond.length > 0) {
      problems.push({ code: 'moreCells', line: at, columns: columns.length, cells: cells.length });
      continue;
    }
    const own = new Map<Column, string>();
    columns.forEach((column, i) => {
      if (column !== undefined) own.set(column, cells[i] ?? '');
    });
    const before = problems.length;
    const read = new Line(own, at, names, problems);
    const value = table === 'items' ? readItem(read, hasCount, newId) : readPlace(read, newId);
    if (problems.length > before) continue;
    const item = table === 'items' ? kitItem.safeParse(value) : roomPlace.safeParse(value);
    if (!item.success) {
      // Cells hold nothing that the schema refuses but ids: all else was looked at.
      read.wrong('id', { fault: 'missing' });
      continue;
    }
    if (ids.has(item.data.id)) problems.push({ code: 'lineTwice', line: at, id: item.data.id });
    ids.add(item.data.id);
    if ('what' in item.data) items.push(kitItem.parse(item.data));
    else places.push(roomPlace.parse(item.data));
  }
  if (problems.length > 0) return refusal(...problems);
  const ignored = head.headings.filter((heading, i) => columns[i] === undefined && heading !== '');
  const notes: KitNote[] = [
    ...(ignored.length > 0 ? [{ code: 'columnsIgnored', columns: ignored } as const] : []),
    ...(table === 'items' && !hasCount ? [{ code: 'countAssumed' } as const] : []),
    ...unknownTypes(items),
  ];
  return { ok: true, kit: { ...emptyKit, items, places }, notes };
}
