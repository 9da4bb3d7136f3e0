/** Lamps whose light cannot be seen and can harm eyes. */
import { anywhere, type Caution } from './caution.ts';

export const uvLight = {
  id: 'uvLight',
  stated: true,
  kinds: [],
  suggested: anywhere(/\b(?:uv|ultra-?violet|black ?lights?)\b/iu),
  sources: [
    { name: 'Photobiological safety of lamps and lamp systems', number: 'IEC 62471' },
    {
      name: 'Photobiological safety of lamps and lamp systems: ultraviolet lamp products',
      number: 'IEC 62471-6',
    },
  ],
} as const satisfies Caution;
