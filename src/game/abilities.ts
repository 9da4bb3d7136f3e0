/** What a thing may ask of a pupil, as the document's `asks` says it. */
export const ABILITIES = ['reading', 'fineHands', 'colour', 'seeing', 'hearing', 'moving'] as const;

export type Ability = (typeof ABILITIES)[number];
