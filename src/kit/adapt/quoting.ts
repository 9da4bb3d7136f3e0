/** Finding a name where it is quoted in another text, and putting another in its place. */

/** Words that give way to others. */
export interface Swap {
  readonly from: string;
  readonly to: string;
}

const NOT_WITHIN_A_WORD = ['(?<![\\p{L}\\p{N}])', '(?![\\p{L}\\p{N}])'] as const;

function partsOf(name: string): readonly string[] {
  return name
    .trim()
    .split(/[\s-]+/u)
    .filter((word) => word !== '');
}

/** The name as it may stand in running text: broken over lines, with or without hyphens, in any case. Undefined: a name of nothing. */
function pattern(name: string): string | undefined {
  const parts = partsOf(name).map((word) => word.replace(/[\\^$.*+?()[\]{}|/]/g, '\\$&'));
  return parts.length === 0 ? undefined : parts.join('[\\s-]+');
}

const isUpper = (text: string) => text === text.toUpperCase() && text !== text.toLowerCase();
const isLower = (text: string) => text === text.toLowerCase() && text !== text.toUpperCase();

/** Lower case at the front, but for a name that has capitals further in ('Miss Hall's desk', 'UV lamp'). */
function lowered(words: string): string {
  const rest = words.slice(1);
  return rest === rest.toLowerCase() ? words.toLowerCase() : words;
}

/** The new words as the old ones were written there: all capitals, a capital at the front, or none. */
function inCaseOf(found: string, { from, to }: Swap): string {
  const words = to.trim();
  if (isUpper(found) && !isUpper(from)) return words.toUpperCase();
  if (isLower(found) && !isLower(from)) return lowered(words);
  const [first = ''] = found;
  if (isUpper(first) && isLower(from.trim().charAt(0))) return words.charAt(0).toUpperCase() + words.slice(1);
  return words;
}

/**
 * Whether it is the name that stands there, and not the word in its common meaning: a name of several words is one in any case,
 * a single word only as it is written in the name, or in capitals ('the Shelf', 'SHELF', but not 'a shelf').
 */
function isName(found: string, { from }: Swap): boolean {
  return partsOf(from).length > 1 || found === from.trim() || isUpper(found);
}

/**
 * All swaps at once, the longest name first, so that what one puts in is not taken out by another: two names can change places.
 * @param loosely single words in their common meaning too
 * @param stay names that stay as they are, so that no part of one is taken for another: 'Shelf end' for 'Shelf'
 */
export function swapped(
  text: string,
  swaps: readonly Swap[],
  loosely = false,
  stay: readonly string[] = [],
): string {
  const usable = swaps.filter(
    ({ from, to }) => pattern(from) !== undefined && to.trim() !== '' && from.trim() !== to.trim(),
  );
  if (usable.length === 0) return text;
  const stays = stay.filter((name) => pattern(name) !== undefined).map((from) => ({ from, to: undefined }));
  // Of the same name, the one that stays goes first.
  const all = [...stays, ...usable].sort((a, b) => b.from.trim().length - a.from.trim().length);
  const [before, after] = NOT_WITHIN_A_WORD;
  const any = all.map(({ from }) => `(${pattern(from)})`).join('|');
  return text.replace(new RegExp(`${before}(?:${any})${after}`, 'giu'), (found, ...groups: unknown[]) => {
    const one = all.find((_, i) => groups[i] !== undefined);
    if (one?.to === undefined) return found;
    return loosely || isName(found, one) ? inCaseOf(found, one) : found;
  });
}

/** The text without these names, a sign in the place of each. */
export function without(text: string, names: readonly string[]): string {
  return swapped(
    text,
    names.map((from) => ({ from, to: '·' })),
    true,
  );
}

/** Whether the name is quoted there. */
export function quotes(text: string, name: string): boolean {
  const found = pattern(name);
  if (found === undefined) return false;
  const [before, after] = NOT_WITHIN_A_WORD;
  const all = text.match(new RegExp(`${before}(?:${found})${after}`, 'giu')) ?? [];
  return all.some((match) => isName(match, { from: name, to: '' }));
}
