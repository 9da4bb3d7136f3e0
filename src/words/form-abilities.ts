/** What a thing asks of a pupil, as the forms say it. */
import { ABILITIES, type Ability } from '../game/abilities.ts';
import { list } from './numbers.ts';

const NAMES: Readonly<Record<Ability, string>> = {
  reading: 'reading',
  fineHands: 'fine hands',
  colour: 'telling colours',
  seeing: 'seeing well',
  hearing: 'hearing',
  moving: 'moving about',
};

export const ASKS = {
  heading: 'What it asks of a pupil',
  /** Above the usual other way of a lock. */
  of: (ability: Ability) => capital(NAMES[ability]),
  more: 'It also asks for',
  otherWay: 'The other way, for a pupil who cannot',
  otherWayHint: 'A partner reads it aloud; the card also has a shape.',
};

export function abilityName(ability: Ability): string {
  return NAMES[ability];
}

/** 'reading, fine hands' in the order of the form; words that this version does not know as the file has them. */
export function abilitiesSaid(asks: readonly string[]): string {
  const known = ABILITIES.filter((ability) => asks.includes(ability)).map(abilityName);
  const others = asks.filter((ask) => !ABILITIES.some((ability) => ability === ask));
  return list([...known, ...others]);
}

function capital(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}
