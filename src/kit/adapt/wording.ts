/** Names as people write them, compared word by word: case, accents, marks and plurals do not count. English, as all words of the program. */

/** Say nothing of what a thing is. */
const ARTICLES = new Set(['a', 'an', 'the', 'my', 'our', 'your']);

/** End a group of words, so that the word before names the thing: 'shelf' in 'Shelf by the window'. */
const PREPOSITIONS = new Set([
  'above',
  'against',
  'among',
  'at',
  'behind',
  'below',
  'beneath',
  'beside',
  'between',
  'by',
  'for',
  'from',
  'in',
  'inside',
  'near',
  'next',
  'of',
  'off',
  'on',
  'opposite',
  'outside',
  'over',
  'to',
  'under',
  'underneath',
  'with',
]);

/** A plain plural taken off: 'shelves' stays, since a wrong stem would be worse than a missed one. */
function stem(word: string): string {
  return word.length > 3 && word.endsWith('s') && !word.endsWith('ss') ? word.slice(0, -1) : word;
}

function plainWords(text: string): string[] {
  const plain = text
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .replace(/[’']s\b/gu, '')
    .toLowerCase();
  return plain.match(/[\p{L}\p{N}]+/gu) ?? [];
}

/** One form for all ways of writing a name: "The  Window-sill" and "window sill" are the same. Empty for a name without letters and digits. */
export function normalisedName(name: string): string {
  return plainWords(name)
    .filter((word) => !ARTICLES.has(word))
    .join(' ');
}

/** What a name speaks of, a plain form of each word, without articles and prepositions. */
export function tellingWords(name: string): ReadonlySet<string> {
  return new Set(
    plainWords(name)
      .filter((word) => !ARTICLES.has(word) && !PREPOSITIONS.has(word))
      .map(stem),
  );
}

/** The words that name a thing and do not only describe it, in plain form: 'shelf' and 'window' of 'Low shelf by the window'. */
export function headWords(name: string): ReadonlySet<string> {
  const heads = new Set<string>();
  let last: string | undefined;
  for (const word of plainWords(name)) {
    if (ARTICLES.has(word)) continue;
    if (!PREPOSITIONS.has(word)) last = word;
    else if (last !== undefined) {
      heads.add(stem(last));
      last = undefined;
    }
  }
  if (last !== undefined) heads.add(stem(last));
  return heads;
}

/** Every word of a text in plain form. */
export function wordsOf(text: string): ReadonlySet<string> {
  return new Set(plainWords(text).map(stem));
}

/**
 * How much two sets of words have in common, 0 to 1: twice the shared words over all words (Dice 1945).
 * @param beside words that stand for the second set but weigh half, such as the zone of a place
 */
export function likeness(
  one: ReadonlySet<string>,
  other: ReadonlySet<string>,
  beside: ReadonlySet<string> = new Set(),
): number {
  if (one.size + other.size === 0) return 0;
  let shared = 0;
  for (const word of one) {
    if (other.has(word)) shared += 1;
    else if (beside.has(word)) shared += 0.5;
  }
  return (2 * shared) / (one.size + Math.max(other.size, 1));
}
