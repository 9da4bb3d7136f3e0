/** The fasteners that this version knows. A type that is not here is kept and treated as answered by its links. */

import type { NodeOf } from '../game/model.ts';
import { AS_WRITTEN } from './as-written.ts';
import { dial } from './dial.ts';
import { direction } from './direction.ts';
import { key } from './key.ts';
import { latch } from './latch.ts';
import { number } from './number.ts';
import { picture } from './picture.ts';
import { type FastenerType, type Hardware, USUAL_MINUTES } from './type.ts';
import { typed } from './typed.ts';
import { word } from './word.ts';

export type {
  CodeReading,
  CodeTrouble,
  FastenerType,
  Hardware,
  Misfit,
  PickOne,
  WeakReason,
} from './type.ts';

const TYPES = [key, number, word, direction, dial, picture, typed, latch] as const;

/** The types by what the document calls them: words and signs for each are asked for by the compiler. */
export type LockType = (typeof TYPES)[number]['type'];

export const FASTENER_TYPES: readonly (FastenerType & { readonly type: LockType })[] = TYPES;

/** What each of a lock's own wheels shows, from the first; undefined where the document does not say. */
export function wheelsOf(
  hardware: Hardware | undefined,
  type: string | undefined,
): readonly (readonly string[])[] | undefined {
  const { wheel } = fastenerType(type);
  return hardware?.wheels?.map((_, position) => wheel(position, hardware) ?? []);
}

/** Seconds that one try at this lock takes. */
export function trySecondsOf(lock: NodeOf<'fastener'>): number {
  return lock.hardware?.trySeconds ?? fastenerType(lock.type).trySeconds;
}

const byType = new Map<string, FastenerType>(TYPES.map((entry) => [entry.type, entry]));

export function isKnownType(type: string): type is LockType {
  return byType.has(type);
}

const unheardOf = new Map<string, FastenerType>();

/** The same object each time, also for a type that this version does not know. */
export function fastenerType(type: string = ''): FastenerType {
  const known = byType.get(type) ?? unheardOf.get(type);
  if (known) return known;
  const made: FastenerType = {
    type,
    opensWith: 'links',
    directions: false,
    apart: false,
    hasWheels: false,
    usualLength: undefined,
    minutes: USUAL_MINUTES,
    trySeconds: 10,
    asks: [],
    ...AS_WRITTEN,
  };
  unheardOf.set(type, made);
  return made;
}
