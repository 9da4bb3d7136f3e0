/**
 * From the text of a file to a kit, or to a list of what is wrong and where: JSON as this program writes it, or a table (csv/). Nothing in a file
 * is ever executed, and nothing throws.
 */
import * as z from 'zod/mini';
import { isObject, type JsonObject, MAX_DEPTH, MAX_LIST } from '../game/json.ts';
import { FORMAT } from '../game/schema.ts';
import { expectedBy, foundAt } from '../game/shape-problems.ts';
import { type Path, tidyJson } from '../game/tidy-json.ts';
import { readTable } from './csv/read.ts';
import type { Kit, KitItem, RoomPlace } from './model.ts';
import type { KitProblem, KitReading, KitWhere } from './problem.ts';
import { MAX_KIT_LENGTH, MOST_THINGS, type ReadKitOptions, refusal } from './refusal.ts';
import { KIT_FORMAT, KIT_VERSION, kitFrame, kitItem, roomPlace } from './schema.ts';
import { unknownTypes } from './unknown-types.ts';

type List = 'items' | 'places';
const PARTS = { items: 'item', places: 'place' } as const;

function whereIs(raw: JsonObject, path: Path): KitWhere {
  const [list, index, ...rest] = path;
  if ((list !== 'items' && list !== 'places') || typeof index !== 'number') {
    return path.length === 0 ? { part: 'file' } : { part: 'file', field: path.join('.') };
  }
  const found = foundAt(raw, [list, index, list === 'items' ? 'label' : 'name']);
  const label =
    found.is === 'value' && typeof found.value === 'string' && found.value !== '' ? found.value : undefined;
  return {
    part: PARTS[list],
    number: index + 1,
    ...(label === undefined ? {} : { label }),
    ...(rest.length === 0 ? {} : { field: rest.join('.') }),
  };
}

function shapeProblems(raw: JsonObject, issues: readonly z.core.$ZodIssue[], base: Path): KitProblem[] {
  return issues.flatMap((issue) => {
    const path = [...base, ...issue.path.map((key) => (typeof key === 'symbol' ? String(key) : key))];
    const found = foundAt(raw, path);
    // A number that has overflowed is a problem of its own.
    if (found.is === 'value' && typeof found.value === 'number' && !Number.isFinite(found.value)) return [];
    return [{ code: 'shape' as const, where: whereIs(raw, path), expected: expectedBy(issue), found }];
  });
}

/** The members of a list that have the right shape; what comes without an id gets one. */
function members<T extends { readonly id: string }>(
  raw: JsonObject,
  list: List,
  shape: z.ZodMiniType<T>,
  newId: () => string,
  problems: KitProblem[],
): T[] {
  const given: unknown = raw[list];
  if (!Array.isArray(given)) return [];
  const seen = new Set<string>();
  const right: T[] = [];
  for (const [index, member] of given.entries()) {
    const named: unknown =
      isObject(member) && member['id'] === undefined ? { ...member, id: newId() } : member;
    const parsed = z.safeParse(shape, named);
    if (!parsed.success) {
      problems.push(...shapeProblems(raw, parsed.error.issues, [list, index]));
      continue;
    }
    const { id } = parsed.data;
    if (seen.has(id)) problems.push({ code: 'idTwice', where: whereIs(raw, [list, index]), id });
    seen.add(id);
    right.push(parsed.data);
  }
  return right;
}

function readJson(value: unknown, { newId }: ReadKitOptions): KitReading {
  const tidied = tidyJson(value, { depth: MAX_DEPTH, list: MAX_LIST });
  if (tidied.tooDeep) return refusal({ code: 'tooDeep', limit: MAX_DEPTH });
  if (!isObject(value)) return refusal({ code: 'otherJson' });
  const { format, version } = value;
  if (format === FORMAT) return refusal({ code: 'game' });
  if (format !== KIT_FORMAT) return refusal({ code: 'otherJson' });
  if (typeof version === 'number' && Number.isFinite(version) && version > KIT_VERSION) {
    return refusal({ code: 'newerVersion', version, known: KIT_VERSION });
  }
  for (const list of ['items', 'places'] as const) {
    const given = value[list];
    if (Array.isArray(given) && given.length > MOST_THINGS) {
      return refusal({ code: 'tooMany', part: PARTS[list], count: given.length, limit: MOST_THINGS });
    }
  }
  const problems: KitProblem[] = tidied.notFinite.map((path) => ({
    code: 'notFinite',
    where: whereIs(value, path),
  }));
  const frame = z.safeParse(kitFrame, value);
  if (!frame.success) problems.push(...shapeProblems(value, frame.error.issues, []));
  const items = members<KitItem>(value, 'items', kitItem, newId, problems);
  const places = members<RoomPlace>(value, 'places', roomPlace, newId, problems);
  if (!frame.success || problems.length > 0) return refusal(...problems);
  const kit: Kit = { ...frame.data, items, places };
  const dropped = tidied.dropped.length;
  return {
    ok: true,
    kit,
    notes: [
      ...(dropped > 0 ? [{ code: 'keysDropped', count: dropped } as const] : []),
      ...unknownTypes(items),
    ],
  };
}

/** A kit from JSON, or from a table of things or of places; what a table does not hold comes empty. */
export function readKit(text: string, options: ReadKitOptions): KitReading {
  if (text.length > MAX_KIT_LENGTH) {
    return refusal({ code: 'tooLarge', length: text.length, limit: MAX_KIT_LENGTH });
  }
  /** Spreadsheets and some editors put a byte order mark first. */
  const body = text.startsWith('\uFEFF') ? text.slice(1) : text;
  if (body.trim() === '') return refusal({ code: 'empty' });
  try {
    return readJson(JSON.parse(body), options);
  } catch (error) {
    if (!(error instanceof SyntaxError)) throw error;
    return /^\s*[[{]/u.test(body) ? refusal({ code: 'notJson' }) : readTable(body, options);
  }
}
