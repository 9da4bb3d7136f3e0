import { newId } from '../../src/game/ids.ts';

/** A random id from the browser's generator. */
export function freshId(): string {
  return newId((count) => crypto.getRandomValues(new Uint8Array(count)));
}
