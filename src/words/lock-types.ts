/**
 * What there is to say of each type of lock: how its code is shown on a sheet, how it is set, what one does who cannot work it alone.
 * In general words, common practice, no published source: the maker's leaflet decides.
 */
import { fastenerType, isKnownType, type LockType } from '../fasteners/index.ts';
import type { Ability } from '../game/abilities.ts';
import { lockName } from './kinds.ts';
import { list } from './numbers.ts';
import { capital } from './say.ts';
import { plain, type Sentence } from './sentence.ts';

const SHOWN: Readonly<Record<LockType, string>> = {
  key: 'The name on the tag of the key; the lock carries the same.',
  number: 'Digits from the left, one for each wheel.',
  word: 'Capital letters from the left, one for each wheel.',
  direction: 'Arrows in the order of the moves, each with its letter.',
  dial: 'Numbers with a space between them, in the order in which the dial is turned to them.',
  picture: 'The pictures themselves from the left, each with its name; colours as words too.',
  typed: 'Letters and digits as they are typed; a space counts only where the page asks for it.',
  latch: 'Nothing: it opens by hand.',
};

const WHEELS =
  'Open it at the code that it has, bring it into its setting position, turn the wheels to the new code, and bring it back before a wheel is touched.';

const SETTING: Readonly<Record<LockType, string>> = {
  key: 'Nothing to set. Try each key in its own lock, and in every other.',
  number: WHEELS,
  word: WHEELS,
  direction:
    'Clear it as its leaflet says. Open it, bring it into its setting position, make the moves of the new code, and bring it back.',
  dial: 'Most dials keep the code that they came with: then it is the lock that says what the game’s code is. Turn right, passing the first number twice, and stop at it; left, passing the second once, and stop at it; right to the third.',
  picture: WHEELS,
  typed:
    'Write the code into the form or page on the device, and what it shows when the code is right. Try it as pupils would, in capital and small letters.',
  latch: 'Nothing to set.',
};

const IN_GENERAL = 'The maker’s leaflet decides. Try each code with the lock still open.';

export const SETTING_LOCKS = {
  heading: 'Setting the locks',
  intro: `In general; ${IN_GENERAL.charAt(0).toLowerCase()}${IN_GENERAL.slice(1)}`,
};

/** How its code is shown on a sheet; empty for a type that this version does not know. */
export function codeShownText(type: string | undefined): string {
  return type !== undefined && isKnownType(type) ? SHOWN[type] : '';
}

/** How it is set, before a lesson; empty for a type that this version does not know. */
export function lockSettingText(type: string | undefined): string {
  if (type === undefined || !isKnownType(type)) return '';
  const isSetByHand = fastenerType(type).opensWith === 'code' && type !== 'typed';
  return isSetByHand ? `${SETTING[type]} ${IN_GENERAL}` : SETTING[type];
}

/** "Number lock, word lock: Open it at the code that it has …", once for all that are set alike. */
export function lockSettingsTold(types: readonly LockType[]): Sentence[] {
  const byText = new Map<string, string[]>();
  for (const type of types) {
    const names = byText.get(SETTING[type]);
    if (names) names.push(lockName(type));
    else byText.set(SETTING[type], [lockName(type)]);
  }
  return Array.from(byText, ([text, names]) => [{ strong: `${plain(capital([list(names)]))}:` }, ` ${text}`]);
}

const FEELS = 'A partner says what the wheels show; the pupil says what they are to show.';
const TURNS = 'A partner turns and pulls; the pupil says what to set.';

/** The usual other way for what a type asks; what it does not ask is not here. */
const OTHER_WAY: Readonly<Record<LockType, Readonly<Partial<Record<Ability, string>>>>> = {
  key: { fineHands: 'A partner turns the key; a longer tag or a key turner gives more to hold.' },
  number: { seeing: FEELS, fineHands: TURNS },
  word: {
    reading: 'A partner spells the word; the pupil finds the letters one by one.',
    seeing: FEELS,
    fineHands: TURNS,
  },
  direction: { fineHands: 'A partner moves it; the pupil says the moves.' },
  dial: {
    seeing: 'A partner says the numbers as the dial passes them; the pupil says stop.',
    fineHands: 'A partner turns the dial; the pupil says where to.',
  },
  picture: {
    seeing: 'A partner names the pictures as they come; the pupil says stop.',
    colour: 'The names of the colours stand beside them, or a partner names them.',
    fineHands: TURNS,
  },
  typed: {
    reading: 'A partner reads it aloud.',
    seeing: 'The device reads aloud or shows it larger; a partner types.',
    fineHands:
      'A partner types; the pupil says what. A large keyboard or speaking to the device will do too.',
  },
  latch: { fineHands: 'A partner opens it.' },
};

/** What a pupil does who cannot do what a lock of this type asks; undefined where it does not ask that. */
export function usualOtherWay(type: string | undefined, ability: Ability): string | undefined {
  return type !== undefined && isKnownType(type) ? OTHER_WAY[type][ability] : undefined;
}
