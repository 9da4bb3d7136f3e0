/** Counts and lists of places as a teacher types them. */

/** A whole number from `least`; undefined when it is none. */
export function parseCount(raw: string, least: number): number | undefined {
  const typed = raw.trim();
  if (!/^\d{1,6}$/.test(typed)) return undefined;
  const count = Number(typed);
  return count >= least ? count : undefined;
}

/** '1, 3' as places of a code from 1, in the order typed; undefined when it is no such list. */
export function parsePlaces(raw: string): number[] | undefined {
  const parts = raw
    .trim()
    .split(/[\s,;]+/)
    .filter((part) => part !== '');
  const places = parts.map((part) => parseCount(part, 1));
  const known = places.filter((place) => place !== undefined);
  return known.length === parts.length && known.length > 0 ? known : undefined;
}
