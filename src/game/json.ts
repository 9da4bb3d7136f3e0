/** Plain JSON values: what may stand in a document, and when two of them are the same. */

/** Objects and lists within each other. Beyond it nothing is a game, and readers that recurse run out of stack. */
export const MAX_DEPTH = 100;

/** Members of a list. Ten times what the largest game has of anything. */
export const MAX_LIST = 100_000;

/** For one value that an edit brings, so that the document around it stays within MAX_DEPTH. */
const MAX_VALUE_DEPTH = 50;

export type JsonObject = { [key: string]: unknown };

export function isObject(value: unknown): value is JsonObject {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

/** Whether a value can be written to a file and read again as the same: no NaN, no undefined, no class, no `__proto__`. */
export function isJson(value: unknown, depth = MAX_VALUE_DEPTH): boolean {
  if (value === null || typeof value === 'string' || typeof value === 'boolean') return true;
  if (typeof value === 'number') return Number.isFinite(value);
  if (typeof value !== 'object' || depth === 0) return false;
  if (Array.isArray(value)) {
    return value.length <= MAX_LIST && Array.from(value).every((item) => isJson(item, depth - 1));
  }
  const prototype: unknown = Object.getPrototypeOf(value);
  if (prototype !== Object.prototype && prototype !== null) return false;
  return Object.entries(value).every(([key, item]) => key !== '__proto__' && isJson(item, depth - 1));
}

/** Equality of JSON values; the order of keys means nothing. */
export function sameJson(a: unknown, b: unknown): boolean {
  if (a === b) return true;
  if (Array.isArray(a)) {
    return Array.isArray(b) && a.length === b.length && a.every((item, i) => sameJson(item, b[i]));
  }
  if (!isObject(a) || !isObject(b)) return false;
  const keys = Object.keys(a);
  return (
    keys.length === Object.keys(b).length &&
    keys.every((key) => Object.hasOwn(b, key) && sameJson(a[key], b[key]))
  );
}
