/** Random sketches of games: puzzles in an order of play, things for each in places and in boxes opened before, keys and shared things. */
import type { NodeId } from '../../../src/game/model.ts';
import type { Box, Sketch } from './plan-content.ts';

/** Numbers in [0, 1): a linear congruential generator modulo 2^32, its constants from Press et al., Numerical Recipes. */
export function randomFrom(seed: number): () => number {
  let state = (Math.imul(seed, 2654435761) + 12345) >>> 0;
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 2 ** 32;
  };
}

interface Drafted {
  readonly id: NodeId;
  readonly locks: NodeId[];
  readonly things: NodeId[];
  readonly boxes: Drafted[];
  readonly depth: number;
}

export interface Shape {
  readonly puzzles: number;
  /** Notes on every step. */
  readonly rescue?: boolean;
}

export function randomSketch(seed: number, { puzzles, rescue = false }: Shape): Sketch {
  const random = randomFrom(seed);
  const below = (count: number) => Math.floor(random() * count);
  const drafted = (id: NodeId, depth: number): Drafted => ({ id, locks: [], things: [], boxes: [], depth });
  const places = Array.from({ length: 3 + Math.ceil(puzzles / 5) }, (_, i) => drafted(`place${i}`, 0));
  const trays = [...places];
  const holders = [...places];
  const pairs: [NodeId, NodeId][] = [];
  const lines = new Map<NodeId, number>();
  const things: NodeId[] = [];
  const note = (id: NodeId) => {
    lines.set(id, random() < 0.8 ? 1 : 2 + below(2));
    return id;
  };
  const bars: NodeId[] = [];
  for (let i = 0; i < puzzles; i++) {
    const bar = note(`puzzle${i}`);
    for (let n = 1 + below(3); n > 0; n--) {
      const recent = random() < 0.6 ? holders.slice(-4) : holders;
      const holder = recent[below(recent.length)] ?? places[0];
      const thing = note(`thing${things.length}`);
      holder?.things.push(thing);
      things.push(thing);
      pairs.push([thing, bar]);
    }
    const old = things[below(things.length)];
    if (random() < 0.15 && old !== undefined && !pairs.some(([a, b]) => a === old && b === bar)) {
      pairs.push([old, bar]);
    }
    const before = bars.at(-1);
    if (random() < 0.15 && before !== undefined) pairs.push([before, bar]);
    bars.push(bar);
    if (random() < 0.75) {
      const lock = note(`lock${i}`);
      const boxed = holders.filter((holder) => holder.locks.length > 0 && holder.locks.length < 3);
      const again = random() < 0.2 ? boxed[below(boxed.length)] : undefined;
      if (again) again.locks.push(lock);
      else {
        const box = drafted(note(`box${i}`), 1);
        box.locks.push(lock);
        const outer = holders.filter((holder) => holder.depth < 4)[below(holders.length)];
        if (outer) outer.boxes.push({ ...box, depth: outer.depth + 1 });
        else trays.push({ ...box, depth: 0 });
        holders.push(outer?.boxes.at(-1) ?? box);
      }
      pairs.push([bar, lock]);
      if (random() < 0.15) {
        const key = note(`key${i}`);
        places[below(places.length)]?.things.push(key);
        pairs.push([key, lock]);
      }
    }
  }
  const box = ({ id, locks, things: held, boxes }: Drafted): Box => ({
    id,
    locks,
    things: held,
    boxes: boxes.map(box),
  });
  return { bars, trays: trays.map(box), pairs, lines, rescued: rescue ? bars : [] };
}
