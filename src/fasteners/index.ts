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

const TYPES = [key, number, word, direction, dial, picture, typed, latch] as const;

/** The types by what the document calls them: words and signs for each are asked for by the compiler. */
export type LockType = (typeof TYPES)[number]['type'];

export const FASTENER_TYPES: readonly (FastenerType & { readonly type: LockType })[] = TYPES;

const byType = new Map<string, FastenerType>(TYPES.map((entry) => [entry.type, entry]));

export function isKnownType(type: string): type is LockType {
  return byType.has(type);
}

export function fastenerType(type: string | undefined): FastenerType {
  return (
    (type === undefined ? undefined : byType.get(type)) ?? {
      type: type ?? '',
      opensWith: 'links',
      directions: false,
      minutes: USUAL_MINUTES,
    }
  );
}
