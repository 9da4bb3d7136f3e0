/** What leads to the page on which a colleague's game is adapted; the words of the page are loaded with it. */

export const ADAPT_COMMAND = 'Adapt to my kit and room';

/** Offered when a game comes in that was made elsewhere. */
export const ADAPT_OFFER = {
  sentence: (title: string) => `“${title}” came from a file.`,
  act: ADAPT_COMMAND,
};

/** The copy that the first change makes. */
export function adaptedTitle(title: string): string {
  return `${title} (adapted)`;
}
