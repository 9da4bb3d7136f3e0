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
