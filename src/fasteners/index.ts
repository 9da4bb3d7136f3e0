/** The fasteners that this version knows. A type that is not here is kept and treated as answered by its links. */
import { dial } from './dial.ts';
import { direction } from './direction.ts';
import { key } from './key.ts';
import { latch } from './latch.ts';
import { number } from './number.ts';
import { picture } from './picture.ts';
import { type FastenerType, USUAL_MINUTES } from './type.ts';
import { typed } from './typed.ts';
import { word } from './word.ts';

export type { FastenerType } from './type.ts';

export const FASTENER_TYPES: readonly FastenerType[] = [
  key,
  number,
  word,
  direction,
  dial,
  picture,
  typed,
  latch,
];

const byType = new Map(FASTENER_TYPES.map((entry) => [entry.type, entry]));

export function isKnownType(type: string): boolean {
  return byType.has(type);
}

export function fastenerType(type: string | undefined): FastenerType {
  return (
    (type === undefined ? undefined : byType.get(type)) ?? {
      type: type ?? '',
      opensWith: 'links',
      minutes: USUAL_MINUTES,
    }
  );
}
