/** What is remembered of an adaptation: which game it began with, and which lines stay as they are. Beside the games, by the id of the copy. */
import * as z from 'zod/mini';
import type { LineKey } from '../../src/kit/adapt/plan.ts';

const KEY = 'latchmap.adapting';
/** Games of which it is remembered; the oldest are forgotten first. */
const MOST = 40;

export interface Adaptation {
  /** The game as it came; the open one itself until the first change makes a copy. */
  readonly of: string;
  readonly kept: ReadonlySet<LineKey>;
}

const stored = z.array(z.object({ id: z.string(), of: z.string(), kept: z.array(z.string()) }));

/** In memory too: where storage is refused, it lasts as long as the page. */
let known: ReadonlyMap<string, Adaptation> | undefined;

function readAll(): ReadonlyMap<string, Adaptation> {
  try {
    const reading = stored.safeParse(JSON.parse(localStorage.getItem(KEY) ?? '[]'));
    const list = reading.success ? reading.data : [];
    return new Map(list.map(({ id, of, kept }) => [id, { of, kept: new Set(kept) }]));
  } catch {
    return new Map();
  }
}

export function adaptationOf(id: string): Adaptation | undefined {
  known ??= readAll();
  return known.get(id);
}

export function remember(id: string, adaptation: Adaptation): void {
  const rest = [...(known ?? readAll())].filter(([other]) => other !== id);
  const all = [...rest, [id, adaptation] as const].slice(-MOST);
  known = new Map(all);
  const text = all.map(([one, { of, kept }]) => ({ id: one, of, kept: [...kept] }));
  try {
    localStorage.setItem(KEY, JSON.stringify(text));
  } catch {
    return;
  }
}
