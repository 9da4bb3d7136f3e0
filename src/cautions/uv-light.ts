/** Lamps whose light cannot be seen and can harm eyes. */
import { type Caution, calledSo } from './caution.ts';

export const uvLight = {
  id: 'uvLight',
  stated: true,
  kinds: [],
  suggested: calledSo(/\b(?:uv|ultra-?violet|black ?lights?)\b/iu),
  sources: [
    { name: 'Photobiological safety of lamps and lamp systems', number: 'IEC 62471' },
    {
      name: 'Photobiological safety of lamps and lamp systems: ultraviolet lamp products',
      number: 'IEC 62471-6',
    },
  ],
} as const satisfies Caution;
