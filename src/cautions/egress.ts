/** Nobody is locked in, and no way out is locked or blocked. */
import type { Caution } from './caution.ts';

const WAY_OUT =
  /\b(?:doors?|doorways?|gates?|(?:fire )?exits?|corridors?|hallways?|stairs?|staircases?|stairwells?|(?:fire )?extinguishers?|fire alarms?)\b/iu;

export const egress = {
  id: 'egress',
  stated: false,
  kinds: ['container', 'fastener'],
  // A note may well say that something does not lie at the door.
  suggested: ({ kind, name }) =>
    (kind === 'place' || kind === 'container' || kind === 'fastener') && WAY_OUT.test(name),
  sources: [
    { name: 'Life Safety Code', number: 'NFPA 101', section: '7.1.10 and 7.2.1.5' },
    { name: 'Standard for Portable Fire Extinguishers', number: 'NFPA 10', section: 'chapter 6' },
  ],
} as const satisfies Caution;
