/** Where nothing is hidden. Common practice, no source. */
import type { Caution } from './caution.ts';

export const hiding = {
  id: 'hiding',
  stated: false,
  kinds: ['place'],
  sources: [],
} as const satisfies Caution;
