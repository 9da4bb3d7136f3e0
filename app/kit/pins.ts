/** Pins as the browser keeps them: by game, by lock, an item for each copy or null. */
import * as z from 'zod/mini';
import type { Pins } from './owned.ts';

const kept = z.array(z.tuple([z.string(), z.array(z.tuple([z.string(), z.array(z.nullable(z.string()))]))]));

/** What cannot be read is no pin: any lock that fits is taken then. */
export function readPins(stored: unknown): ReadonlyMap<string, Pins> {
  const reading = kept.safeParse(stored);
  if (!reading.success) return new Map();
  return new Map(
    reading.data.map(([game, locks]) => [
      game,
      new Map(locks.map(([lock, items]) => [lock, items.map((item) => item ?? undefined)])),
    ]),
  );
}

export function writePins(pins: ReadonlyMap<string, Pins>): z.infer<typeof kept> {
  return Array.from(pins, ([game, locks]) => [
    game,
    Array.from(locks, ([lock, items]) => [lock, items.map((item) => item ?? null)]),
  ]);
}
