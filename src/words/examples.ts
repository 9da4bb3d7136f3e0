/** The example games, smallest first, in the words of their files (a test compares them). */

export interface Example {
  /** The name of its file in public/games/, without the ending. */
  readonly slug: string;
  readonly title: string;
  readonly summary: string;
}

export const EXAMPLES: readonly Example[] = [
  {
    slug: 'greenhouse-pump',
    title: 'The pump in the greenhouse',
    summary: 'The greenhouse pump has stopped; whoever knows how a plant drinks can start it again.',
  },
  {
    slug: 'front-page',
    title: 'Two desks to the front page',
    summary:
      'The weekly goes to press in half an hour and the front page has no headline; any two of the three desks can settle it.',
  },
  {
    slug: 'mineral-hall',
    title: 'Every label is wrong',
    summary:
      'A shelf has tipped over and every label in the mineral hall is wrong; the class tests, weighs and sorts until the doors can open.',
  },
];
