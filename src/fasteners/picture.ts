/** Wheels of pictures or colours: a symbol is a name. */
import { normaliseCode, symbolsOf } from '../game/codes.ts';
import { namesIn } from './signs.ts';
import { type FastenerType, USUAL_MINUTES } from './type.ts';
import { isFactorySetting, weakPattern } from './weak.ts';
import { onceEach, onWheels, ownWheels } from './wheels.ts';

/** Between names; a dash only where it stands by itself, since a name may have one. */
const BETWEEN = /(?:\s|^)[-–—]+(?=\s|$)|[\s,;/|+&，、]+/u;

function symbols(typed: string): string[] {
  return typed
    .split(BETWEEN)
    .flatMap(namesIn)
    .map(normaliseCode)
    .filter((name) => name !== '');
}

/** "FOX SUN BELL"; without anything between them each sign is a picture. */
const own = ownWheels((written) => {
  const names = symbols(written);
  return onceEach(names.length > 1 ? names : symbolsOf(names.join('')));
});

export const picture = {
  type: 'picture',
  opensWith: 'code',
  directions: false,
  apart: true,
  hasWheels: true,
  usualLength: undefined,
  minutes: USUAL_MINUTES,
  trySeconds: 5,
  asks: ['seeing', 'colour', 'fineHands'],
  symbols,
  read: (typed) => ({ ok: true, code: symbols(typed).join(' ') }),
  write: (symbols) => symbols.join(' '),
  ...onWheels({
    usual: () => undefined,
    reckoned: 10,
    own,
    weak: (symbols, { hardware } = {}) =>
      isFactorySetting(symbols, own(hardware)) ? 'factorySetting' : weakPattern(symbols),
  }),
} as const satisfies FastenerType;
