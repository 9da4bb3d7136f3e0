/** A room in the dark, or with lights that flash. That pupils trip and that flashes harm some is common practice to heed, without a source. */
import { anywhere, type Caution } from './caution.ts';

export const lightsOff = {
  id: 'lightsOff',
  stated: true,
  kinds: [],
  suggested: anywhere(
    /\b(?:lights? (?:off|out)|(?:turn|switch|put) (?:off|out) the lights?|darkened|in the dark|blinds down|flicker(?:s|ing)?|strobes?)\b/iu,
  ),
  sources: [{ name: 'Life Safety Code', number: 'NFPA 101', section: '7.8' }],
} as const satisfies Caution;
