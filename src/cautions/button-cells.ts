/** Button and coin cells that can be swallowed. */
import { type Caution, calledSo } from './caution.ts';

export const buttonCells = {
  id: 'buttonCells',
  stated: true,
  kinds: [],
  suggested: calledSo(
    /\b(?:batter(?:y|ies)|(?:button|coin) cells?|torch(?:es)?|flashlights?|led lights?|(?:uv|ultra-?violet) (?:lamps?|lights?))\b/iu,
  ),
  sources: [
    {
      name: 'Safety Standard for Button Cell or Coin Batteries and Consumer Products Containing Such Batteries',
      number: '16 CFR part 1263',
    },
    {
      name: 'Standard for Safety for Products Incorporating Button Batteries or Coin Cell Batteries',
      number: 'UL 4200A',
    },
  ],
} as const satisfies Caution;
