/** A room in the dark, or with lights that flash. That pupils trip and that flashes harm some is common practice to heed, without a source. */
import type { Caution } from './caution.ts';

const DARK =
  /\b(?:lights? (?:off|out)|(?:turn|switch|put) (?:off|out) the lights?|darkened|in the dark|blinds down|flicker(?:s|ing)?|strobes?)\b/iu;

export const lightsOff = {
  id: 'lightsOff',
  stated: true,
  kinds: [],
  // What pupils read may tell them to.
  suggested: ({ name, text = '', note = '' }) => [name, text, note].some((written) => DARK.test(written)),
  sources: [{ name: 'Life Safety Code', number: 'NFPA 101', section: '7.8' }],
} as const satisfies Caution;
