/** Words of colour, as they stand in names and texts: the eleven basic terms of English (Berlin and Kay 1969) and a few that boxes come in. */

const COLOURS = [
  'black',
  'blue',
  'brown',
  'gold',
  'golden',
  'gray',
  'green',
  'grey',
  'orange',
  'pink',
  'purple',
  'red',
  'silver',
  'turquoise',
  'violet',
  'white',
  'yellow',
] as const;

/** Two words for one colour. */
const SAME = new Map([
  ['gray', 'grey'],
  ['golden', 'gold'],
  ['violet', 'purple'],
]);

const KNOWN: ReadonlySet<string> = new Set(COLOURS);

/** As written, each once, in the order of the text. */
export function coloursIn(text: string): readonly string[] {
  const words = text.match(/[\p{L}\p{N}]+/gu) ?? [];
  return [...new Set(words.map((word) => word.toLowerCase()).filter((word) => KNOWN.has(word)))];
}

export function isSameColour(one: string, other: string): boolean {
  const plain = (word: string) => SAME.get(word.toLowerCase()) ?? word.toLowerCase();
  return plain(one) === plain(other);
}

/** What a colour is said of, where it tells one thing of a kit from another. */
const COLOURED = [
  'bag',
  'bags',
  'box',
  'boxes',
  'case',
  'chest',
  'dot',
  'envelope',
  'folder',
  'key',
  'lid',
  'lock',
  'one',
  'padlock',
  'ribbon',
  'sticker',
  'tag',
  'tin',
  'tins',
];

/** The text with another colour before words for boxes, locks, keys and their marks: 'the green dot' and not 'the green leaf'. */
export function recolouredText(text: string, from: string, to: string): string {
  const pattern = new RegExp(
    `(?<![\\p{L}\\p{N}])(${from})(?=[\\s-]+(?:${COLOURED.join('|')})(?![\\p{L}\\p{N}]))`,
    'giu',
  );
  return text.replace(pattern, (found) => inCase(found, to));
}

function inCase(found: string, word: string): string {
  if (found === found.toUpperCase()) return word.toUpperCase();
  return found === found.toLowerCase() ? word.toLowerCase() : word.charAt(0).toUpperCase() + word.slice(1);
}

/** The name with the colour of the label, where both have one and it differs; else undefined. */
export function recolouredName(
  name: string,
  label: string,
): { readonly name: string; readonly from: string; readonly to: string } | undefined {
  const [from, second] = coloursIn(name);
  const [to, other] = coloursIn(label);
  if (from === undefined || to === undefined || second !== undefined || other !== undefined) return undefined;
  if (isSameColour(from, to)) return undefined;
  const pattern = new RegExp(`(?<![\\p{L}\\p{N}])${from}(?![\\p{L}\\p{N}])`, 'giu');
  return { name: name.replace(pattern, (found) => inCase(found, to)), from, to };
}
