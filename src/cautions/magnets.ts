/** Small strong magnets that can be swallowed. */
import { type Caution, calledSo } from './caution.ts';

export const magnets = {
  id: 'magnets',
  stated: true,
  kinds: [],
  suggested: calledSo(/\bmagnets?\b/iu),
  sources: [
    { name: 'Safety Standard for Magnets', number: '16 CFR part 1262' },
    { name: 'Consumer Safety Specification for Toy Safety', number: 'ASTM F963', section: '8.25' },
  ],
} as const satisfies Caution;
