/** Whether two games are played alike: the same ids, needs, times and lesson, whatever the things are called. */
import type { Clock } from '../../src/engine/simulation/clock.ts';

export function sameClock(a: Clock, b: Clock): boolean {
  return alike({ ...a, network: counting(a) }, { ...b, network: counting(b) });
}

/** Without the names, and without what only looks up the ids. */
function counting({ network }: Clock): object {
  const { names: _, index: __, ...rest } = network;
  return rest;
}

function alike(a: unknown, b: unknown): boolean {
  if (Object.is(a, b)) return true;
  if (typeof a !== 'object' || typeof b !== 'object' || a === null || b === null) return false;
  if (isList(a)) return isList(b) && a.length === b.length && a.every((value, i) => alike(value, b[i]));
  const keys = Object.keys(a);
  return (
    keys.length === Object.keys(b).length &&
    keys.every((key) => alike(Reflect.get(a, key), Reflect.get(b, key)))
  );
}

interface List {
  readonly length: number;
  readonly [i: number]: unknown;
  every(holds: (value: unknown, i: number) => boolean): boolean;
}

function isList(value: object): value is List {
  return Array.isArray(value) || (ArrayBuffer.isView(value) && 'every' in value);
}
