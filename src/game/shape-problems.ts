/** What the schema found wrong, told as what was expected, what was found, and where. */
import type * as z from 'zod/mini';
import { isObject, type JsonObject } from './json.ts';
import type { Expected, Found, Where } from './problem.ts';
import type { ProblemList } from './problem-list.ts';
import type { Path } from './tidy-json.ts';

type Issue = z.core.$ZodIssue;

/** The value at a path, and whether there is one. */
function lookUp(raw: unknown, path: readonly PropertyKey[]): { readonly value: unknown } | undefined {
  let value: unknown = raw;
  for (const key of path) {
    if (Array.isArray(value)) value = value[Number(key)];
    else if (isObject(value) && Object.hasOwn(value, key)) value = value[String(key)];
    else return undefined;
  }
  return { value };
}

function textIn(value: unknown, field: string): string | undefined {
  const found = isObject(value) && Object.hasOwn(value, field) ? value[field] : undefined;
  return typeof found === 'string' && found !== '' ? found : undefined;
}

/** The place of a path in a file, with the names that a person knows it by. */
export function whereIs(raw: JsonObject, path: Path): Where {
  const [list, index, ...rest] = path;
  if ((list !== 'nodes' && list !== 'links') || typeof index !== 'number') {
    return path.length === 0 ? { part: 'file' } : { part: 'file', field: path.join('.') };
  }
  const value = lookUp(raw, [list, index])?.value;
  const known = Object.fromEntries(
    ['id', 'name', 'kind'].flatMap((field) => {
      const text = textIn(value, field);
      return text === undefined ? [] : [[field, text]];
    }),
  );
  return {
    part: list === 'nodes' ? 'node' : 'link',
    number: index + 1,
    ...known,
    ...(rest.length === 0 ? {} : { field: rest.join('.') }),
  };
}

/** What stands at a path. */
export function foundAt(raw: JsonObject, path: readonly PropertyKey[]): Found {
  const at = lookUp(raw, path);
  if (!at || at.value === undefined) return { is: 'missing' };
  const { value } = at;
  if (Array.isArray(value)) return { is: 'list' };
  return typeof value === 'string' ||
    typeof value === 'number' ||
    typeof value === 'boolean' ||
    value === null
    ? { is: 'value', value }
    : { is: 'object' };
}

const EXPECTED_TYPES: ReadonlyMap<string, Expected> = new Map<string, Expected>([
  ['string', { is: 'text' }],
  ['number', { is: 'number' }],
  ['int', { is: 'wholeNumber' }],
  ['boolean', { is: 'trueOrFalse' }],
  ['array', { is: 'list' }],
  ['object', { is: 'object' }],
  ['never', { is: 'nothing' }],
]);

/** What the schema wanted. */
export function expectedBy(issue: Issue): Expected {
  switch (issue.code) {
    case 'invalid_type':
      return EXPECTED_TYPES.get(issue.expected) ?? { is: 'object' };
    case 'invalid_value':
      return {
        is: 'oneOf',
        values: issue.values.map((value) => (typeof value === 'number' ? value : String(value))),
      };
    case 'too_small': {
      const least = Number(issue.minimum);
      if (issue.origin === 'string') return { is: 'someText' };
      if (issue.origin === 'array') return { is: 'members', least };
      return { is: issue.inclusive === false ? 'above' : 'atLeast', limit: least };
    }
    case 'too_big':
      return { is: 'atMost', limit: Number(issue.maximum) };
    case 'invalid_union': {
      if ('options' in issue) return { is: 'oneOf', values: (issue.options ?? []).map(String) };
      const options = issue.errors.flatMap((errors) => errors.slice(0, 1).map((one) => expectedBy(one)));
      return { is: 'either', options };
    }
    default:
      return { is: 'object' };
  }
}

/** @param base the path that the issues' own paths start from */
export function addShapeProblems(
  raw: JsonObject,
  issues: readonly Issue[],
  base: Path,
  problems: ProblemList,
): void {
  for (const issue of issues) {
    const path = [...base, ...issue.path.map((key) => (typeof key === 'symbol' ? String(key) : key))];
    const found = foundAt(raw, path);
    /** A number that has overflowed is a problem of its own. */
    if (found.is === 'value' && typeof found.value === 'number' && !Number.isFinite(found.value)) continue;
    problems.add(() => ({ code: 'shape', where: whereIs(raw, path), expected: expectedBy(issue), found }));
  }
}
