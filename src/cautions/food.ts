/** Food that some may not eat, or touch. */
import { type Caution, calledSo } from './caution.ts';

export const food = {
  id: 'food',
  stated: true,
  kinds: ['prize'],
  suggested: calledSo(
    /\b(?:sweets|cand(?:y|ies)|chocolates?|biscuits?|cookies?|cakes?|peanuts?|snacks?|edible|to (?:eat|taste))\b/iu,
  ),
  sources: [
    {
      name: 'Food Allergen Labeling and Consumer Protection Act of 2004',
      number: 'Public Law 108-282, title II',
    },
    { name: 'Food information to consumers', number: 'Regulation (EU) No 1169/2011', section: 'annex II' },
  ],
} as const satisfies Caution;
