/** Lists of words out of a few, as the document keeps them: `asks`, `hazards`. */

/** The list with a word put in or taken out, in the usual order; words that are not usual stay, behind. Undefined when nothing is left. */
export function withWord(
  words: readonly string[],
  word: string,
  there: boolean,
  usual: readonly string[],
): readonly string[] | undefined {
  const wanted = new Set(words);
  if (there) wanted.add(word);
  else wanted.delete(word);
  const next = [
    ...usual.filter((each) => wanted.has(each)),
    ...[...wanted].filter((each) => !usual.includes(each)),
  ];
  return next.length === 0 ? undefined : next;
}
