/** Pins as the browser keeps them. */
import * as z from 'zod/mini';
import type { Given } from '../../src/kit/fit/index.ts';
import type { Pins } from './owned.ts';

const given = z.array(z.tuple([z.string(), z.array(z.nullable(z.string()))]));
const kept = z.array(z.tuple([z.string(), z.object({ nodes: given, hasps: given })]));

/** What cannot be read is no pin: whatever fits is taken then. */
export function readPins(stored: unknown): ReadonlyMap<string, Pins> {
  const reading = kept.safeParse(stored);
  if (!reading.success) return new Map();
  return new Map(
    reading.data.map(([game, { nodes, hasps }]) => [game, { nodes: new Map(nodes), hasps: new Map(hasps) }]),
  );
}

const listOf = (pins: Given): z.infer<typeof given> =>
  Array.from(pins, ([node, items]) => [node, [...items]]);

export function writePins(pins: ReadonlyMap<string, Pins>): z.infer<typeof kept> {
  return Array.from(pins, ([game, { nodes, hasps }]) => [
    game,
    { nodes: listOf(nodes), hasps: listOf(hasps) },
  ]);
}
