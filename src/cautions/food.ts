/** Food that some may not eat, or touch. */
import { anywhere, type Caution } from './caution.ts';

export const food = {
  id: 'food',
  stated: true,
  kinds: ['prize'],
  suggested: anywhere(
    /\b(?:sweets|cand(?:y|ies)|chocolates?|biscuits?|cookies?|cakes?|nuts?|peanuts?|fruits?|snacks?|edible|to eat|taste)\b/iu,
  ),
  sources: [
    {
      name: 'Food Allergen Labeling and Consumer Protection Act of 2004',
      number: 'Public Law 108-282, title II',
    },
    { name: 'Food information to consumers', number: 'Regulation (EU) No 1169/2011', section: 'annex II' },
  ],
} as const satisfies Caution;
